// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/judge.h"

#include <algorithm>
#include <tuple>

#include "rules/rule_table.h"

namespace cordreach::rules {

namespace {

bool acceptedBy(const site::Site& site, const Finding& finding) {
  if (finding.severity != Severity::Caution) return false;
  const auto& all = site.all<site::Acceptance>();
  return std::any_of(all.begin(), all.end(), [&](const site::Acceptance& acceptance) {
    return acceptance.finding == finding.code && acceptance.subject == finding.subjects.front().id;
  });
}

bool subjectsBefore(const Finding& a, const Finding& b) {
  return std::lexicographical_compare(a.subjects.begin(), a.subjects.end(), b.subjects.begin(), b.subjects.end(),
                                      [](const Subject& left, const Subject& right) {
                                        return std::tie(left.kind, left.id) < std::tie(right.kind, right.id);
                                      });
}

}  // namespace

std::vector<Finding> judge(const site::Site& site, const study::Answer& answer) {
  const Case in(site, answer);
  std::vector<Finding> findings;
  for (const Rule& rule : ruleTable()) {
    Findings found = rule.apply(in, rule);
    for (Finding& finding : found) finding.accepted = acceptedBy(site, finding);
    std::stable_sort(found.begin(), found.end(), subjectsBefore);
    std::move(found.begin(), found.end(), std::back_inserter(findings));
  }
  std::stable_sort(findings.begin(), findings.end(),
                   [](const Finding& a, const Finding& b) { return a.severity > b.severity; });
  return findings;
}

Severity verdictOf(const site::HookupId& hookup, const std::vector<Finding>& findings) {
  Severity worst = Severity::Ok;
  for (const Finding& finding : findings) {
    const bool coloured = std::find(finding.hookups.begin(), finding.hookups.end(), hookup) != finding.hookups.end();
    if (coloured && !finding.accepted) worst = std::max(worst, finding.severity);
  }
  return worst;
}

Severity worstOf(const std::vector<Finding>& findings) {
  Severity worst = Severity::Ok;
  for (const Finding& finding : findings) {
    if (!finding.accepted) worst = std::max(worst, finding.severity);
  }
  return worst;
}

}  // namespace cordreach::rules
