// SPDX-License-Identifier: GPL-3.0-or-later
#include "site/panel_schedule.h"

#include <algorithm>
#include <charconv>

#include "site/natural_order.h"

namespace cordreach::site {
namespace {

bool isSpace(int number) { return number >= 1 && number <= kMostSpaces; }

std::vector<int> numbersIn(const std::string& text) {
  std::vector<int> numbers;
  const char* at = text.data();
  const char* end = at + text.size();
  while (at != end) {
    int number = 0;
    const auto read = std::from_chars(at, end, number);
    const bool isNumber = read.ptr != at && *at != '-';
    if (isNumber) numbers.push_back(read.ec == std::errc() ? number : 0);
    at = isNumber ? read.ptr : at + 1;
  }
  return numbers;
}

}  // namespace

std::vector<int> spacesOf(const Circuit& circuit) {
  std::vector<int> spaces = numbersIn(circuit.number);
  if (spaces.size() == 1) {
    for (std::size_t pole = 1; pole < circuit.phases.size(); ++pole) spaces.push_back(spaces.back() + 2);
  }
  if (!std::all_of(spaces.begin(), spaces.end(), isSpace)) return {};
  return spaces;
}

PanelSchedule scheduleOf(const Site& site, const PanelId& panel) {
  std::vector<const Circuit*> circuits;
  for (const Circuit& circuit : site.all<Circuit>()) {
    if (circuit.panel == panel) circuits.push_back(&circuit);
  }
  std::stable_sort(circuits.begin(), circuits.end(),
                   [](const Circuit* a, const Circuit* b) { return comesBefore(a->number, b->number); });
  const Panel& of = site.at<Panel>(panel);
  int count = of.spaces ? std::clamp(of.spaces->value, 0, kMostSpaces) : 0;
  for (const Circuit* circuit : circuits) {
    for (const int space : spacesOf(*circuit)) count = std::max(count, space);
  }
  count += count % 2;
  PanelSchedule schedule;
  for (int number = 1; number <= count; ++number) schedule.spaces.push_back({number, {}, false});
  for (const Circuit* circuit : circuits) {
    const std::vector<int> taken = spacesOf(*circuit);
    if (taken.empty()) schedule.elsewhere.push_back(circuit->id);
    for (std::size_t i = 0; i < taken.size(); ++i) {
      ScheduleSpace& space = schedule.spaces[static_cast<std::size_t>(taken[i] - 1)];
      space.circuits.push_back(circuit->id);
      space.continues = i > 0;
    }
  }
  return schedule;
}

std::size_t phaseOfSpace(int space, std::size_t phaseCount) {
  return static_cast<std::size_t>((space - 1) / 2) % phaseCount;
}

}  // namespace cordreach::site
