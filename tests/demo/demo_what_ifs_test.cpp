// SPDX-License-Identifier: GPL-3.0-or-later
// What could be done to the demo building and better is not.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "demo/demo.h"

namespace cordreach::demo {
namespace {

using rules::Severity;
using ::testing::Contains;

constexpr double kTripFactor = 1.5;

void expectSeconds(const std::optional<units::Duration>& time, double seconds, double factor = kTripFactor) {
  ASSERT_TRUE(time.has_value());
  EXPECT_GT(time->si(), seconds / factor);
  EXPECT_LT(time->si(), seconds * factor);
}

TEST(DemoWhatIf, SlowPadOnAFastMachineNeverTrips) {
  const Judged tried = judged([](site::Site& site) {
    site::Hookup hookup = site.at<site::Hookup>(site::HookupId("H01"));
    hookup.pad = site::PadId("P4");
    site.all<site::Hookup>().put(hookup);
  });
  EXPECT_EQ(tried.codes("H01").front(), "pad.overspeed");
  EXPECT_EQ(tried.verdict("H01"), Severity::Danger);
  EXPECT_NEAR(tried.hookup("H01").current.likely.si(), 18.5, 0.3);
  EXPECT_FALSE(tried.hookup("H01").breaker.trip->earliest.has_value());
}

// The same pad without a drag factor of its own: what its family says comes to the same, and is called a guess.
TEST(DemoWhatIf, SlowPadIsToldByItsFamilyAlone) {
  const Judged tried = judged([](site::Site& site) {
    site::Pad pad = site.at<site::Pad>(site::PadId("P4"));
    pad.dragFactor.reset();
    pad.ratedSpeed.reset();
    pad.family = site::PadFamily::SlowSpeed;
    site.all<site::Pad>().put(pad);
    site::Hookup hookup = site.at<site::Hookup>(site::HookupId("H01"));
    hookup.pad = pad.id;
    site.all<site::Hookup>().put(hookup);
  });
  EXPECT_EQ(tried.verdict("H01"), Severity::Danger);
  EXPECT_NEAR(tried.hookup("H01").current.likely.si(), 18.5, 0.3);
  EXPECT_GT(tried.hookup("H01").current.high.si(), 19.0);
  EXPECT_FALSE(tried.hookup("H01").breaker.trip->earliest.has_value());
  const rules::Finding* unknown = tried.finding("H01", "unknown.matters");
  ASSERT_NE(unknown, nullptr);
  EXPECT_TRUE(std::any_of(unknown->why.begin(), unknown->why.end(),
                          [](const rules::Reason& reason) { return reason.code == "unknown.friction"; }));
}

TEST(DemoWhatIf, InductionMotorStallsOnALongThinCord) {
  const Judged tried = judged([](site::Site& site) {
    site::Cord cord = site.at<site::Cord>(site::CordId("C08"));
    cord.make.length = site::known(100.0 * units::foot);
    site.all<site::Cord>().put(cord);
  });
  const auto& hookup = tried.hookup("H05");
  EXPECT_TRUE(hookup.stalledCold || hookup.stalledWarm);
  EXPECT_THAT(tried.codes("H05"), Contains("machine.stall"));
  EXPECT_NEAR(hookup.breaker.current.si(), 39, 1.5);
  expectSeconds(hookup.breaker.trip->earliest, 6);
  expectSeconds(hookup.breaker.trip->likely, 23);
  expectSeconds(hookup.breaker.trip->latest, 62);
}

TEST(DemoWhatIf, HiddenHeaterTakesTheOfficeCircuit) {
  const Judged tried = judged([](site::Site& site) { plugIn(site, "H02", "2-12"); });
  const auto& circuit = tried.circuit("2A-4");
  EXPECT_EQ(tried.codes("H02").front(), "breaker.trips");
  EXPECT_NEAR(circuit.plateSum.si(), 25.5, 1e-9);
  // Heater and vacuum draw less at the volts that are left: the plain sum of plates is too much.
  EXPECT_NEAR(circuit.current.likely.si(), 25.5, 25.5 * 0.1);
  expectSeconds(circuit.breaker.trip->earliest, 23, 3.0);
  expectSeconds(circuit.breaker.trip->likely, 144, 3.0);
  EXPECT_FALSE(circuit.breaker.trip->latest.has_value());
}

// Upright vacuum above, extractor's heater below, both on from 20:00 to 21:00.
Judged bothHalves(const study::StudyOptions& options) {
  return judged([](site::Site& site) { plugIn(site, "H10", "1-16", "lower"); }, options);
}

TEST(DemoWhatIf, LostNeutralGivesTheLighterLoadTooManyVolts) {
  EXPECT_LT(bothHalves({}).hookup("H04").voltage.likely.si(), 115);
  study::StudyOptions lost;
  lost.lostNeutral = {site::CircuitId("1A-5"), site::CircuitId("1A-7")};
  const Judged tried = bothHalves(lost);
  EXPECT_LT(tried.hookup("H10").voltage.likely.si(), 115);
  // The vacuum starts an hour before and stops an hour before the heater: its worst moment is without it.
  EXPECT_LT(tried.hookup("H04").voltage.likely.si(), 1);
  const Judged together = judged(
      [](site::Site& site) {
        plugIn(site, "H10", "1-16", "lower");
        site::Hookup vacuum = site.at<site::Hookup>(site::HookupId("H04"));
        vacuum.hours = site.at<site::Hookup>(site::HookupId("H10")).hours;
        site.all<site::Hookup>().put(vacuum);
      },
      lost);
  EXPECT_GT(together.hookup("H04").voltage.likely.si(), 126.5);
  EXPECT_THAT(together.codes("H04"), Contains("machine.voltage"));
  EXPECT_NEAR(together.hookup("H04").voltage.likely.si() + together.hookup("H10").voltage.likely.si(), 232, 6);
}

}  // namespace
}  // namespace cordreach::demo
