// SPDX-License-Identifier: GPL-3.0-or-later
// The old directory names another breaker than the one the trace found: whoever goes by it switches off the wrong one.
#include <algorithm>

#include "rules/all_rules.h"
#include "rules/directory_text.h"
#include "rules/finding_builder.h"

namespace cordreach::rules {

namespace {

bool disagrees(const site::Contact& contact, const std::set<std::string>& panels, const site::Site& site) {
  if (!contact.assignment || contact.assignment->how != site::HowKnown::Traced) return false;
  const DirectoryText directory = readDirectory(contact.directory, panels);
  if (directory.numbers.empty()) return false;
  const site::Circuit& circuit = site.at<site::Circuit>(contact.assignment->circuit);
  if (!directory.panel.empty() && directory.panel != site.at<site::Panel>(circuit.panel).name) return true;
  const std::set<std::string> numbers = readDirectory(circuit.number, {}).numbers;
  return !numbers.empty() && std::none_of(numbers.begin(), numbers.end(), [&](const std::string& number) {
    return directory.numbers.contains(number);
  });
}

}  // namespace

Findings directoryDisagrees(const Case& in, const Rule& rule) {
  std::set<std::string> panels;
  for (const site::Panel& panel : in.site().all<site::Panel>()) panels.insert(panel.name);
  Findings found;
  for (const site::Outlet* outlet : in.answeredOutlets()) {
    const auto contact = std::find_if(outlet->contacts.begin(), outlet->contacts.end(),
                                      [&](const site::Contact& one) { return disagrees(one, panels, in.site()); });
    if (contact == outlet->contacts.end()) continue;
    FindingBuilder finding(rule);
    finding.about(*outlet).about(in.site().at<site::Circuit>(contact->assignment->circuit), in);
    finding.with(text("directory", contact->directory));
    for (const HookupCase& hookup : in.hookups()) {
      if (hookup.outlet == outlet) finding.colours(hookup);
    }
    finding.why("directory.says", {text("directory", contact->directory)});
    found.push_back(finding.done());
  }
  return found;
}

}  // namespace cordreach::rules
