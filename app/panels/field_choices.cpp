// SPDX-License-Identifier: GPL-3.0-or-later
// The lists that fields are chosen from.
#include <algorithm>

#include "panels/field_kinds.h"
#include "panels/names.h"
#include "site/queries.h"
#include "tables/cord_types.h"
#include "tables/receptacles.h"

namespace cordreach::app {

namespace {

// "1-5" before "1-13": runs of digits by their number.
bool comesBefore(const std::string& a, const std::string& b) {
  std::size_t i = 0;
  std::size_t j = 0;
  const auto isDigit = [](char c) { return c >= '0' && c <= '9'; };
  while (i < a.size() && j < b.size()) {
    if (isDigit(a[i]) && isDigit(b[j])) {
      std::size_t endA = i;
      std::size_t endB = j;
      while (endA < a.size() && isDigit(a[endA])) ++endA;
      while (endB < b.size() && isDigit(b[endB])) ++endB;
      std::string left = a.substr(i, endA - i);
      std::string right = b.substr(j, endB - j);
      left.erase(0, std::min(left.find_first_not_of('0'), left.size() - 1));
      right.erase(0, std::min(right.find_first_not_of('0'), right.size() - 1));
      if (left != right) return left.size() != right.size() ? left.size() < right.size() : left < right;
      i = endA;
      j = endB;
    } else {
      if (a[i] != b[j]) return a[i] < b[j];
      ++i;
      ++j;
    }
  }
  return a.size() - i < b.size() - j;
}

void sortByText(std::vector<FieldChoice>& choices) {
  std::ranges::stable_sort(choices,
                           [](const FieldChoice& a, const FieldChoice& b) { return comesBefore(a.text, b.text); });
}

}  // namespace

std::vector<FieldChoice> circuitChoices(const FieldContext& in) {
  std::vector<FieldChoice> choices;
  for (const site::Circuit& circuit : in.site.all<site::Circuit>()) {
    choices.push_back({circuit.id.text(), circuitLine(in.book, in.site, circuit)});
  }
  sortByText(choices);
  return choices;
}

std::vector<FieldChoice> outletChoices(const FieldContext& in, OffLimits offLimits) {
  std::vector<FieldChoice> choices;
  for (const site::Outlet& outlet : in.site.all<site::Outlet>()) {
    for (const site::Contact& contact : outlet.contacts) {
      const site::Circuit* circuit = site::circuitOf(in.site, {outlet.id, contact.name});
      const bool isOffLimits = circuit != nullptr && circuit->use == site::UseClass::Never;
      if (isOffLimits && offLimits == OffLimits::Hidden) continue;
      base::Arguments arguments{{"outlet", outletName(outlet)}};
      if (outlet.contacts.size() > 1) arguments.push_back({"contact", contactName(in.book, contact.name)});
      if (circuit != nullptr) arguments.push_back({"circuit", circuitName(in.site, *circuit)});
      choices.push_back({outlet.id.text() + "\n" + contact.name, in.book.say("field.socket", arguments)});
    }
  }
  sortByText(choices);
  return choices;
}

std::vector<FieldChoice> padChoices(const FieldContext& in) {
  std::vector<FieldChoice> choices;
  for (const site::Pad& pad : in.site.all<site::Pad>()) {
    choices.push_back({pad.id.text(), pad.name.empty() ? pad.id.text() : pad.name});
  }
  sortByText(choices);
  return choices;
}

std::vector<FieldChoice> receptacleChoices() {
  std::vector<FieldChoice> choices;
  for (const tables::ReceptacleType& type : tables::receptacleTypes()) choices.push_back({type.key, type.key});
  return choices;
}

std::vector<FieldChoice> cordTypeChoices() {
  std::vector<FieldChoice> choices;
  for (const tables::CordType& type : tables::cordTypes()) choices.push_back({type.letters, type.letters});
  return choices;
}

}  // namespace cordreach::app
