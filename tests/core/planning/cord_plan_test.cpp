// SPDX-License-Identifier: GPL-3.0-or-later
// What is planned at the same hours counts when a cord is asked for.
#include "planning/cord_plan.h"

#include <gtest/gtest.h>

#include "planning/cord_choice.h"
#include "planning/cord_site.h"
#include "small_building.h"

namespace cordreach::planning {
namespace {

// Two machines on one circuit, from 18:00 to 20:00, and a cart.
struct Planned : SmallBuilding {
  Planned() {
    circuit("1", 20.0);
    circuit("2", 20.0);
    outlet("A", "1", 10.0);
    outlet("B", "1", 14.0);
    outlet("C", "2", 12.0);
    machine("M1", 10.0, 14, 50.0, 12.0);
    machine("M2", 12.0, 14, 50.0, 30.0);
    cord("K1", 12, 50.0);
    cord("K2", 12, 50.0);
    plug("M1", "A");
    plug("M2", "B", "K1");
  }

  [[nodiscard]] CordQuestion about(const char* hookup, const char* outlet, double feet) const {
    CordQuestion asked;
    asked.at = SiteContact{&site, site::OutletId(outlet), "upper"};
    askAbout(site.at<site::Hookup>(site::HookupId(hookup)), asked);
    asked.distance = feet * foot;
    asked.cart = &site;
    return asked;
  }
  [[nodiscard]] rules::Severity planVerdict(const char* hookup) const {
    return rules::verdictOf(site::HookupId(hookup), findings());
  }
  void at(const char* hookup, double from, double until) {
    site::Hookup moved = this->site.at<site::Hookup>(site::HookupId(hookup));
    moved.hours = site::Hours{from * hour, until * hour};
    put(moved);
  }
};

TEST(CordPlan, CountsWhatTheCircuitFeedsAtTheSameHours) {
  Planned building;
  const CordAdvice both = chooseCord(building.about("hM2", "B", 70.0));
  EXPECT_EQ(both.verdict, rules::Severity::Caution);
  ASSERT_EQ(both.alsoOn.size(), 1U);
  EXPECT_EQ(both.alsoOn.front().name, "M1");
  EXPECT_EQ(both.alsoOn.front().plate, 10.0 * ampere);
  building.at("hM1", 8.0, 10.0);
  const CordAdvice alone = chooseCord(building.about("hM2", "B", 70.0));
  EXPECT_LT(alone.verdict, rules::Severity::Caution);
  EXPECT_TRUE(alone.alsoOn.empty());
  EXPECT_TRUE(alone.choice.has_value());
}

TEST(CordPlan, OfAMachineWithoutHoursEverythingPlannedMayBeOn) {
  Planned building;
  building.at("hM1", 8.0, 10.0);
  CordQuestion asked = building.about("hM2", "B", 70.0);
  asked.hours.reset();
  asked.at->hookup.reset();
  EXPECT_EQ(chooseCord(asked).alsoOn.size(), 2U);
  asked.hours = site::Hours{11.0 * hour, 12.0 * hour};
  EXPECT_TRUE(chooseCord(asked).alsoOn.empty());
}

TEST(CordPlan, SaysAsMuchAsThePlanDoesOnceItIsPluggedInSo) {
  for (const char* outlet : {"A", "B", "C"}) {
    Planned building;
    const CordQuestion asked = building.about("hM2", outlet, 70.0);
    const site::Cord& cord = building.site.at<site::Cord>(site::CordId("K1"));
    const JudgedCase judged = judgeCases(asked, &cord).front();
    site::ExtensionUse use = building.site.at<site::ExtensionUse>(site::ExtensionUseId("xK1"));
    use.socket = site::OutletSocket{site::OutletId(outlet), outlet[0] == 'A' ? "lower" : "upper"};
    building.put(use);
    EXPECT_EQ(judged.verdict, building.planVerdict("hM2")) << outlet;
    const study::Answer answer = study::assess(building.site);
    EXPECT_NEAR(judged.answer.voltage.likely.si(), answer.find(site::HookupId("hM2"))->voltage.likely.si(), 1e-9)
        << outlet;
  }
}

TEST(CordPlan, KeepsTheBuildingSoundWhereTheSocketIsTaken) {
  const Planned building;
  const CordQuestion asked = building.about("hM2", "A", 70.0);
  EXPECT_EQ(takenBy(asked), "M1");
  EXPECT_EQ(chooseCord(asked).takenBy, "M1");
  const site::Cord& cord = building.site.at<site::Cord>(site::CordId("K1"));
  for (const site::Cord* extension : {static_cast<const site::Cord*>(nullptr), &cord}) {
    EXPECT_TRUE(site::checkInvariants(cordSite(asked, {}, extension)).ok());
  }
  EXPECT_FALSE(takenBy(building.about("hM2", "B", 70.0)).has_value());
}

TEST(CordPlan, TakesNoCordThatIsInUseElsewhereThen) {
  Planned building;
  building.at("hM1", 8.0, 10.0);
  building.machine("M3", 5.0, 16, 20.0, 30.0);
  building.plug("M3", "C", "K2");
  const CordAdvice advice = chooseCord(building.about("hM2", "B", 70.0));
  ASSERT_EQ(advice.candidates.size(), 2U);
  EXPECT_FALSE(advice.candidates[0].plannedElsewhere);  // its own
  EXPECT_TRUE(advice.candidates[1].plannedElsewhere);
  const CordAdvice other = chooseCord(building.about("hM3", "C", 40.0));
  ASSERT_TRUE(other.choice.has_value());
  EXPECT_EQ(other.candidates[*other.choice].label, "K2");
  site::Cord broken = building.site.at<site::Cord>(site::CordId("K1"));
  broken.outOfService = site::OutOfService{};
  building.put(broken);
  const CordAdvice none = chooseCord(building.about("hM2", "B", 70.0));
  EXPECT_FALSE(none.choice.has_value());
  EXPECT_EQ(none.reason, "cord.none_free");
}

}  // namespace
}  // namespace cordreach::planning
