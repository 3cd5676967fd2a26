// SPDX-License-Identifier: GPL-3.0-or-later
// Making a building from nothing, copying and deleting.
#include <gtest/gtest.h>

#include <map>

#include "app/panels/support.h"
#include "map/plug_edits.h"
#include "panels/delete_things.h"
#include "panels/machine_types.h"
#include "panels/new_things.h"
#include "rules/judge.h"
#include "site/invariants.h"
#include "study/assess.h"

namespace cordreach::app {
namespace {

using rules::Subject;
using rules::SubjectKind;
using testing::demoBuilding;

Subject done(site::Site& site, const NewEdit& edit) {
  if (!edit.ok()) throw std::runtime_error(edit.error().code);
  const auto applied = site::apply(edit.value(), site);
  if (!applied) throw std::runtime_error(applied.error().code + " " + applied.error().place);
  return addedBy(edit.value()).value();
}

TEST(NewThings, ABuildingFromNothingIsAnswered) {
  site::Site site = newSite({"Elm Street", "Service", "Ground floor"});
  EXPECT_TRUE(site::checkInvariants(site).ok());
  const site::Place at{site.all<site::Floor>().begin()->id, {3.0, 4.0}};
  const Subject panel = done(site, addPanel(site, {"1A", {}, at}));
  done(site, addBreakers(site, {site::PanelId(panel.id), 12, site::known(20.0 * units::ampere)}));
  const site::CircuitId circuit = site.all<site::Circuit>().begin()->id;
  NewOutlet wanted{nextOutletLabel(site), at, "5-20", false, circuit};
  const Subject outlet = done(site, addOutlet(site, wanted));
  const Subject machine = done(site, addMachine(site, {"burnisher_1500", "Burnisher", {}, at}));
  done(site, addLoad(site, {"Cooler", circuit, tables::LoadClass::Compressor, site::known(5.0 * units::ampere), at}));
  done(site, plugInto(site, MachinePlug{site::MachineId(machine.id), "A"}, {site::OutletId(outlet.id), "upper"}));
  const study::Answer answer = study::assess(site);
  ASSERT_EQ(answer.hookups.size(), 1U);
  EXPECT_GT(answer.hookups.front().current.likely.si(), 8.0);
  EXPECT_GT(answer.hookups.front().voltage.likely.si(), 90.0);
  ASSERT_TRUE(answer.hookups.front().circuit);
  EXPECT_EQ(*answer.hookups.front().circuit, circuit);
  EXPECT_FALSE(rules::judge(site, answer).empty());  // its plate is a guess and its breaker assumed
}

TEST(NewThings, BreakersGoRoundThePhasesTwoARow) {
  site::Site site = newSite({});
  const Subject panel = done(site, addPanel(site, {"A"}));
  done(site, addBreakers(site, {site::PanelId(panel.id), 4, {}}));
  done(site, addBreakers(site, {site::PanelId(panel.id), 2, {}}));
  std::map<int, std::size_t> phaseOf;
  for (const site::Circuit& circuit : site.all<site::Circuit>()) {
    phaseOf[std::stoi(circuit.number)] = circuit.phases.front();
  }
  EXPECT_EQ(phaseOf, (std::map<int, std::size_t>{{1, 0}, {2, 0}, {3, 1}, {4, 1}, {5, 0}, {6, 0}}));
  const auto tooMany = addBreakers(site, {site::PanelId(panel.id), 79, {}});
  ASSERT_FALSE(tooMany.ok());
  EXPECT_EQ(tooMany.error().code, "new.bad_count");
}

TEST(NewThings, EveryGenericMachineIsAGuessWithASourceAndASentenceForItsName) {
  EXPECT_EQ(machineTypes().size(), 9U);
  for (const MachineType& type : machineTypes()) {
    site::Site site = newSite({});
    const Subject added = done(site, addMachine(site, {type.id, "x"}));
    const site::Machine& machine = site.at<site::Machine>(site::MachineId(added.id));
    EXPECT_TRUE(machine.inlets.front().plate->isGuess()) << type.id;
    EXPECT_EQ(machine.inlets.size(), type.secondClass ? 2U : 1U);
    EXPECT_FALSE(type.from->text.empty());
    EXPECT_TRUE(testing::english().has("machine_type." + type.id));
    EXPECT_TRUE(testing::english().has("field.kind." + type.kind));
  }
  EXPECT_EQ(addMachine(newSite({}), {"rocket"}).error().code, "new.no_type");
}

TEST(NewThings, ACordIsReadFromItsJacket) {
  site::Site site = demoBuilding();
  EXPECT_EQ(nextCordLabel(site), "C13");
  const Subject added = done(site, addCord(site, {"C13", "SJTW 12/3 60C 300V", site::known(75.0 * units::foot),
                                                  site::known(15.0 * units::ampere), "5-15", 3}));
  const site::Cord& cord = site.at<site::Cord>(site::CordId(added.id));
  EXPECT_EQ(cord.make.type, "SJTW");
  EXPECT_EQ(cord.make.size->value, units::WireSize::awg(12));
  EXPECT_EQ(cord.sockets.size(), 3U);
  EXPECT_TRUE(cord.make.printReadable);
}

TEST(NewThings, CopiesStandBesideWithTheNextLabelAndPluggedInNowhere) {
  site::Site site = demoBuilding();
  const std::size_t hookups = site.all<site::Hookup>().size();
  const site::Edit edit =
      copyOf(site, {{SubjectKind::Cord, "C01"}, {SubjectKind::Outlet, "1-01"}, {SubjectKind::Machine, "M1"}});
  ASSERT_EQ(edit.changes.size(), 3U);
  ASSERT_TRUE(site::apply(edit, site).ok());
  const auto& cord = *std::get<site::Change<site::Cord>>(edit.changes[0]).after;
  EXPECT_EQ(cord.label, "C13");
  const auto& outlet = *std::get<site::Change<site::Outlet>>(edit.changes[1]).after;
  EXPECT_DOUBLE_EQ(outlet.place->at.xM, site.at<site::Outlet>(site::OutletId("1-01")).place->at.xM + 1.0);
  EXPECT_EQ(site.all<site::Hookup>().size(), hookups);
}

TEST(DeleteThings, EveryThingOfTheDemoGoesAndComesBackWhole) {
  const site::Site demo = demoBuilding();
  const auto tryAll = [&]<class T>(SubjectKind kind, const T& things) {
    for (const auto& thing : things) {
      site::Site site = demo;
      const Deletion deletion = deletionOf(site, {{kind, thing.id.text()}});
      const auto applied = site::apply(deletion.edit, site);
      ASSERT_TRUE(applied.ok()) << thing.id.text() << " " << applied.error().code << " " << applied.error().place;
      EXPECT_FALSE(site == demo) << thing.id.text();
      ASSERT_TRUE(site::apply(site::inverseOf(deletion.edit), site).ok()) << thing.id.text();
      EXPECT_EQ(site, demo) << thing.id.text();
    }
  };
  tryAll(SubjectKind::Panel, demo.all<site::Panel>());
  tryAll(SubjectKind::Circuit, demo.all<site::Circuit>());
  tryAll(SubjectKind::Outlet, demo.all<site::Outlet>());
  tryAll(SubjectKind::FixedLoad, demo.all<site::FixedLoad>());
  tryAll(SubjectKind::Machine, demo.all<site::Machine>());
  tryAll(SubjectKind::Cord, demo.all<site::Cord>());
  tryAll(SubjectKind::Pad, demo.all<site::Pad>());
  tryAll(SubjectKind::Hookup, demo.all<site::Hookup>());
}

TEST(DeleteThings, EventsGoWithWhatTheyAreAbout) {
  site::Site site = demoBuilding();
  site.all<site::Event>().put(
      {.id = site::EventId("V1"), .kind = site::EventKind::LoadOn, .load = site::FixedLoadId("L02")});
  site.all<site::Event>().put({.id = site::EventId("V2"),
                               .kind = site::EventKind::ChangePad,
                               .hookup = site::HookupId("H01"),
                               .pad = site::PadId("P3")});
  const auto without = [&](const Subject& subject) {
    site::Site copy = site;
    EXPECT_TRUE(site::apply(deletionOf(site, {subject}).edit, copy)) << subject.id;
    return copy;
  };
  EXPECT_EQ(without({SubjectKind::FixedLoad, "L02"}).find<site::Event>(site::EventId("V1")), nullptr);
  EXPECT_EQ(without({SubjectKind::Machine, "M1"}).find<site::Event>(site::EventId("V2")), nullptr);
  EXPECT_FALSE(without({SubjectKind::Pad, "P3"}).at<site::Event>(site::EventId("V2")).pad);
}

TEST(DeleteThings, SaysWhatGoesAlong) {
  const site::Site site = demoBuilding();
  const Deletion outlet = deletionOf(site, {{SubjectKind::Outlet, "1-13"}});
  EXPECT_EQ(outlet.along.hookups, 1U);     // the burnisher on C08
  EXPECT_EQ(outlet.along.extensions, 1U);  // and C08 itself
  EXPECT_GE(outlet.along.runs, 1U);
  const Deletion cord = deletionOf(site, {{SubjectKind::Cord, "C08"}});
  EXPECT_EQ(cord.along.hookups, 1U);
  const Deletion pad = deletionOf(site, {{SubjectKind::Pad, "P1"}});
  EXPECT_TRUE(pad.along.nothing());
  const Deletion panel = deletionOf(site, {{SubjectKind::Panel, "1A"}});
  EXPECT_GT(panel.along.circuits, 5U);
  EXPECT_GT(panel.along.unassigned, 5U);
  EXPECT_EQ(panel.along.panels, 0U);
  EXPECT_TRUE(deletionOf(site, {{SubjectKind::Pad, "none"}}).edit.changes.empty());
}

}  // namespace
}  // namespace cordreach::app
