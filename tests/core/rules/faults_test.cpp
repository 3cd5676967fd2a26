// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <algorithm>

#include "rules/finding_builder.h"
#include "tiny_site.h"

namespace cordreach::rules {
namespace {

study::FaultAnswer cleared() {
  study::FaultAnswer fault;
  fault.current = study::Band<units::Current>{150.0 * ampere, 120.0 * ampere, 180.0 * ampere};
  fault.cleared = {0.5 * second, 2.0 * second, 6.0 * second};
  fault.damage = 8.0 * second;
  const auto warm = units::Temperature::fromCelsius(90.0);
  fault.conductor = study::Band<units::Temperature>{warm, warm, warm};
  fault.toEarth = sharp(120.0 * volt);
  fault.touch = sharp(59.0 * volt);
  return fault;
}

bool hasReason(const Finding& finding, const char* code) {
  return std::any_of(finding.why.begin(), finding.why.end(), [&](const Reason& reason) { return reason.code == code; });
}

TEST(Fault, SaysNothingWhereEveryCurveClearsInTime) {
  TinySite tiny;
  tiny.extensionGiven().fault = cleared();
  tiny.ownCordGiven().fault = cleared();
  EXPECT_EQ(tiny.judged().size(), 0u);
  EXPECT_EQ(tiny.verdict(), Severity::Ok);
}

TEST(Fault, WarnsOfAnExtensionThatTheLikelyCurveDoesNotSave) {
  TinySite tiny;
  tiny.extensionGiven().fault = cleared();
  tiny.extensionGiven().fault->likelyLate = true;
  tiny.extensionGiven().fault->latestLate = true;
  const auto found = tiny.found("fault.not_cleared");
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].severity, Severity::Warning);
  EXPECT_EQ(found[0].subjects.front(), (Subject{SubjectKind::Cord, "x1"}));
  EXPECT_TRUE(hasReason(found[0], "fault.current"));
  EXPECT_FALSE(tiny.has("fault.cleared_late"));
  EXPECT_EQ(tiny.verdict(), Severity::Warning);
}

TEST(Fault, NotesAnExtensionThatOnlyTheLatestCurveDoesNotSave) {
  TinySite tiny;
  tiny.extensionGiven().fault = cleared();
  tiny.extensionGiven().fault->latestLate = true;
  EXPECT_TRUE(tiny.has("fault.cleared_late"));
  EXPECT_FALSE(tiny.has("fault.not_cleared"));
  EXPECT_EQ(tiny.verdict(), Severity::Notice);
}

TEST(Fault, ListsAMachinesOwnCordWithItAndColoursNoHookup) {
  TinySite tiny;
  tiny.ownCordGiven().fault = cleared();
  tiny.ownCordGiven().fault->latestLate = true;
  EXPECT_TRUE(tiny.judged().empty());
  tiny.ownCordGiven().fault->likelyLate = true;
  tiny.ownCordGiven().fault->damaged = 1;
  const auto found = tiny.found("fault.own_cord");
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].severity, Severity::Notice);
  EXPECT_EQ(found[0].subjects.front(), (Subject{SubjectKind::Machine, "m1"}));
  EXPECT_TRUE(found[0].hookups.empty());
  EXPECT_EQ(tiny.verdict(), Severity::Ok);
}

TEST(Fault, AFaultAtTheMachineThatBurnsTheExtensionIsTheHookups) {
  TinySite tiny;
  tiny.ownCordGiven().fault = cleared();
  tiny.ownCordGiven().fault->likelyLate = true;
  tiny.ownCordGiven().fault->damaged = 0;
  EXPECT_EQ(tiny.found("fault.own_cord").at(0).hookups.size(), 1u);
  EXPECT_EQ(tiny.verdict(), Severity::Notice);
}

TEST(Fault, SaysWhyABreakerIsNotReliedOn) {
  TinySite tiny;
  tiny.extensionGiven().fault = cleared();
  tiny.extensionGiven().fault->likelyLate = true;
  site::Circuit circuit = tiny.circuit();
  circuit.mayNotTrip = true;
  circuit.rating.reset();
  tiny.put(circuit);
  const Finding finding = tiny.found("fault.not_cleared").at(0);
  EXPECT_TRUE(hasReason(finding, "fault.breaker_may_not_act"));
  EXPECT_TRUE(hasReason(finding, "fault.breaker_taken_as_twenty"));
}

