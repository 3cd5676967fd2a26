// SPDX-License-Identifier: GPL-3.0-or-later
#include "planning/remedy.h"

#include <algorithm>

#include "planning/causes.h"
#include "planning/plug.h"
#include "planning/trial.h"
#include "study/assumptions.h"

namespace cordreach::planning {

namespace {

constexpr std::size_t kTries = 5;   // studies a finding
constexpr std::size_t kOffers = 2;  // a choice, not a catalogue

// The coloured hookups, the smallest machine first: it is the easiest to find room for.
std::vector<const site::Hookup*> hookupsOf(const rules::Finding& finding, const site::Site& site) {
  std::vector<const site::Hookup*> hookups;
  for (const site::HookupId& id : finding.hookups) {
    const site::Hookup* hookup = site.find<site::Hookup>(id);
    if (hookup != nullptr && pluggingOf(*hookup, site).inlet != nullptr) hookups.push_back(hookup);
  }
  std::stable_sort(hookups.begin(), hookups.end(), [&](const site::Hookup* a, const site::Hookup* b) {
    return study::plateOf(*pluggingOf(*a, site).inlet) < study::plateOf(*pluggingOf(*b, site).inlet);
  });
  return hookups;
}

Candidates candidatesFor(const rules::Finding& finding, const site::Site& site) {
  Candidates all;
  const auto hookups = hookupsOf(finding, site);
  for (const Maker make : makersFor(finding.code)) {
    for (const site::Hookup* hookup : hookups) {
      for (Candidate& candidate : make({site, *hookup, finding})) all.push_back(std::move(candidate));
    }
  }
  if (all.size() > kTries) all.resize(kTries);
  return all;
}

std::vector<Remedy> search(const rules::Finding& finding, const std::vector<rules::Finding>& present, Trials& trials,
                           std::size_t offers) {
  std::vector<Remedy> remedies;
  if (finding.accepted) return remedies;
  for (const Candidate& candidate : candidatesFor(finding, trials.site())) {
    if (remedies.size() == offers || trials.stopped()) break;
    const std::optional<Trial>& byMoments = trials.of(candidate);
    if (!byMoments || trials.stopped() || !mends(candidate, *byMoments, finding, present)) continue;
    const std::optional<Trial>& trial = trials.inTime(candidate);
    if (!trial || trials.stopped() || !mends(candidate, *trial, finding, present)) continue;
    remedies.push_back({candidate.code, candidate.arguments, candidate.edit, numbersAfter(candidate, *trial)});
  }
  return remedies;
}

}  // namespace

std::vector<Remedy> remediesFor(const rules::Finding& finding, const site::Site& site,
                                const std::vector<rules::Finding>& present, const base::Progress& progress) {
  Trials trials(site, progress);
  return search(finding, present, trials, kOffers);
}

std::vector<std::vector<Remedy>> remediesForAll(const site::Site& site, const std::vector<rules::Finding>& present,
                                                const base::Progress& progress, std::size_t offers) {
  Trials trials(site, progress);
  std::vector<std::vector<Remedy>> all;
  for (const rules::Finding& finding : present) all.push_back(search(finding, present, trials, offers));
  return all;
}

}  // namespace cordreach::planning
