// SPDX-License-Identifier: GPL-3.0-or-later
#include "planning/trial.h"

#include <algorithm>
#include <set>

#include "planning/plug.h"
#include "rules/finding_builder.h"
#include "rules/judge.h"
#include "rules/severity.h"
#include "study/assess.h"

namespace cordreach::planning {

namespace {

void addPanels(const Candidate& candidate, const site::Site& site, std::set<site::PanelId>& panels) {
  for (const site::HookupId& id : candidate.hookups) {
    const Plugging plugging = pluggingOf(site.at<site::Hookup>(id), site);
    if (plugging.circuit != nullptr) panels.insert(plugging.circuit->panel);
  }
}

std::optional<Trial> run(const Candidate& candidate, const site::Site& site, bool inTime,
                         const base::Progress& progress) {
  site::Site changed = site;
  if (!site::apply(candidate.edit, changed)) return {};
  study::StudyOptions options;
  options.panels.emplace();
  addPanels(candidate, site, *options.panels);
  addPanels(candidate, changed, *options.panels);
  options.likelyOnly = true;
  options.inTime = inTime;
  options.progress.stop = progress.stop;
  Trial trial{study::assess(changed, options), {}};
  trial.findings = rules::judge(changed, trial.answer);
  return trial;
}

bool sameMatter(const rules::Finding& a, const rules::Finding& b) {
  return a.code == b.code && a.subjects.front() == b.subjects.front();
}

bool coloursOnly(const rules::Finding& finding, const std::vector<site::HookupId>& hookups) {
  return std::all_of(finding.hookups.begin(), finding.hookups.end(), [&](const site::HookupId& id) {
    return std::find(hookups.begin(), hookups.end(), id) != hookups.end();
  });
}

bool wasThere(const rules::Finding& finding, const std::vector<rules::Finding>& present) {
  return std::any_of(present.begin(), present.end(), [&](const rules::Finding& before) {
    return sameMatter(finding, before) && coloursOnly(finding, before.hookups);
  });
}

}  // namespace

const std::optional<Trial>& Trials::tried(const Candidate& candidate, bool inTime) {
  const auto known = std::find_if(m_tried.begin(), m_tried.end(), [&](const Tried& tried) {
    return tried.inTime == inTime && tried.edit == candidate.edit;
  });
  if (known != m_tried.end()) return known->trial;
  m_tried.push_back({candidate.edit, inTime, run(candidate, m_site, inTime, m_progress)});
  return m_tried.back().trial;
}

bool mends(const Candidate& candidate, const Trial& trial, const rules::Finding& finding,
           const std::vector<rules::Finding>& present) {
  for (const site::HookupId& id : candidate.hookups) {
    if (trial.answer.find(id) == nullptr) return false;
    if (rules::verdictOf(id, trial.findings) >= rules::Severity::Caution) return false;
  }
  return std::none_of(trial.findings.begin(), trial.findings.end(), [&](const rules::Finding& after) {
    if (sameMatter(after, finding)) return true;
    return after.severity >= rules::Severity::Caution && !after.accepted && !wasThere(after, present);
  });
}

base::Arguments numbersAfter(const Candidate& candidate, const Trial& trial) {
  const study::HookupAnswer& answer = *trial.answer.find(candidate.hookups.front());
  base::Arguments after{rules::amperes("current_a", answer.current.likely),
                        rules::volts("voltage_v", answer.voltage.likely)};
  std::optional<units::Temperature> hottest;
  for (const study::CordAnswer& cord : answer.cords) {
    if (cord.conductor && (!hottest || cord.conductor->likely > *hottest)) hottest = cord.conductor->likely;
  }
  if (hottest) after.push_back(rules::celsius("conductor_c", *hottest));
  if (answer.breaker.trip && answer.breaker.trip->likely) {
    after.push_back(rules::seconds("trip_likely_s", *answer.breaker.trip->likely));
  }
  const auto verdict = rules::verdictOf(candidate.hookups.front(), trial.findings);
  after.push_back(rules::text("verdict", std::string(rules::nameOf(verdict))));
  return after;
}

}  // namespace cordreach::planning
