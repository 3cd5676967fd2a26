// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/finding_groups.h"

#include <algorithm>

#include "panels/names.h"
#include "text/severity_text.h"

namespace cordreach::app {

namespace {

using rules::Severity;

rules::Subject aboutOf(const rules::Finding& finding) {
  const auto isHookup = [](const rules::Subject& one) { return one.kind == rules::SubjectKind::Hookup; };
  const auto hookup = std::find_if(finding.subjects.begin(), finding.subjects.end(), isHookup);
  if (hookup != finding.subjects.end()) return *hookup;
  return finding.subjects.empty() ? rules::Subject{} : finding.subjects.front();
}

}  // namespace

std::vector<FindingGroup> groupsOf(const std::vector<rules::Finding>& findings, std::size_t most) {
  std::vector<FindingGroup> groups;
  for (std::size_t i = 0; i < std::min(findings.size(), most); ++i) {
    const rules::Subject about = aboutOf(findings[i]);
    const auto same = [&](const FindingGroup& group) { return group.about == about && !about.id.empty(); };
    const auto at = std::find_if(groups.begin(), groups.end(), same);
    if (at == groups.end()) {
      groups.push_back({about, {i}});
    } else {
      at->findings.push_back(i);
    }
  }
  return groups;
}

std::string restText(const text::Phrasebook& book, const site::Site& site, const std::vector<rules::Finding>& findings,
                     const FindingGroup& group) {
  std::string counts;
  for (const Severity severity : {Severity::Danger, Severity::Warning, Severity::Caution, Severity::Notice}) {
    const auto count = std::count_if(group.findings.begin() + 1, group.findings.end(),
                                     [&](std::size_t i) { return findings[i].severity == severity; });
    if (count == 0) continue;
    if (!counts.empty()) counts += ", ";
    counts += text::signalWord(book, severity) + " " + std::to_string(count);
  }
  return book.say("panel.findings.rest", {{"n", static_cast<double>(group.findings.size() - 1)},
                                          {"name", subjectName(book, site, group.about)},
                                          {"counts", counts}});
}

}  // namespace cordreach::app
