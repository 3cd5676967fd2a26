// SPDX-License-Identifier: GPL-3.0-or-later
// An outlet whose breaker is not on its floor: whoever looks for it looks on the wrong one.
#include "rules/all_rules.h"
#include "rules/finding_builder.h"

namespace cordreach::rules {

Findings outletOtherFloor(const Case& in, const Rule& rule) {
  Findings found;
  for (const HookupCase& hookup : in.hookups()) {
    if (hookup.circuit == nullptr || !hookup.outlet->place) continue;
    const site::Panel& panel = in.site().at<site::Panel>(hookup.circuit->panel);
    if (!panel.place || panel.place->floor == hookup.outlet->place->floor) continue;
    const std::string floor = in.site().at<site::Floor>(panel.place->floor).name;
    FindingBuilder finding(rule);
    finding.about(*hookup.outlet).about(hookup, in).subject(SubjectKind::Panel, panel.id.text());
    finding.with(text("panel", panel.name)).with(text("panel_floor", floor));
    found.push_back(finding.why("panel.elsewhere", {text("panel", panel.name), text("panel_floor", floor)}).done());
  }
  return found;
}

}  // namespace cordreach::rules
