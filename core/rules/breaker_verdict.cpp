// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/breaker_verdict.h"

#include <algorithm>

namespace cordreach::rules {

namespace {

void aboutBreaker(FindingBuilder& finding, const study::BreakerAnswer& breaker) {
  if (breaker.rating) finding.with(amperes("rating_a", *breaker.rating));
  finding.with(amperes("current_a", breaker.current)).with(amperes("carrying_a", breaker.carrying));
  finding.with(seconds("run_s", breaker.run)).happens(breaker.tripsAt);
  if (breaker.trip->earliest) finding.with(seconds("earliest_s", *breaker.trip->earliest));
  if (breaker.trip->likely) finding.with(seconds("likely_s", *breaker.trip->likely));
  if (breaker.trip->latest) finding.with(seconds("latest_s", *breaker.trip->latest));
}

// Who else is on the circuit: its largest load that is no machine of the plan.
void nameOtherLoad(FindingBuilder& finding, const study::CircuitAnswer& answer, const Case& in) {
  for (const study::Share& share : answer.shares) {
    if (!share.load) continue;
    finding.subject(SubjectKind::FixedLoad, share.load->text());
    finding.with(text("other_load", in.site().at<site::FixedLoad>(*share.load).name));
    return;
  }
}

struct Worst {
  study::WithinRun does;
  const study::BreakerAnswer* breaker;
  const HookupCase* hookup;  // whose moment it is; none: the circuit's own
};

// A circuit is answered at its largest current; a hookup's own moment can be the one that trips.
Worst worstOn(const study::CircuitAnswer& answer, const std::vector<const HookupCase*>& hookups) {
  Worst worst{study::withinRun(answer.breaker), &answer.breaker, nullptr};
  for (const HookupCase* hookup : hookups) {
    const study::WithinRun does = study::withinRun(hookup->answer->breaker);
    if (does > worst.does) worst = {does, &hookup->answer->breaker, hookup};
  }
  return worst;
}

Finding onCircuit(const study::CircuitAnswer& answer, const Worst& worst, const Case& in, const Rule& rule) {
  FindingBuilder finding(rule);
  finding.about(in.site().at<site::Circuit>(answer.id), in);
  if (worst.hookup == nullptr) finding.at(answer.moment);
  for (const HookupCase* hookup : in.on(answer.id)) {
    if (study::withinRun(hookup->answer->breaker) == worst.does) finding.about(*hookup, in);
  }
  aboutBreaker(finding, *worst.breaker);
  nameOtherLoad(finding, answer, in);
  whyShares(finding, answer.shares, in);
  finding.why("breaker.rated", {amperes("rating_a", worst.breaker->rating.value_or(units::Current{}))});
  return finding.done();
}

// A panel's main takes everything with it.
Finding onMain(const study::MainAnswer& main, const Case& in, const Rule& rule) {
  const site::Panel& panel = in.site().at<site::Panel>(main.id);
  FindingBuilder finding(rule);
  finding.subject(SubjectKind::Panel, main.id.text()).with(text("panel", panel.name)).at(main.moment);
  for (const HookupCase& hookup : in.hookups()) {
    const auto& ids = main.hookups;
    if (std::find(ids.begin(), ids.end(), hookup.hookup->id) == ids.end()) continue;
    finding.subject(SubjectKind::Hookup, hookup.hookup->id.text()).colours(hookup);
    finding.why("share.machine",
                {text("machine", hookup.machine->name), amperes("current_a", hookup.answer->current.likely)});
  }
  aboutBreaker(finding, main.breaker);
  return finding.why("breaker.rated", {amperes("rating_a", main.breaker.rating.value_or(units::Current{}))}).done();
}

}  // namespace

Findings breakersThat(study::WithinRun does, const Case& in, const Rule& rule) {
  Findings found;
  for (const study::CircuitAnswer& answer : in.answer().circuits) {
    const Worst worst = worstOn(answer, in.on(answer.id));
    if (worst.does == does) found.push_back(onCircuit(answer, worst, in, rule));
  }
  for (const study::MainAnswer& main : in.answer().mains) {
    if (study::withinRun(main.breaker) == does) found.push_back(onMain(main, in, rule));
  }
  for (const HookupCase& hookup : in.hookups()) {
    if (hookup.circuit != nullptr || study::withinRun(hookup.answer->breaker) != does) continue;
    FindingBuilder finding(rule);
    finding.about(hookup, in);
    aboutBreaker(finding, hookup.answer->breaker);
    finding.why("share.machine",
                {text("machine", hookup.machine->name), amperes("current_a", hookup.answer->current.likely)});
    found.push_back(finding.why("unknown.breaker").done());
  }
  return found;
}

}  // namespace cordreach::rules
