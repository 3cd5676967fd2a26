// SPDX-License-Identifier: GPL-3.0-or-later
#include "planning/cord_judging.h"

#include <algorithm>

#include "planning/cord_site.h"
#include "rules/case.h"
#include "rules/judge.h"
#include "study/assess.h"

namespace cordreach::planning {

namespace {

using rules::Severity;

// A tired breaker acts when the earliest curve does: what else is only told is then to be counted on.
void countOnEarlyTrips(std::vector<rules::Finding>& findings) {
  for (rules::Finding& finding : findings) {
    const bool early = finding.code == "breaker.trips_early" || finding.code == "start.trips_early";
    if (early) finding.severity = std::max(finding.severity, Severity::Caution);
  }
}

// A machine that does not start says more than the amps of one that stands, which fall as the cord gets longer.
bool tellsMore(const rules::Finding& finding) {
  return finding.code == "machine.stall" || finding.code == "start.never";
}

JudgedCase judgeOn(const CordQuestion& question, units::Current breaker, const site::Cord* extension) {
  const site::Site site = cordSite(question, breaker, extension);
  study::StudyOptions options;
  const site::HookupId id = askedHookup(question);
  if (const auto panel = cordSitePanel(site, id)) options.panels = {*panel};
  const study::Answer answer = study::assess(site, options);
  auto findings = rules::judge(site, answer);
  if (question.whatIf.tiredBreaker) countOnEarlyTrips(findings);
  const study::HookupAnswer* hookup = answer.find(id);
  CORDREACH_EXPECTS(hookup != nullptr);
  JudgedCase judged{*hookup, rules::verdictOf(id, findings), {}, {}};
  for (const rules::Finding& finding : findings) {
    const bool colours = std::find(finding.hookups.begin(), finding.hookups.end(), id) != finding.hookups.end();
    if (finding.severity != judged.verdict || !colours) continue;
    if (!judged.worst || tellsMore(finding)) judged.worst = finding;
    if (tellsMore(finding)) break;
  }
  const rules::Case in(site, answer);
  for (const rules::HookupCase& one : in.hookups()) {
    if (one.hookup->id == id) judged.limits = limitsOf(in, one);
  }
  return judged;
}

}  // namespace

std::vector<JudgedCase> judgeCases(const CordQuestion& question, const site::Cord* extension) {
  if (question.at) return {judgeOn(question, {}, extension)};
  std::vector<JudgedCase> cases;
  for (const units::Current breaker : likelyBreakers(question)) cases.push_back(judgeOn(question, breaker, extension));
  return cases;
}

const JudgedCase& strictest(const std::vector<JudgedCase>& cases) {
  return *std::max_element(cases.begin(), cases.end(), [](const JudgedCase& a, const JudgedCase& b) {
    if (a.verdict != b.verdict) return a.verdict < b.verdict;
    return a.answer.voltage.likely > b.answer.voltage.likely;
  });
}

}  // namespace cordreach::planning
