// SPDX-License-Identifier: GPL-3.0-or-later
// Small buildings switched at random: whatever happens in them, it is the same in finer steps, no circuit draws after
// its trip, nothing is cooler than the air, and the amps are those of a network solved by itself.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

#include "support/day_builder.h"

namespace cordreach::timeline {
namespace {

using testing::DayBuilder;

// Breakers far above what is drawn, unless trips are wanted: near its pick-up a trip's time has no bound.
Day randomDay(bool mayTrip) {
  DayBuilder builder(0.05);
  const int circuits = *rc::gen::inRange(1, 4);
  for (int c = 0; c < circuits; ++c) {
    const int gauge = *rc::gen::element(12, 14, 16);
    const bool coiled = *rc::gen::arbitrary<bool>();
    const double lengthM = *rc::gen::inRange(5, 25);
    builder.circuit({gauge, lengthM, coiled ? tables::Laying::Coiled : tables::Laying::Floor, coiled ? 6.0 : 0.0},
                    physics::Breaker{(mayTrip ? 15.0 : 60.0) * units::ampere});
    const int loads = *rc::gen::inRange(1, 4);
    for (int i = 0; i < loads; ++i) {
      const double fromS = *rc::gen::inRange(0, 3600);
      const double untilS = fromS + *rc::gen::inRange(20, 3600);
      const double amps = *rc::gen::inRange(2, mayTrip ? 15 : 7);
      const bool steady = *rc::gen::arbitrary<bool>();
      builder.load(static_cast<std::size_t>(c),
                   steady ? testing::fixedCurrent(amps, 0.9) : testing::impedanceOhm({115.0 / amps, 2.0}), fromS,
                   untilS);
    }
  }
  return builder.forHours(2);
}

RC_GTEST_PROP(DayProperties, FinerStepsShowTheSame, ()) {
  const Day day = randomDay(false);
  DayOptions options;
  options.sampleEvery = 120.0 * units::second;
  const DayResult usual = runDay(day, options);
  options.movedK = 0.25;
  options.longestLook = 20.0 * units::second;
  options.wholePanels = true;
  const DayResult finer = runDay(day, options);
  RC_ASSERT(usual.samples.size() == finer.samples.size());
  for (std::size_t i = 0; i < usual.samples.size(); ++i) {
    for (std::size_t c = 0; c < day.conductors.size(); ++c) {
      RC_ASSERT(std::abs((usual.samples[i].conductors[c] - finer.samples[i].conductors[c]).si()) < 0.2);
      RC_ASSERT(usual.samples[i].conductors[c] >= testing::kDayAir - 1e-6 * units::kelvin);
    }
  }
}

RC_GTEST_PROP(DayProperties, WhatTrippedDrawsNothing, ()) {
  const Day day = randomDay(true);
  DayOptions options;
  options.sampleEvery = 60.0 * units::second;
  const DayResult result = runDay(day, options);
  std::vector<double> tripS(day.protectedPoles.size(), INFINITY);
  for (const Event& event : result.events) {
    if (event.kind == EventKind::Trip) tripS[event.protectedPoles] = event.at.si();
  }
  for (const Sample& sample : result.samples) {
    for (std::size_t i = 0; i < tripS.size(); ++i) {
      RC_ASSERT(sample.at.si() <= tripS[i] || sample.circuitA[i] == 0.0);
    }
  }
  for (std::size_t i = 0; i < tripS.size(); ++i) {
    RC_ASSERT(std::isfinite(tripS[i]) == result.trips[i].likely.has_value());
    RC_ASSERT(!result.trips[i].likely || result.trips[i].earliest <= result.trips[i].likely);
  }
}

}  // namespace
}  // namespace cordreach::timeline
