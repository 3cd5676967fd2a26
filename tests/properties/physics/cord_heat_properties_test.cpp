// SPDX-License-Identifier: GPL-3.0-or-later
// What must hold for every cord, laying and current.
#include <cmath>

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "physics/cord_heat.h"
#include "physics/cord_transient.h"

namespace cordreach::physics {
namespace {

using tables::CordFamily;
using tables::Laying;
using units::WireSize;

units::Temperature celsius(double value) { return units::Temperature::fromCelsius(value); }
units::Current amperes(int tenths) { return 0.1 * tenths * units::ampere; }

CordSection anySection() {
  CordSection section{.size = WireSize::awg(*rc::gen::element(10, 12, 14, 16, 18))};
  section.family = *rc::gen::element(CordFamily::Hard, CordFamily::ExtraHard);
  section.laying =
      *rc::gen::element(Laying::Straight, Laying::Floor, Laying::Carpet, Laying::Covered, Laying::Coiled, Laying::Reel);
  section.turns = *rc::gen::inRange(1, section.laying == Laying::Reel ? 5 : 25);
  section.conductors = *rc::gen::element(2, 3);
  return section;
}

Corner anyCorner() { return *rc::gen::element(Corner::Low, Corner::Likely, Corner::High); }

// Beyond the model counts as hotter than anything.
double conductorC(const std::optional<HeatResult>& result) { return result ? result->conductor.celsius() : 1e9; }

RC_GTEST_PROP(CordHeat, HeavierGaugeOfOneFamilyIsNeverHotter, ()) {
  CordSection light = anySection();
  RC_PRE(light.size.awgNumber().value() > 10);
  CordSection heavy = light;
  heavy.size = WireSize::awg(light.size.awgNumber().value() - *rc::gen::element(1, 2));
  const auto current = amperes(*rc::gen::inRange(0, 300));
  const Corner corner = anyCorner();
  RC_ASSERT(conductorC(steady(heavy, current, celsius(25), corner)) <=
            conductorC(steady(light, current, celsius(25), corner)) + 1e-6);
}

RC_GTEST_PROP(CordHeat, MoreCurrentIsNeverCooler, ()) {
  const CordSection section = anySection();
  const int tenths = *rc::gen::inRange(0, 300);
  const Corner corner = anyCorner();
  const double less = conductorC(steady(section, amperes(tenths), celsius(25), corner));
  RC_ASSERT(less <=
            conductorC(steady(section, amperes(tenths + 1 + *rc::gen::inRange(0, 50)), celsius(25), corner)) + 1e-6);
}

RC_GTEST_PROP(CordHeat, LieInOrderInsideTheirBandAndAboveTheAir, ()) {
  const CordSection section = anySection();
  const double airC = *rc::gen::inRange(-10, 45);
  const HeatBand band = steadyBand(section, amperes(*rc::gen::inRange(0, 250)), celsius(airC));
  RC_ASSERT(conductorC(band.low) <= conductorC(band.likely) + 1e-6);
  RC_ASSERT(conductorC(band.likely) <= conductorC(band.high) + 1e-6);
  RC_ASSERT(conductorC(band.low) >= airC - 1e-6);
  if (band.likely) {
    RC_ASSERT(band.likely->surface <= band.likely->conductor + 1e-6 * units::kelvin);
  }
}

RC_GTEST_PROP(CordTransient, AtConstantCurrentOnlyWarms, ()) {
  CordTransient cord(anySection(), celsius(25), anyCorner());
  const auto current = amperes(*rc::gen::inRange(1, 250));
  double previous = 25.0;
  for (int interval = 0; interval < 20; ++interval) {
    cord.advance(current, static_cast<double>(*rc::gen::inRange(1, 600)) * units::second);
    const double now = cord.now().conductor.celsius();
    RC_ASSERT(now >= previous - 1e-3);
    previous = now;
  }
}

RC_GTEST_PROP(CordTransient, EndsAtTheSteadyState, ()) {
  const CordSection section = anySection();
  const auto current = amperes(*rc::gen::inRange(0, 150));
  const Corner corner = anyCorner();
  const auto end = steady(section, current, celsius(25), corner);
  RC_PRE(end.has_value() && end->conductor < celsius(150));
  CordTransient cord(section, celsius(25), corner);
  cord.advance(current, 30.0 * units::hour);
  RC_ASSERT(std::abs((cord.now().conductor - end->conductor).si()) < 0.05);
  RC_ASSERT(std::abs((cord.now().surface - end->surface).si()) < 0.05);
}

RC_GTEST_PROP(CordTransient, IsWithinATenthOfAKelvinOfAFinerRunUnderADuty, ()) {
  const CordSection section = anySection();
  CordTransient coarse(section, celsius(25));
  CordTransient fine(section, celsius(25));
  fine.setToleranceK(1e-4);
  for (int interval = 0; interval < 12; ++interval) {
    const auto current = amperes(*rc::gen::inRange(0, 250));
    const auto duration = static_cast<double>(*rc::gen::inRange(5, 1200)) * units::second;
    coarse.advance(current, duration);
    fine.advance(current, duration);
    RC_PRE(!fine.beyondModel() && !coarse.beyondModel());
    RC_ASSERT(std::abs((coarse.now().conductor - fine.now().conductor).si()) < 0.1);
  }
}

RC_GTEST_PROP(CordTransient, ReachesALimitWhenItSaysItDoes, ()) {
  const CordSection section = anySection();
  const auto current = amperes(*rc::gen::inRange(50, 300));
  const Corner corner = anyCorner();
  CordTransient cord(section, celsius(25), corner);
  const auto time = cord.timeToReach(celsius(60), current, 2.0 * units::hour);
  if (!time) {
    cord.advance(current, 2.0 * units::hour);
    RC_ASSERT(cord.now().conductor < celsius(60.05));
  } else {
    cord.advance(current, *time);
    RC_ASSERT(std::abs(cord.now().conductor.celsius() - 60.0) < 0.1);
  }
}

}  // namespace
}  // namespace cordreach::physics
