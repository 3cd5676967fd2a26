// SPDX-License-Identifier: GPL-3.0-or-later
// Small planned evenings at random: the course of the day never makes an answer laxer, and what it says will happen is
// in the answer.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

#include "study/assess.h"
#include "study/day_run.h"
#include "support/small_site.h"

namespace cordreach::study {
namespace {

using tables::LoadClass;
using testing::SmallSite;
using units::hour;
using units::minute;

site::Site randomEvening() {
  SmallSite building;
  const int circuits = *rc::gen::inRange(1, 3);
  for (int c = 0; c < circuits; ++c) {
    const std::string name = std::to_string(c + 1);
    building.circuit(name, *rc::gen::element(15.0, 20.0), *rc::gen::inRange(20, 90));
    if (*rc::gen::arbitrary<bool>()) {
      building.load("L" + name, name, *rc::gen::inRange(2, 12),
                    site::Cycle{*rc::gen::inRange(3, 12) * minute, *rc::gen::inRange(3, 20) * minute});
    }
    const auto kind = *rc::gen::element(LoadClass::Resistance, LoadClass::Induction, LoadClass::Universal);
    building.machine("M" + name, kind, *rc::gen::inRange(6, 16), *rc::gen::element(14, 16));
    building.cord("C" + name, *rc::gen::element(12, 14, 16), *rc::gen::element(25.0, 50.0, 100.0));
    const bool coiled = *rc::gen::arbitrary<bool>();
    building.extension("C" + name, name,
                       {coiled ? tables::Laying::Coiled : tables::Laying::Floor, coiled ? 8.0 : 0.0, {}});
    const double from = 18.0 + 0.25 * *rc::gen::inRange(0, 4);
    building.plug("M" + name, SmallSite::in("C" + name), {{from, from + 0.25 * *rc::gen::inRange(1, 7)}});
  }
  return building.site;
}

int strictness(const BreakerAnswer& breaker) {
  const auto within = [&](const std::optional<units::Duration>& time) { return time && *time <= breaker.run; };
  return within(breaker.trip->likely) ? 2 : within(breaker.trip->earliest) ? 1 : 0;
}

RC_GTEST_PROP(DayAnswerProperties, IsNeverLaxerThanByMoments, ()) {
  const site::Site site = randomEvening();
  StudyOptions moments;
  moments.inTime = false;
  const Answer before = assess(site, moments);
  const Answer answer = assess(site);
  RC_ASSERT(answer.hookups.size() == before.hookups.size());
  for (std::size_t i = 0; i < answer.hookups.size(); ++i) {
    const HookupAnswer& now = answer.hookups[i];
    RC_ASSERT(strictness(now.breaker) >= strictness(before.hookups[i].breaker));
    RC_ASSERT(now.stalledCold == before.hookups[i].stalledCold);
    RC_ASSERT(now.stalledWarm || !before.hookups[i].stalledWarm);
    for (std::size_t c = 0; c < now.cords.size(); ++c) {
      const CordAnswer& was = before.hookups[i].cords[c];
      RC_ASSERT(now.cords[c].beyondModel() || !was.beyondModel());
      RC_ASSERT(now.cords[c].beyondModel() || now.cords[c].conductor->likely >= was.conductor->likely);
      RC_ASSERT(now.cords[c].beyondModel() || now.cords[c].conductor->high >= now.cords[c].conductor->likely);
    }
  }
}

bool isIn(const Answer& answer, const DayEvent& event) {
  for (const HookupAnswer& hookup : answer.hookups) {
    const bool mine = event.subject == DaySubject(hookup.id) || event.subject == DaySubject(*hookup.circuit);
    if (event.kind == DayEventKind::Stall && mine) return hookup.stalledCold || hookup.stalledWarm;
    if (event.kind == DayEventKind::Trip && mine && strictness(hookup.breaker) == 2) return true;
    for (const CordAnswer& cord : hookup.cords) {
      const bool same = event.subject == (cord.id ? DaySubject(*cord.id) : DaySubject(OwnCord{hookup.machine, "A"}));
      if (same && (cord.beyondModel() || cord.conductor->likely >= cord.limit)) return true;
    }
  }
  return false;
}

// A cooler that trips its breaker when the machines are gone is no part of the plan.
bool isPlanned(const site::Site& site, const Answer& answer, const DayEvent& event, units::Duration at) {
  const auto* circuit = std::get_if<site::CircuitId>(&event.subject);
  if (circuit == nullptr) return true;
  return std::any_of(answer.hookups.begin(), answer.hookups.end(), [&](const HookupAnswer& hookup) {
    const site::Hours& hours = *site.at<site::Hookup>(hookup.id).hours;
    return hookup.circuit == *circuit && hours.from <= at && at <= hours.until;
  });
}

RC_GTEST_PROP(DayAnswerProperties, HoldsWhateverTheRunTells, ()) {
  const site::Site site = randomEvening();
  const Answer answer = assess(site);
  DayRunOptions options;
  options.until = 3.0 * hour;
  const DayRun run = runDay(site, options);
  for (const DayEvent& event : run.events) {
    if (!event.isFault() || !isPlanned(site, answer, event, run.start + event.at)) continue;
    RC_ASSERT(isIn(answer, event));
  }
}

}  // namespace
}  // namespace cordreach::study
