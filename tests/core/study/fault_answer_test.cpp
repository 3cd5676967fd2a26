// SPDX-License-Identifier: GPL-3.0-or-later
// Faults of small buildings, against loops that can be added up by hand.
#include <gtest/gtest.h>

#include "study/assess.h"
#include "support/small_site.h"

namespace cordreach::study {
namespace {

using tables::LoadClass;
using testing::SmallSite;
using units::ampere;

const FaultAnswer& faultOf(const Answer& answer, const char* hookup, std::size_t cord) {
  return answer.find(site::HookupId(hookup))->cords.at(cord).fault.value();
}

SmallSite withExtension(int gauge, double lengthFt, double breakerA = 20.0, double runFt = 60.0) {
  return SmallSite()
      .circuit("1", breakerA, runFt)
      .machine("M", LoadClass::Resistance, 10)
      .cord("C", gauge, lengthFt)
      .extension("C", "1")
      .plug("M", SmallSite::in("C"));
}

TEST(FaultAnswer, AddsSourceWallAndCordsUpToItsPlace) {
  const Answer answer = assess(withExtension(16, 50).site);
  // 12 AWG 5.31, 16 AWG 13.43 and 14 AWG 8.45 ohm/km at 20 °C; some 4, 10 and 6 % more for what the load warms.
  const double wallOhm = 0.06 + 2 * 18.288 * 5.31e-3 * 1.04;
  const double extensionOhm = 2 * 15.24 * 13.43e-3 * 1.06;
  const double ownOhm = 2 * 15.24 * 8.45e-3 * 1.05;
  const double atEndA = 120.0 / (wallOhm + extensionOhm);
  const double atMachineA = 120.0 / (wallOhm + extensionOhm + ownOhm);
  EXPECT_NEAR(faultOf(answer, "HM", 0).current->likely.si(), atEndA, 0.02 * atEndA);
  EXPECT_NEAR(faultOf(answer, "HM", 1).current->likely.si(), atMachineA, 0.02 * atMachineA);
}

TEST(FaultAnswer, KeepsTheLikelyCurrentInsideItsBand) {
  const FaultAnswer fault = faultOf(assess(withExtension(16, 50).site), "HM", 0);
  EXPECT_LT(fault.current->low, fault.current->likely);
  EXPECT_LT(fault.current->likely, fault.current->high);
  EXPECT_LE(fault.conductor->low, fault.conductor->likely);
  EXPECT_LE(fault.conductor->likely, fault.conductor->high);
  EXPECT_LE(fault.touch.low, fault.touch.likely);
}

TEST(FaultAnswer, AFrameStandsAtHalfTheVoltsWithAnEarthAndAtAllOfThemWithoutOne) {
  const FaultAnswer fault = faultOf(assess(withExtension(14, 50).site), "HM", 1);
  EXPECT_NEAR(fault.touch.likely.si(), 60.0, 1.0);
  EXPECT_NEAR(fault.toEarth.likely.si(), 120.0, 0.1);
}

TEST(FaultAnswer, EighteenGaugeIsNotSavedByALikelyBreakerAndTwelveIs) {
  const FaultAnswer thin = faultOf(assess(withExtension(18, 50).site), "HM", 0);
  EXPECT_TRUE(thin.likelyLate);
  EXPECT_TRUE(thin.latestLate);
  ASSERT_TRUE(thin.damage.has_value());
  EXPECT_GT(*thin.cleared.likely, *thin.damage);
  const FaultAnswer heavy = faultOf(assess(withExtension(12, 100).site), "HM", 0);
  EXPECT_FALSE(heavy.likelyLate);
}

TEST(FaultAnswer, AShortCordTripsAtOnce) {
  const FaultAnswer fault = faultOf(assess(withExtension(12, 10, 20.0, 10.0).site), "HM", 0);
  EXPECT_NEAR(fault.cleared.likely->si(), 0.017, 1e-9);
  EXPECT_NEAR(fault.cleared.latest->si(), 0.1, 1e-9);
  EXPECT_FALSE(fault.latestLate);
}

TEST(FaultAnswer, NothingClearsBehindABreakerThatMayNotAct) {
  SmallSite building = withExtension(12, 50);
  site::Circuit circuit = building.site.at<site::Circuit>(site::CircuitId("1"));
  circuit.mayNotTrip = true;
  building.site.all<site::Circuit>().put(circuit);
  const FaultAnswer fault = faultOf(assess(building.site), "HM", 0);
  EXPECT_FALSE(fault.cleared.earliest || fault.cleared.likely || fault.cleared.latest);
  EXPECT_TRUE(fault.likelyLate);
}

TEST(FaultAnswer, ASourceThatLimitsItselfClaimsNothing) {
  SmallSite building = withExtension(12, 50);
  site::Supply supply = building.site.at<site::Supply>(site::SupplyId("S"));
  supply.source = site::SupplyKindOfSource::Inverter;
  building.site.all<site::Supply>().put(supply);
  const FaultAnswer unknown = faultOf(assess(building.site), "HM", 0);
  EXPECT_FALSE(unknown.claimed);
  EXPECT_FALSE(unknown.current.has_value());
  EXPECT_FALSE(unknown.likelyLate);
  supply.currentLimit = site::known(40.0 * ampere);
  building.site.all<site::Supply>().put(supply);
  EXPECT_NEAR(faultOf(assess(building.site), "HM", 0).current->likely.si(), 40.0, 1e-9);
}

TEST(FaultAnswer, ALongerExtensionNeverRaisesTheCurrent) {
  double last = 1e9;
  for (const double lengthFt : {10.0, 25.0, 50.0, 100.0, 200.0}) {
    const double amps = faultOf(assess(withExtension(14, lengthFt).site), "HM", 0).current->likely.si();
    EXPECT_LT(amps, last);
    last = amps;
  }
}

}  // namespace
}  // namespace cordreach::study
