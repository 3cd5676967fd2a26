// SPDX-License-Identifier: GPL-3.0-or-later
// The adiabatic equation's own shape; published factors stand in the published tests.
#include "physics/wire_short_circuit.h"

#include <gtest/gtest.h>

namespace cordreach::physics {
namespace {

using tables::Metal;
using units::ampere;
using units::WireSize;

units::Temperature celsius(double value) { return units::Temperature::fromCelsius(value); }

TEST(AdiabaticTime, FallsWithTheSquareOfTheCurrent) {
  const auto time = [](double amps) {
    return adiabaticTime(WireSize::awg(14), Metal::Copper, amps * ampere, celsius(45), celsius(160)).si();
  };
  EXPECT_NEAR(time(100) / time(200), 4.0, 1e-9);
}

TEST(AdiabaticFactor, AddsUpInSquaresOverTemperature) {
  const double whole = adiabaticFactor(Metal::Copper, celsius(30), celsius(160));
  const double first = adiabaticFactor(Metal::Copper, celsius(30), celsius(70));
  const double second = adiabaticFactor(Metal::Copper, celsius(70), celsius(160));
  EXPECT_NEAR(whole * whole, first * first + second * second, 1e-6);
  EXPECT_LT(adiabaticFactor(Metal::Aluminium, celsius(30), celsius(160)), whole);
}

}  // namespace
}  // namespace cordreach::physics
