// SPDX-License-Identifier: GPL-3.0-or-later
// What mends each planted fault of the demo is offered first, and comes to what the hand estimate says.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "demo/demo.h"
#include "site/edit.h"

namespace cordreach::demo {
namespace {

using rules::Severity;
using ::testing::AnyOf;
using ::testing::Contains;

constexpr double kVolts = 1.5;
constexpr double kDegrees = 3.0;

planning::Remedy firstRemedy(const std::string& hookup) {
  const Judged& now = asPlanned();
  const rules::Finding* finding = now.finding(hookup, now.codes(hookup).front());
  const auto offered = planning::remediesFor(*finding, now.site, now.findings);
  EXPECT_FALSE(offered.empty()) << hookup;
  return offered.empty() ? planning::Remedy{} : offered.front();
}

Judged after(const planning::Remedy& remedy) {
  return judged([&](site::Site& site) { EXPECT_TRUE(site::apply(remedy.edit, site).ok()); });
}

Judged alone(const Change& change, const std::vector<std::string>& circuits) {
  return judged([&](site::Site& site) {
    change(site);
    leaveOnly(site, circuits);
  });
}

TEST(DemoRemedies, ThinCordMovesToAnotherCircuitWithoutExtension) {
  const auto remedy = firstRemedy("H05");
  EXPECT_EQ(remedy.code, "move.outlet");
  EXPECT_EQ(argumentOf(remedy.arguments, "outlet"), "1-31");
  const Judged mended = after(remedy);
  EXPECT_LE(mended.verdict("H05"), Severity::Notice);
  EXPECT_FALSE(mended.hookup("H05").breaker.trip->earliest.has_value());
  EXPECT_NEAR(mended.hottestC("H05"), 40, kDegrees);
  const Judged quiet = alone([](site::Site& site) { plugIn(site, "H05", "1-31"); }, {});
  EXPECT_NEAR(quiet.hookup("H05").current.likely.si(), 14.9, 0.2);
  EXPECT_NEAR(quiet.hookup("H05").voltage.likely.si(), 111.5, kVolts);
}

TEST(DemoRemedies, ThickCordDoesNotCureTheOverload) {
  const Judged tried = judged([](site::Site& site) { plugIn(site, "H05", "1-13", "upper", "C01"); });
  EXPECT_EQ(tried.verdict("H05"), Severity::Caution);
  EXPECT_NEAR(tried.circuit("1A-4").current.likely.si(), 17.3, 17.3 * 0.08);
  EXPECT_TRUE(tried.circuit("1A-4").breaker.trip->earliest.has_value());
  EXPECT_FALSE(tried.circuit("1A-4").breaker.trip->likely.has_value());
}

TEST(DemoRemedies, TheBusyCorridorIsNoWayOut) {
  const Judged tried = judged([](site::Site& site) { plugIn(site, "H05", "1-05"); });
  EXPECT_THAT(tried.codes("H05"), Contains("breaker.trips"));
  EXPECT_THAT(tried.codes("H01"), Contains("breaker.trips"));
}

TEST(DemoRemedies, SharedVendingMovesToTheNextCorridor) {
  const auto remedy = firstRemedy("H06");
  EXPECT_EQ(remedy.code, "move.outlet");
  EXPECT_EQ(argumentOf(remedy.arguments, "outlet"), "1-05");
  const Judged mended = after(remedy);
  EXPECT_LE(mended.verdict("H06"), Severity::Notice);
  EXPECT_FALSE(mended.hookup("H06").breaker.trip->earliest.has_value());
  EXPECT_NEAR(mended.circuit("1A-1").current.likely.si(), 14.6, 0.1);
  const Judged quiet = alone([](site::Site& site) { plugIn(site, "H06", "1-05"); }, {});
  EXPECT_NEAR(quiet.hookup("H06").voltage.likely.si(), 111.2, kVolts);
}

TEST(DemoRemedies, CoilIsExchangedForAShortHeavyCord) {
  const auto remedy = firstRemedy("H07");
  EXPECT_EQ(remedy.code, "use.cord");
  EXPECT_THAT(argumentOf(remedy.arguments, "cord"), AnyOf("C03", "C04"));  // two alike
  const Judged mended = after(remedy);
  EXPECT_EQ(mended.verdict("H07"), Severity::Ok);
  EXPECT_NEAR(mended.hookup("H07").voltage.likely.si(), 113.2, kVolts);
  EXPECT_NEAR(mended.cord("H07", argumentOf(remedy.arguments, "cord")).conductor->likely.celsius(), 30, kDegrees);
}

TEST(DemoRemedies, UnrollingAloneLeavesAThinCord) {
  const Judged tried = judged([](site::Site& site) { plugIn(site, "H07", "2-03", "upper", "C09"); });
  EXPECT_EQ(tried.codes("H07"), (std::vector<std::string>{"cord.lighter_than_machine", "fault.cleared_late"}));
  EXPECT_NEAR(tried.cord("H07", "C09").conductor->likely.celsius(), 41, kDegrees);
}

TEST(DemoRemedies, TheCordWithoutEarthIsPutAside) {
  const auto remedy = firstRemedy("H08");
  EXPECT_EQ(remedy.code, "out_of_service");
  EXPECT_EQ(argumentOf(remedy.arguments, "cord"), "C11");
  const Judged mended = after(remedy);
  EXPECT_LE(mended.verdict("H08"), Severity::Notice);
  EXPECT_TRUE(mended.site.at<site::Cord>(site::CordId("C07")).outOfService.has_value());
}

TEST(DemoRemedies, TheSecondInletGoesToAnotherCircuit) {
  const auto remedy = firstRemedy("H10");
  EXPECT_EQ(remedy.code, "move.outlet_with_cord");
  EXPECT_EQ(argumentOf(remedy.arguments, "inlet"), "B");
  EXPECT_EQ(argumentOf(remedy.arguments, "outlet"), "2-18");
  EXPECT_EQ(argumentOf(remedy.arguments, "cord"), "C03");
  const Judged mended = after(remedy);
  EXPECT_LE(mended.verdict("H09"), Severity::Notice);
  EXPECT_LE(mended.verdict("H10"), Severity::Notice);
  EXPECT_NEAR(mended.circuit("2A-6").current.likely.si(), 13.0, 0.3);
  EXPECT_NEAR(mended.circuit("2A-5").plateSum.si(), 16.0, 1e-9);
  EXPECT_NEAR(mended.hookup("H09").voltage.likely.si(), 115.2, kVolts);
  EXPECT_NEAR(mended.hookup("H10").voltage.likely.si(), 113.6, kVolts);
}

TEST(DemoRemedies, TakenOneAfterAnotherLeaveASoundEvening) {
  Judged now = asPlanned();
  for (const char* id : {"H05", "H06", "H07", "H08", "H10"}) {
    const rules::Finding* finding = now.finding(id, now.codes(id).front());
    ASSERT_NE(finding, nullptr) << id;
    const auto offered = planning::remediesFor(*finding, now.site, now.findings);
    ASSERT_FALSE(offered.empty()) << id;
    site::Site site = now.site;
    ASSERT_TRUE(site::apply(offered.front().edit, site).ok()) << id;
    now = judged([&](site::Site& changed) { changed = site; });
  }
  EXPECT_LE(rules::worstOf(now.findings), Severity::Notice);
}

}  // namespace
}  // namespace cordreach::demo