TEST(Fault, ClaimsNothingOfASourceThatLimitsItsCurrent) {
  TinySite tiny;
  tiny.extensionGiven().fault = cleared();
  tiny.extensionGiven().fault->claimed = false;
  tiny.extensionGiven().fault->likelyLate = true;
  tiny.ownCordGiven().fault = tiny.extensionGiven().fault;
  EXPECT_FALSE(tiny.has("fault.not_cleared"));
  const auto unknown = tiny.found("unknown.matters");
  ASSERT_EQ(unknown.size(), 1u);
  EXPECT_TRUE(hasReason(unknown[0], "unknown.fault_clearing"));
}

TEST(Fault, ANoEarthFindingSaysWhatTheFrameStandsAt) {
  TinySite tiny;
  tiny.ownCordGiven().fault = cleared();
  site::Cord cord = tiny.cord();
  cord.make.pin = site::Pin::Missing;
  tiny.put(cord);
  const Finding finding = tiny.found("earth.missing").at(0);
  const auto frame = std::find_if(finding.why.begin(), finding.why.end(),
                                  [](const Reason& reason) { return reason.code == "earth.frame_live"; });
  ASSERT_NE(frame, finding.why.end());
  EXPECT_EQ(frame->arguments.at(0), volts("touch_v", 120.0 * volt));
  EXPECT_EQ(frame->arguments.at(1), volts("earthed_touch_v", 59.0 * volt));
  EXPECT_FALSE(hasReason(finding, "earth.device_acts"));
  site::Outlet outlet = tiny.outlet();
  outlet.groundFaultDevice = true;
  tiny.put(outlet);
  EXPECT_TRUE(hasReason(tiny.found("earth.missing").at(0), "earth.device_acts"));
}

study::LeakageAnswer leaking(double milliamperes) {
  study::LeakageAnswer device;
  device.outlet = site::OutletId("o1");
  device.sum = sharp(milliamperes * units::milliampere);
  device.shares = {{site::HookupId("h1"), {}, device.sum, false}};
  return device;
}

TEST(Leakage, IsACautionFromSixMilliamperesAndANoticeFromFour) {
  TinySite tiny;
  tiny.answer.leakages = {leaking(3.9)};
  EXPECT_TRUE(tiny.judged().empty());
  tiny.answer.leakages = {leaking(4.0)};
  EXPECT_TRUE(tiny.has("leakage.may_trip"));
  EXPECT_EQ(tiny.verdict(), Severity::Notice);
  tiny.answer.leakages = {leaking(6.0)};
  EXPECT_FALSE(tiny.has("leakage.may_trip"));
  const Finding finding = tiny.found("leakage.trips").at(0);
  EXPECT_EQ(finding.severity, Severity::Caution);
  EXPECT_EQ(finding.subjects.front(), (Subject{SubjectKind::Outlet, "o1"}));
  EXPECT_EQ(finding.why.at(0).code, "leakage.machine_allowed");
  EXPECT_EQ(finding.hookups.size(), 1u);
}

TEST(Fault, TellsOfABurningExtensionOnce) {
  TinySite tiny;
  tiny.ownCordGiven().fault = cleared();
  tiny.ownCordGiven().fault->likelyLate = true;  // a fault in the machine, which burns the extension
  tiny.extensionGiven().fault = cleared();
  ASSERT_EQ(tiny.ownCordGiven().fault->damaged, 0u);
  EXPECT_TRUE(tiny.has("fault.own_cord"));
  tiny.extensionGiven().fault->likelyLate = true;
  EXPECT_FALSE(tiny.has("fault.own_cord"));
  EXPECT_TRUE(tiny.has("fault.not_cleared"));
  tiny.ownCordGiven().fault->damaged = 1;  // its own cord burns, too: another hazard
  EXPECT_TRUE(tiny.has("fault.own_cord"));
}

}  // namespace
}  // namespace cordreach::rules
