// SPDX-License-Identifier: GPL-3.0-or-later
// One machine tried at every outlet.
#include "planning/test_machine.h"

#include <gtest/gtest.h>

#include "planning/cord_judging.h"
#include "small_building.h"

namespace cordreach::planning {
namespace {

SmallBuilding corridor() {
  SmallBuilding building;
  building.circuit("4", 20.0);
  building.circuit("9", 20.0, site::UseClass::Never);
  building.outlet("1-01", "4", 5.0);
  building.outlet("1-02", "4", 30.0);
  building.outlet("1-03", "9", 40.0);
  building.outlet("1-04", "4", 50.0, "L5-20");
  site::Outlet unknown{.id = site::OutletId("1-05"), .label = "1-05"};
  unknown.contacts.push_back({.name = "upper"});
  building.put(unknown);
  site::Run far = building.site.at<site::Run>(site::RunId("r1-02"));
  far.length = site::known(450.0 * foot);
  building.put(far);
  building.machine("M2", 14.0, 14, 50.0, 14.0);
  building.machine("M3", 12.0, 14, 50.0, 14.0);
  building.plug("M3", "1-01");
  return building;
}

TestedOutlets tested(const site::Site& site) {
  TestedOutlets all;
  testEverywhere(site, site::MachineId("M2"), {}, {}, [&](const TestedOutlet& one) { all.push_back(one); });
  return all;
}

TEST(TestMachine, FindsTheFarOutletLowAndTheNearOneNot) {
  const auto all = tested(corridor().site);
  ASSERT_EQ(all.size(), 5U);
  ASSERT_TRUE(all[0].atOutlet && all[1].atOutlet);
  EXPECT_GT(*all[0].atOutlet, *all[1].atOutlet);
  EXPECT_GT(*all[0].atOutlet, all[0].atMachine);
  EXPECT_FALSE(all[0].tooLow);
  EXPECT_TRUE(all[1].tooLow);
}

TEST(TestMachine, AnswersWhatTheCordQuestionAnswersWhereNothingElseIsPlanned) {
  const SmallBuilding building = corridor();
  site::Site alone = building.site;
  alone.all<site::Hookup>() = {};
  CordQuestion question;
  question.inlet = building.site.at<site::Machine>(site::MachineId("M2")).inlets.front();
  question.at = SiteContact{&alone, site::OutletId("1-02"), "upper"};
  const auto judged = judgeCases(question, nullptr);
  EXPECT_NEAR(tested(building.site)[1].atMachine.si(), judged.front().answer.voltage.likely.si(), 1e-6);
}

TEST(TestMachine, TriesNothingOffLimitsNorWhatDoesNotFitNorAnUnknownBreaker) {
  const auto all = tested(corridor().site);
  EXPECT_EQ(all[2].start, PlugStart::Never);
  EXPECT_FALSE(all[2].atOutlet);
  EXPECT_EQ(all[3].start, PlugStart::DoesNotFit);
  EXPECT_FALSE(all[3].atOutlet);
  EXPECT_EQ(all[4].start, PlugStart::Free);
  EXPECT_FALSE(all[4].atOutlet);
}

TEST(TestMachine, StopsWhenAsked) {
  const std::atomic<bool> stop = true;
  std::size_t told = 0;
  testEverywhere(corridor().site, site::MachineId("M2"), {}, {&stop, {}}, [&](const TestedOutlet&) { ++told; });
  EXPECT_EQ(told, 0U);
}

}  // namespace
}  // namespace cordreach::planning
