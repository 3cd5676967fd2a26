// SPDX-License-Identifier: GPL-3.0-or-later
// Moving things, walls and runs as edits; which outlets a plug may go into; room for labels.
#include "map/place_edits.h"

#include <gtest/gtest.h>

#include <functional>

#include "app/map/support.h"
#include "map/label_placer.h"
#include "map/plug_targets.h"

namespace cordreach::app {
namespace {

using rules::SubjectKind;
using site::HookupId;
using site::MachineId;
using site::OutletId;

TEST(PlaceEdits, AMachineIsMovedWhereItWorksNotWhereItIsKept) {
  site::Site site = test::demoSite();
  const auto kept = site.at<site::Machine>(MachineId("M2")).place;
  const auto edit = moveThings(site, {{SubjectKind::Machine, "M2"}}, {HookupId("H05")}, {1.0, -0.5});
  ASSERT_TRUE(edit);
  ASSERT_TRUE(site::apply(edit.value(), site));
  EXPECT_DOUBLE_EQ(site.at<site::Hookup>(HookupId("H05")).place->at.xM, 27.0);
  EXPECT_DOUBLE_EQ(site.at<site::Hookup>(HookupId("H05")).place->at.yM, 11.0);
  EXPECT_EQ(site.at<site::Machine>(MachineId("M2")).place, kept);
}

TEST(PlaceEdits, AWallThatIsTakenAwayLeavesTheFloorAsBefore) {
  const site::Site before = test::demoSite();
  const site::FloorId floor("F1");
  site::Site site = before;
  ASSERT_TRUE(site::apply(addWall(site, floor, {{1, 1}, {5, 1}}).value(), site));
  EXPECT_NE(site, before);
  const std::size_t last = site.at<site::Floor>(floor).walls.size() - 1;
  ASSERT_TRUE(site::apply(removeWall(site, floor, last).value(), site));
  EXPECT_EQ(site, before);
}

TEST(PlaceEdits, ARunBetweenTwoCircuitsIsRefused) {
  const auto edit = addRun(test::demoSite(), OutletId("1-01"), OutletId("1-12"));
  ASSERT_FALSE(edit);
  EXPECT_EQ(edit.error().code, "run.two_circuits");
}

TEST(PlugTargets, SaysWhyAnOutletIsNotForThisPlug) {
  const site::Site site = test::demoSite();
  const HeldPlug plug = MachinePlug{MachineId("M2"), "A", HookupId("H05")};
  const auto answer = [&](const char* outlet, const char* contact) {
    return answerTo(site, plug, {OutletId(outlet), contact});
  };
  EXPECT_EQ(answer("1-31", "upper"), TargetAnswer::Possible);
  EXPECT_EQ(answer("1-30", "upper"), TargetAnswer::Taken);
  EXPECT_EQ(answer("2-36", "single"), TargetAnswer::Never);
  EXPECT_EQ(answer("1-29", "single"), TargetAnswer::Taken);  // the sump pump is in it
  EXPECT_EQ(answer("1-28", "upper"), TargetAnswer::TooFar);
  EXPECT_EQ(answer("2-08", "upper"), TargetAnswer::TooFar);
  EXPECT_FALSE(isPossible(TargetAnswer::Never));
  EXPECT_TRUE(canBeTried(TargetAnswer::Never));
  EXPECT_FALSE(canBeTried(TargetAnswer::Taken));
}

TEST(PlugTargets, NothingOutOfServiceIsOfferedAnOutlet) {
  site::Site site = test::demoSite();
  site::Machine machine = site.at<site::Machine>(MachineId("M2"));
  machine.outOfService = site::OutOfService{"cord cut", {}, {}};
  site.all<site::Machine>().put(machine);
  const HeldPlug plug = MachinePlug{MachineId("M2"), "A", HookupId("H05")};
  EXPECT_EQ(answerTo(site, plug, {OutletId("1-31"), "upper"}), TargetAnswer::OutOfService);
}

TEST(PlugTargets, AnOutletThatIsSwitchedOrHasPowerAtOtherHoursIsNotCalledPossible) {
  const HeldPlug plug = MachinePlug{MachineId("M2"), "A", HookupId("H05")};
  const auto answerWith = [&](const std::function<void(site::Contact&)>& change) {
    site::Site site = test::demoSite();
    site::Outlet outlet = site.at<site::Outlet>(OutletId("1-31"));
    for (site::Contact& contact : outlet.contacts) change(contact);
    site.all<site::Outlet>().put(outlet);
    return answerTo(site, plug, {OutletId("1-31"), "upper"});
  };
  EXPECT_EQ(answerWith([](site::Contact& contact) { contact.switched = true; }), TargetAnswer::Unreliable);
  EXPECT_EQ(answerWith([](site::Contact& contact) {
              contact.poweredHours = site::Hours{1.0 * units::hour, 2.0 * units::hour};
            }),
            TargetAnswer::Unreliable);
  EXPECT_FALSE(isPossible(TargetAnswer::Unreliable));
  EXPECT_TRUE(canBeTried(TargetAnswer::Unreliable));
}

TEST(LabelPlacer, TriesOtherSidesThenGivesUpUnlessItMust) {
  LabelPlacer placer;
  const LabelWish wish{{100, 100}, {40, 14}, 10};
  const auto first = placer.place(wish);
  const auto second = placer.place(wish);
  ASSERT_TRUE(first && second);
  EXPECT_FALSE(first->box.intersects(second->box));
  placer.block(QRectF(0, 0, 300, 300));
  EXPECT_FALSE(placer.place(wish));
  LabelWish must = wish;
  must.insist = Insist::Yes;
  EXPECT_TRUE(placer.place(must));
}

}  // namespace
}  // namespace cordreach::app
