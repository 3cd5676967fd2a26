// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/finding_edits.h"

#include <algorithm>

#include "panels/field_text.h"
#include "panels/fresh_id.h"
#include "planning/plug.h"
#include "planning/trial.h"
#include "rules/judge.h"
#include "study/assess.h"

namespace cordreach::app {

namespace {

void addOnce(const site::HookupId& id, std::vector<site::HookupId>& ids) {
  if (std::find(ids.begin(), ids.end(), id) == ids.end()) ids.push_back(id);
}

// Whose plug, cord or hours the edit changes.
std::vector<site::HookupId> changedHookups(const site::Site& site, const site::Edit& edit) {
  std::vector<site::HookupId> ids;
  for (const site::AnyChange& change : edit.changes) {
    if (const auto* hookup = std::get_if<site::Change<site::Hookup>>(&change)) {
      if (hookup->before && hookup->after) addOnce(hookup->after->id, ids);
    } else if (const auto* use = std::get_if<site::Change<site::ExtensionUse>>(&change)) {
      if (!use->before || !use->after) continue;
      for (const site::Hookup* user : planning::usersOf(*use->before, site)) addOnce(user->id, ids);
    }
  }
  return ids;
}

}  // namespace

base::Result<site::Edit> triedAgain(const site::Site& present, const Verdict& verdict, std::size_t finding,
                                    std::size_t remedy) {
  const base::Error refusal{"remedy.no_longer", {}, {}};
  if (finding >= verdict.findings.size() || finding >= verdict.remedies.size()) return refusal;
  if (remedy >= verdict.remedies[finding].size()) return refusal;
  const planning::Remedy& offered = verdict.remedies[finding][remedy];
  if (verdict.site && (verdict.site.get() == &present || *verdict.site == present)) return offered.edit;
  site::Site changed = present;
  if (!site::apply(offered.edit, changed)) return refusal;
  const planning::Candidate candidate{offered.code, offered.arguments, offered.edit,
                                      changedHookups(present, offered.edit)};
  const auto presentFindings = rules::judge(present, study::assess(present));
  planning::Trial trial{study::assess(changed), {}};
  trial.findings = rules::judge(changed, trial.answer);
  if (!planning::mends(candidate, trial, verdict.findings[finding], presentFindings)) return refusal;
  return offered.edit;
}

bool mayBeAccepted(const rules::Finding& finding) {
  return finding.severity == rules::Severity::Caution && !finding.accepted && !finding.subjects.empty();
}

base::Result<site::Edit> acceptEdit(const site::Site& site, const rules::Finding& finding, const AcceptanceNote& note) {
  if (!mayBeAccepted(finding)) return base::Error{"accept.not_a_caution", finding.code, {}};
  if (tidied(note.who).empty()) return base::Error{"accept.no_name", {}, {}};
  if (tidied(note.reason).empty()) return base::Error{"accept.no_reason", {}, {}};
  site::Acceptance accepted{freshId<site::Acceptance>(site),
                            finding.code,
                            finding.subjects.front().id,
                            tidied(note.who),
                            note.when,
                            tidied(note.reason)};
  return site::Edit{"finding.accept", {site::Change<site::Acceptance>{std::nullopt, std::move(accepted)}}};
}

const site::Acceptance* acceptanceOf(const site::Site& site, const rules::Finding& finding) {
  if (finding.subjects.empty()) return nullptr;
  for (const site::Acceptance& accepted : site.all<site::Acceptance>()) {
    if (accepted.finding == finding.code && accepted.subject == finding.subjects.front().id) return &accepted;
  }
  return nullptr;
}

base::Result<site::Edit> takeBackEdit(const site::Site& site, const site::AcceptanceId& id) {
  const site::Acceptance* accepted = site.find<site::Acceptance>(id);
  if (accepted == nullptr) return base::Error{"field.gone", id.text(), {}};
  return site::Edit{"finding.take_back", {site::Change<site::Acceptance>{*accepted, std::nullopt}}};
}

}  // namespace cordreach::app
