// SPDX-License-Identifier: GPL-3.0-or-later
// Contacts of a plug that warm more than a sound pair may.
#include "rules/all_rules.h"
#include "rules/finding_builder.h"

namespace cordreach::rules {

Findings plugOverRise(const Case& in, const Rule& rule) {
  Findings found;
  for (const CordCase& cord : in.cords()) {
    const double rise = cord.answer->plugRise.likely.in(units::kelvin);
    if (!exceeds(rise, rule.limitValue())) continue;
    FindingBuilder finding(rule);
    finding.about(cord.link).about(*cord.at, in).colours(cord.users);
    finding.with(number("rise_k", rise)).with(number("limit_k", rule.limitValue()));
    const bool loose = cord.at->contact != nullptr && cord.at->contact->loose &&
                       std::holds_alternative<site::OutletSocket>(*cord.link.socket);
    if (loose) finding.why("contact.loose");
    finding.why("cord.carries", {amperes("current_a", cord.answer->current.likely)});
    found.push_back(finding.done());
  }
  return found;
}

}  // namespace cordreach::rules
