// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/start_finding.h"

#include <algorithm>

namespace cordreach::rules {

namespace {

void aboutAmps(FindingBuilder& finding, const study::StartAnswer& start) {
  finding.with(amperes("current_a", start.peak.likely)).with(volts("voltage_v", start.lowest.likely));
  if (start.time.likely) finding.with(seconds("start_s", *start.time.likely));
}

void aboutTrip(FindingBuilder& finding, const study::StartAnswer& start, const std::optional<units::Current>& rating) {
  if (start.trip->likely) finding.with(seconds("likely_s", *start.trip->likely));
  if (start.trip->earliest) finding.with(seconds("earliest_s", *start.trip->earliest));
  if (start.trip->latest) finding.with(seconds("latest_s", *start.trip->latest));
  if (rating) finding.why("breaker.rated", {amperes("rating_a", *rating)});
}

std::optional<units::Current> ratingOf(const site::Circuit& circuit) {
  return circuit.rating ? std::optional(circuit.rating->value) : std::nullopt;
}

}  // namespace

void aboutStart(FindingBuilder& finding, const HookupCase& hookup, const Case& in) {
  const study::StartAnswer& start = *hookup.answer->start;
  finding.about(hookup, in);
  aboutAmps(finding, start);
  base::Arguments draws{text("machine", hookup.machine->name), amperes("current_a", start.peak.likely)};
  if (start.time.likely) draws.push_back(amperes("running_a", hookup.answer->current.likely));
  finding.with(text("way", start.tipped ? "tipped" : hookup.machine->kind == "slow-machine" ? "flat" : "plain"));
  finding.why("start.draws", std::move(draws));
}

void aboutStart(FindingBuilder& finding, const study::LoadStart& start, const Case& in) {
  const std::string name = in.site().at<site::FixedLoad>(start.load).name;
  finding.about(in.site().at<site::Circuit>(start.circuit), in).subject(SubjectKind::FixedLoad, start.load.text());
  for (const HookupCase* hookup : in.on(start.circuit)) {
    const auto& hours = hookup->hookup->hours;
    if (!hours || (start.moment && hours->holds(*start.moment))) finding.about(*hookup, in);
  }
  finding.at(start.moment).with(text("load", name));
  aboutAmps(finding, start.start);
  base::Arguments draws{text("machine", name), amperes("current_a", start.start.peak.likely)};
  if (start.start.time.likely) draws.push_back(amperes("running_a", start.start.settled.likely));
  finding.why("start.draws", std::move(draws));
}

StartVerdict verdictOn(const study::StartAnswer& start) {
  if (!start.trip) return StartVerdict::Holds;
  if (start.trip->likely) return StartVerdict::Trips;
  return start.trip->earliest ? StartVerdict::TripsEarly : StartVerdict::Holds;
}

Findings startsThat(StartVerdict verdict, const Case& in, const Rule& rule) {
  Findings found;
  for (const HookupCase& hookup : in.hookups()) {
    const study::HookupAnswer& answer = *hookup.answer;
    if (!answer.start || answer.stalledCold || verdictOn(*answer.start) != verdict) continue;
    FindingBuilder finding(rule);
    aboutStart(finding, hookup, in);
    aboutTrip(finding, *answer.start, answer.breaker.rating);
    found.push_back(finding.done());
  }
  for (const study::LoadStart& start : in.answer().loadStarts) {
    if (verdictOn(start.start) != verdict) continue;
    FindingBuilder finding(rule);
    aboutStart(finding, start, in);
    aboutTrip(finding, start.start, ratingOf(in.site().at<site::Circuit>(start.circuit)));
    found.push_back(finding.done());
  }
  return found;
}

}  // namespace cordreach::rules
