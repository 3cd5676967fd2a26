// SPDX-License-Identifier: GPL-3.0-or-later
// A start takes more volts than it should from something else that is on.
#include <algorithm>

#include "rules/all_rules.h"
#include "rules/start_finding.h"

namespace cordreach::rules {

namespace {

std::string nameOf(const study::LoadDip& dip, const Case& in) {
  if (dip.load) return in.site().at<site::FixedLoad>(*dip.load).name;
  return in.site().at<site::Machine>(in.site().at<site::Hookup>(*dip.hookup).machine).name;
}

// The deepest at something else: not at another cord of the machine itself.
const study::LoadDip* deepestAt(const HookupCase& hookup, const Case& in) {
  for (const study::LoadDip& dip : hookup.answer->start->dips) {
    const bool itself = dip.hookup && in.site().at<site::Hookup>(*dip.hookup).machine == hookup.hookup->machine;
    if (!itself) return &dip;
  }
  return nullptr;
}

void aboutDip(FindingBuilder& finding, const study::LoadDip& dip, const Case& in) {
  finding.with(text("other", nameOf(dip, in)));
  finding.with(volts("before_v", dip.dip.before)).with(volts("during_v", dip.dip.during.likely));
}

// What comes on by itself: only where the plan's machines see it. That lamps of the building do is no news to it.
Findings besideLoads(const Case& in, const Rule& rule) {
  Findings found;
  for (const study::LoadStart& start : in.answer().loadStarts) {
    const auto& dips = start.start.dips;
    const auto deepest = std::find_if(dips.begin(), dips.end(), [](const auto& dip) { return dip.hookup.has_value(); });
    if (deepest == dips.end() || !exceeds(deepest->dip.share(), rule.limitFraction())) continue;
    FindingBuilder finding(rule);
    aboutStart(finding, start, in);
    aboutDip(finding, *deepest, in);
    found.push_back(finding.done());
  }
  return found;
}

}  // namespace

Findings startDips(const Case& in, const Rule& rule) {
  Findings found = besideLoads(in, rule);
  for (const HookupCase& hookup : in.hookups()) {
    const auto& start = hookup.answer->start;
    const study::LoadDip* at = start ? deepestAt(hookup, in) : nullptr;
    if (at == nullptr || !exceeds(at->dip.share(), rule.limitFraction())) continue;
    FindingBuilder finding(rule);
    aboutStart(finding, hookup, in);
    aboutDip(finding, *at, in);
    if (at->load) finding.subject(SubjectKind::FixedLoad, at->load->text());
    found.push_back(finding.done());
  }
  return found;
}

}  // namespace cordreach::rules
