// SPDX-License-Identifier: GPL-3.0-or-later
// Heat: cords against rating tables, reel factors and fire research. No table of temperatures measured on cords in use
// was found, so nothing here validates the model; it shows where the model stands against what is printed.
// "Trial model" is our own earlier calculation with the same equations (computed): a check of the code, not of the
// world.
#include <array>
#include <cmath>

#include <gtest/gtest.h>

#include "physics/contact.h"
#include "physics/cord_heat.h"
#include "physics/cord_transient.h"
#include "physics/wire.h"
#include "tables/cord_ampacity.h"

namespace cordreach::physics {
namespace {

using tables::Laying;
using units::ampere;
using units::WireSize;

units::Temperature celsius(double value) { return units::Temperature::fromCelsius(value); }

CordSection section(int gauge, Laying laying, double turns = 0.0) {
  return {.size = WireSize::awg(gauge), .laying = laying, .turns = turns};
}

double conductorC(const CordLadder& ladder, double amps, double airC) {
  return steadyOf(ladder, amps * ampere, celsius(airC)).value().conductor.celsius();
}

// NEC Table 400.5(A)(1), two carrying conductors, 30 °C (seen; 10 AWG from memory); cords are rated 60 °C. The model
// must be cooler than that: 7 to 13 K spare even with the cautious convection.
TEST(CordAtItsCodeAmpacity, IsCoolerThanItsRatingInFreeAir) {
  const std::array<std::pair<int, double>, 5> trial = {{{18, 48.7}, {16, 48.5}, {14, 50.5}, {12, 52.6}, {10, 47.7}}};
  for (const auto& [gauge, expectedC] : trial) {
    const auto row = tables::cordAmpacity(WireSize::awg(gauge), tables::CordColumn::TwoCarrying);
    ASSERT_TRUE(row.has_value());
    CordLadder ladder = ladderOf(section(gauge, Laying::Straight), Corner::Likely);
    ladder.surface.law = ConvectionLaw::ChurchillChu;
    const double hot = conductorC(ladder, row->value.si(), 30.0);
    EXPECT_LT(hot, 53.0) << gauge;
    EXPECT_NEAR(hot, expectedC, 0.6) << gauge << " AWG, trial model";
  }
}

// The same table read the other way: the current that brings the model to 60 °C lies 16 to 25 % above the code's.
TEST(CordAtSixtyDegrees, CarriesSixteenToTwentyFivePerCentMoreThanTheCodeAllows) {
  for (const int gauge : {18, 16, 14, 12, 10}) {
    const auto row = tables::cordAmpacity(WireSize::awg(gauge), tables::CordColumn::TwoCarrying);
    const double current = currentForLimit(section(gauge, Laying::Straight), celsius(60), celsius(30)).si();
    const double below = 1.0 - row->value.si() / current;
    EXPECT_GT(below, 0.15) << gauge;
    EXPECT_LT(below, 0.26) << gauge;
  }
}

// NEC 400.5(A)(3): 0.50 for 10 to 20 carrying conductors (seen), 0.40 for 31 to 40, 0.35 above (from memory); a turn of
// a two-conductor cord brings two. The hank agrees within its 15 %.
TEST(Hank, IsDeratedAsTheCodeDeratesBundles) {
  const auto current = [](double turns) {
    return currentForLimit(section(16, Laying::Coiled, turns), celsius(60), celsius(30)).si();
  };
  const double one = current(1);
  EXPECT_NEAR(current(10) / one, 0.50, 0.15 * 0.50);
  EXPECT_NEAR(current(20) / one, 0.40, 0.15 * 0.40);
  EXPECT_NEAR(current(30) / one, 0.35, 0.15 * 0.35);
}

// Reel factors for 1 to 4 layers, ICEA/NEMA WC 8: 0.85 0.65 0.45 0.35; DIN VDE 0298-4, to 5 layers: 0.80 0.61 0.49 0.42
// 0.38 (both from memory). A test programme found the first not conservative (seen), so the model may lie below.
TEST(Reel, IsDeratedBetweenOrBelowTheTwoReelTables) {
  const double free = currentForLimit(section(16, Laying::Straight), celsius(60), celsius(30)).si();
  const std::array<double, 5> icea = {0.85, 0.65, 0.45, 0.35, 0.35};
  const std::array<double, 5> vde = {0.80, 0.61, 0.49, 0.42, 0.38};
  for (std::size_t i = 0; i < vde.size(); ++i) {
    const double layers = static_cast<double>(i + 1);
    const double factor = currentForLimit(section(16, Laying::Reel, layers), celsius(60), celsius(30)).si() / free;
    EXPECT_LT(factor, std::max(icea[i], vde[i])) << layers;
    EXPECT_GT(factor, 0.85 * std::min(icea[i], vde[i])) << layers;
  }
}

// FAA AC 43.13-1B (text seen, formula from memory): T = T1 + (TR - T1) sqrt(I/Imax), called conservative there. At half
// load it gives 71 % of the full rise, the square law that wall wires follow 25 %: never above it below full load.
TEST(WallWire, StaysUnderTheAviationRuleAndMeetsItAtFullLoad) {
  const WireSize wire = WireSize::awg(12);
  for (double share = 0.1; share <= 1.0; share += 0.1) {
    const double ours =
        (buildingWireTemperature(wire, tables::Metal::Copper, share * 30.0 * ampere, celsius(30)) - celsius(30)).si();
    EXPECT_LE(ours, 60.0 * std::sqrt(share) + 1e-9) << share;
  }
  const auto half = buildingWireTemperature(wire, tables::Metal::Copper, 15.0 * ampere, celsius(30));
  EXPECT_NEAR((half - celsius(30)).si() / 60.0, 0.25, 1e-9);
}

// Fire Research Note 55 (seen, abstract): PVC 3/029 flex ignites above 55 A. With the light metric cord nearest to its
// 1.28 mm2 the model has left its range there, and is far below ignition at the 13 A such a flex was sold for.
// Glowing contacts hold their volts: 35 W at 15 A and, from the same research, 5 W at 0.8 A (seen). Ours is the first
// of these at any current; at 0.8 A that is 1.9 W, a third of what was found: small amps, a documented miss.
TEST(GlowingContact, HoldsThePublishedVoltsAtTheAmpsOfAMachine) {
  const auto volts = [](double amps) {
    return (resistanceAt(100.0 * units::ohm, amps * units::ampere) * (amps * units::ampere)).in(units::volt);
  };
  EXPECT_NEAR(volts(15.0), 35.0 / 15.0, 0.005);
  EXPECT_LT(volts(0.8), 5.0 / 0.8);
}

TEST(IgnitionCurrent, LiesBeyondTheModel) {
  CordSection flex{.size = WireSize::squareMillimetres(1.28), .family = tables::CordFamily::MetricLight};
  flex.laying = Laying::Straight;
  EXPECT_FALSE(steady(flex, 55.0 * ampere, celsius(20)).has_value());
  EXPECT_LT(steady(flex, 13.0 * ampere, celsius(20)).value().conductor, celsius(60));
}

struct FreeAir {
  int gauge;
  double amps, likelyC, surfaceC, lowC, highC;
};

// Trial model (computed): free air at 25 °C, light jacket, three conductors, with the corners of its parameters.
TEST(FreeAirCord, ReproducesTheTrialModelWithItsCorners) {
  const FreeAir rows[] = {{18, 10, 42, 38, 40, 48},  {18, 13, 54, 46, 51, 63}, {18, 15, 63, 52, 59, 76},
                          {18, 20, 95, 73, 86, 120}, {16, 10, 35, 33, 34, 38}, {16, 13, 42, 38, 40, 47},
                          {16, 15, 48, 42, 45, 55},  {16, 20, 65, 54, 60, 78}, {14, 15, 38, 35, 37, 42},
                          {14, 20, 48, 42, 46, 55},  {12, 15, 33, 31, 32, 35}, {12, 20, 39, 35, 37, 43}};
  for (const FreeAir& row : rows) {
    const CordSection cord = section(row.gauge, Laying::Straight);
    const auto likely = steadyOf(ladderOf(cord, Corner::Likely), row.amps * ampere, celsius(25));
    ASSERT_TRUE(likely.has_value());
    EXPECT_NEAR(likely->conductor.celsius(), row.likelyC, 1.0) << row.gauge << " AWG " << row.amps << " A";
    EXPECT_NEAR(likely->surface.celsius(), row.surfaceC, 1.0) << row.gauge << " AWG " << row.amps << " A";
    EXPECT_NEAR(conductorC(ladderOf(cord, Corner::Low), row.amps, 25), row.lowC, 1.0);
    EXPECT_NEAR(conductorC(ladderOf(cord, Corner::High), row.amps, 25), row.highC, 1.0);
  }
}

struct Laid {
  int gauge;
  double amps;
  Laying laying;
  double turns;
  double likelyC;
};

// Trial model (computed), 25 °C: on a floor, under a rug, and coiled, the hottest conductor.
TEST(LaidCord, ReproducesTheTrialModel) {
  const Laid rows[] = {
      {16, 15, Laying::Floor, 0, 52},    {16, 20, Laying::Floor, 0, 73},    {14, 20, Laying::Floor, 0, 53},
      {12, 20, Laying::Floor, 0, 42},    {16, 13, Laying::Covered, 0, 65},  {16, 15, Laying::Covered, 0, 81},
      {14, 15, Laying::Covered, 0, 57},  {12, 20, Laying::Covered, 0, 61},  {16, 10, Laying::Coiled, 10, 72},
      {16, 13, Laying::Coiled, 10, 108}, {16, 15, Laying::Coiled, 10, 140}, {16, 20, Laying::Coiled, 10, 263},
      {16, 10, Laying::Coiled, 20, 103}, {16, 15, Laying::Coiled, 20, 238}, {14, 15, Laying::Coiled, 10, 89},
      {12, 15, Laying::Coiled, 10, 61},  {12, 20, Laying::Coiled, 20, 142}};
  for (const Laid& row : rows) {
    const double hot = conductorC(ladderOf(section(row.gauge, row.laying, row.turns), Corner::Likely), row.amps, 25);
    EXPECT_NEAR(hot, row.likelyC, 1.1) << row.gauge << " AWG " << row.amps << " A, turns " << row.turns;
  }
  EXPECT_FALSE(steady(section(16, Laying::Coiled, 20), 20.0 * ampere, celsius(25)).has_value()) << "runaway";
}

struct Inertia {
  int gauge;
  tables::CordFamily family;
  double seconds;
};

// Trial model (computed, two-dimensional transient): time to 63 % of the rise of a 15 A step in free air.
TEST(TimeConstant, ReproducesTheTrialModel) {
  using tables::CordFamily;
  const Inertia rows[] = {{18, CordFamily::Hard, 204},      {16, CordFamily::Hard, 232},
                          {14, CordFamily::Hard, 284},      {12, CordFamily::Hard, 356},
                          {10, CordFamily::Hard, 520},      {16, CordFamily::ExtraHard, 304},
                          {14, CordFamily::ExtraHard, 468}, {12, CordFamily::ExtraHard, 576}};
  for (const Inertia& row : rows) {
    const CordSection cord{.size = WireSize::awg(row.gauge), .family = row.family, .laying = Laying::Straight};
    const double rise = steady(cord, 15.0 * ampere, celsius(25)).value().conductor.celsius() - 25.0;
    const auto time = CordTransient(cord, celsius(25))
                          .timeToReach(celsius(25 + (1 - std::exp(-1.0)) * rise), 15.0 * ampere, 2.0 * units::hour);
    ASSERT_TRUE(time.has_value());
    EXPECT_NEAR(time->si(), row.seconds, 0.03 * row.seconds) << row.gauge << " AWG";
  }
}

struct Fault {
  int gauge;
  double amps, seconds;
};

// Trial model (computed): from 45 °C to the 160 °C that PVC stands in a short circuit (IEC 60364-4-43, from memory).
TEST(FaultHeating, ReproducesTheTrialModel) {
  const Fault rows[] = {{18, 80, 5.7}, {16, 100, 8.4}, {16, 80, 17}, {14, 100, 25}, {12, 100, 82}};
  for (const Fault& row : rows) {
    LadderRun run(ladderOf(section(row.gauge, Laying::Straight), Corner::Likely), celsius(45));
    const auto time = run.advanceUntil(row.amps * ampere, 600.0 * units::second, celsius(160));
    ASSERT_TRUE(time.has_value());
    EXPECT_NEAR(time->si(), row.seconds, 0.05 * row.seconds) << row.gauge << " AWG " << row.amps << " A";
  }
}

}  // namespace
}  // namespace cordreach::physics
