// SPDX-License-Identifier: GPL-3.0-or-later
// A start takes more volts than it should from something else that is on.
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

}  // namespace

Findings startDips(const Case& in, const Rule& rule) {
  Findings found;
  for (const HookupCase& hookup : in.hookups()) {
    const auto& start = hookup.answer->start;
    const study::LoadDip* at = start ? deepestAt(hookup, in) : nullptr;
    if (at == nullptr || !exceeds(at->dip.share(), rule.limitFraction())) continue;
    const study::LoadDip& deepest = *at;
    FindingBuilder finding(rule);
    aboutStart(finding, hookup, in);
    finding.with(text("other", nameOf(deepest, in)));
    finding.with(volts("before_v", deepest.dip.before)).with(volts("during_v", deepest.dip.during.likely));
    if (deepest.load) finding.subject(SubjectKind::FixedLoad, deepest.load->text());
    found.push_back(finding.done());
  }
  return found;
}

}  // namespace cordreach::rules
