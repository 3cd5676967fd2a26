// SPDX-License-Identifier: GPL-3.0-or-later
// What must hold for every fault: of cords, gauges, breakers and what flowed before.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "physics/fault_clearing.h"
#include "physics/fault_heat.h"
#include "physics/fault_loop.h"
#include "physics/touch_voltage.h"
#include "physics/wire.h"

namespace cordreach::physics {
namespace {

using units::ampere;
using units::metre;
using units::WireSize;

constexpr std::array kGauges = {18, 16, 14, 12, 10};

units::Temperature celsius(double value) { return units::Temperature::fromCelsius(value); }

int anyGauge() { return *rc::gen::element(18, 16, 14, 12, 10); }
double anyLength() { return 0.1 * *rc::gen::inRange(5, 1000); }

FaultLoop wall() {
  const double lengthM = 0.1 * *rc::gen::inRange(10, 600);
  return conductorLoop(WireSize::awg(*rc::gen::element(14, 12, 10)), tables::Metal::Copper, WireUse::Building,
                       lengthM * metre, celsius(30)) +
         FaultLoop{0.03, 0.03};
}

FaultLoop cordLoop(int gauge, double lengthM, double conductorC = 20.0) {
  return conductorLoop(WireSize::awg(gauge), tables::Metal::Copper, WireUse::Cord, lengthM * metre,
                       celsius(conductorC));
}

OvercurrentDevice anyDevice() {
  const double ratingA = *rc::gen::element(10.0, 15.0, 16.0, 20.0, 30.0);
  const auto kind = *rc::gen::element(BreakerKind::ThermalMagnetic, BreakerKind::IecB, BreakerKind::IecC,
                                      BreakerKind::IecD, BreakerKind::Fuse);
  const double carrying = *rc::gen::element(0.0, 0.4, 0.8);
  return {{ratingA * ampere, kind}, BreakerAir::all(celsius(25)), carrying * ratingA * ampere};
}

FaultHeat heatOf(const FaultLoop& wall, int gauge, double lengthM, double startC) {
  const CordSection section{WireSize::awg(gauge)};
  const FaultCord cord(section, Corner::Likely, {celsius(startC), celsius(startC)}, celsius(25));
  const FaultDrive drive{120.0 * units::volt, wall.ohm(), cordLoop(gauge, lengthM).ohm(),
                         temperatureCoefficient(tables::Metal::Copper)};
  return faultHeat(cord, drive, faultHorizon());
}

double seconds(const std::optional<units::Duration>& time) { return time ? time->si() : 1e30; }

RC_GTEST_PROP(Fault, ALongerOrHotterCordNeverRaisesTheCurrent, ()) {
  const FaultLoop before = wall();
  const int gauge = anyGauge();
  const double lengthM = anyLength();
  const double conductorC = *rc::gen::inRange(0, 150);
  const auto near = boltedCurrent(120.0 * units::volt, before + cordLoop(gauge, lengthM, conductorC));
  RC_ASSERT(boltedCurrent(120.0 * units::volt, before + cordLoop(gauge, lengthM + anyLength(), conductorC)) < near);
  RC_ASSERT(boltedCurrent(120.0 * units::volt, before + cordLoop(gauge, lengthM, conductorC + 20.0)) < near);
}

RC_GTEST_PROP(Fault, AHeavierGaugeNeverClearsLater, ()) {
  const FaultLoop before = wall();
  const double lengthM = anyLength();
  const std::size_t thin = static_cast<std::size_t>(*rc::gen::inRange(0, 4));
  const OvercurrentDevice device = anyDevice();
  for (const TripCurve curve : kTripCurves) {
    const auto later = clearingTime(device, curve, heatOf(before, kGauges[thin], lengthM, 30.0));
    const auto sooner = clearingTime(device, curve, heatOf(before, kGauges[thin + 1], lengthM, 30.0));
    RC_ASSERT(seconds(sooner) <= seconds(later) * (1.0 + 1e-6));
  }
}

RC_GTEST_PROP(Fault, AWarmerBreakerNeverClearsLater, ()) {
  const FaultHeat heat = heatOf(wall(), anyGauge(), anyLength(), 30.0);
  OvercurrentDevice device = anyDevice();
  OvercurrentDevice cold = device;
  cold.carrying = {};
  for (const TripCurve curve : kTripCurves) {
    RC_ASSERT(seconds(clearingTime(device, curve, heat)) <= seconds(clearingTime(cold, curve, heat)));
  }
}

RC_GTEST_PROP(Fault, AWarmerCordIsNeverDamagedLater, ()) {
  const FaultLoop before = wall();
  const int gauge = anyGauge();
  const double lengthM = anyLength();
  // Its current is smaller from the start, but it needs less: taken at the same driving loop.
  const double startC = *rc::gen::inRange(25, 90);
  const auto cool = timeToPass(heatOf(before, gauge, lengthM, 25.0), celsius(160));
  const auto warm = timeToPass(heatOf(before, gauge, lengthM, startC), celsius(160));
  RC_ASSERT(seconds(warm) <= seconds(cool) * (1.0 + 1e-6));
}

RC_GTEST_PROP(Fault, TheFrameStandsBetweenNothingAndTheVolts, ()) {
  const FaultLoop loop = wall() + cordLoop(anyGauge(), anyLength());
  const auto touch = touchVoltage(120.0 * units::volt, loop);
  RC_ASSERT(touch > 0.0 * units::volt && touch < 120.0 * units::volt);
}

}  // namespace
}  // namespace cordreach::physics
