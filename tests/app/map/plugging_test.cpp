// SPDX-License-Identifier: GPL-3.0-or-later
// Plugs dragged by pointer and carried by keys.
#include <QTabBar>

#include "app/map/canvas_fixture.h"
#include "site/edit.h"

namespace cordreach::app {
namespace {

using rules::SubjectKind;
using test::MapTest;

const site::Socket kColumn = site::OutletSocket{site::OutletId("1-31"), "upper"};

class Plugging : public MapTest {
 protected:
  [[nodiscard]] const site::Socket& socketNow() const {
    return document.site().at<site::Hookup>(site::HookupId("H05")).socket;
  }
  [[nodiscard]] QPoint column() const { return at(SubjectKind::Outlet, "1-31") - QPoint(0, 3); }
};

TEST_F(Plugging, ADragToAnOutletIsOneEdit) {
  const site::Site before = document.site();
  drag(plugOf("M2", "H05"), column());
  EXPECT_EQ(socketNow(), kColumn);
  EXPECT_EQ(document.undoCode(), "hookup.move");
  document.undo();
  EXPECT_EQ(document.site(), before);
  EXPECT_FALSE(document.canUndo());
}

TEST_F(Plugging, WhileHeldOverAnOutletTheSiteIsSupposed) {
  drag(plugOf("M2", "H05"), column(), false);
  ASSERT_TRUE(document.isSupposing());
  EXPECT_EQ(document.shown()->at<site::Hookup>(site::HookupId("H05")).socket, kColumn);
  EXPECT_NE(socketNow(), kColumn);
  EXPECT_FALSE(document.canUndo());
  EXPECT_FALSE(canvas().state().held->possible.empty());
}

TEST_F(Plugging, EscapeLeavesNoTrace) {
  const site::Site before = document.site();
  drag(plugOf("M2", "H05"), column(), false);
  key(Qt::Key_Escape);
  EXPECT_FALSE(document.isSupposing());
  QTest::mouseRelease(&canvas(), Qt::LeftButton, {}, column());
  EXPECT_EQ(document.site(), before);
  EXPECT_FALSE(document.canUndo());
  EXPECT_FALSE(document.isDirty());
}

TEST_F(Plugging, LettingGoBesideEveryOutletLeavesNoTrace) {
  const site::Site before = document.site();
  drag(plugOf("M2", "H05"), canvas().toWidget(QPointF(22.0, 12.5) * canvas().scale()).toPoint());
  EXPECT_EQ(document.site(), before);
  EXPECT_FALSE(document.isSupposing());
}

TEST_F(Plugging, KeysDoWhatThePointerDoes) {
  canvas().focusItem(itemOf(canvas().content(), {SubjectKind::Machine, "M2"}));
  key(Qt::Key_P);
  ASSERT_TRUE(canvas().plugs().isHolding());
  canvas().focusItem(itemOf(canvas().content(), {SubjectKind::Outlet, "1-30"}));
  key(Qt::Key_Tab);  // by number: the next is 1-31
  EXPECT_TRUE(document.isSupposing());
  key(Qt::Key_Return);
  EXPECT_EQ(socketNow(), kColumn);
  const site::Site byKeys = document.site();
  document.undo();
  drag(plugOf("M2", "H05"), column());
  EXPECT_EQ(document.site(), byKeys);
}

TEST_F(Plugging, ATakenContactIsPassedOverAndAFullOutletIsNotLit) {
  drag(plugOf("M2", "H05"), at(SubjectKind::Outlet, "1-30") - QPoint(0, 3));
  EXPECT_EQ(socketNow(), (site::Socket{site::OutletSocket{site::OutletId("1-30"), "lower"}}));
  document.undo();
  drag(plugOf("M2", "H05"), at(SubjectKind::Outlet, "1-29"), false);  // the sump pump is in its only contact
  const auto item = itemOf(canvas().content(), {SubjectKind::Outlet, "1-29"});
  EXPECT_EQ(canvas().state().held->possible[static_cast<std::size_t>(item->index)], 0);
  key(Qt::Key_Escape);
}

TEST_F(Plugging, RestingOverAFloorsNameShowsThatFloor) {
  const site::Site before = document.site();
  const auto first = canvas().floor();
  auto* floors = view.findChild<QTabBar*>();
  ASSERT_EQ(floors->count(), 2);
  const int other = 1 - floors->currentIndex();
  const auto name = floors->tabRect(other).center();
  drag(plugOf("M2", "H05"), canvas().mapFromGlobal(floors->mapToGlobal(name)), false);
  EXPECT_EQ(canvas().floor(), first);
  ASSERT_TRUE(QTest::qWaitFor([&] { return canvas().floor() != first; }, 3000));
  EXPECT_TRUE(canvas().plugs().isHolding());
  EXPECT_LT(canvas().state().held->machine, 0);
  EXPECT_FALSE(canvas().state().held->machineFloor.isEmpty());
  const QPoint there = canvas().toWidget(canvas().layout().outlets.front()).toPoint() - QPoint(0, 3);
  const site::OutletId outlet = canvas().content().outlets.front().id;
  QTest::mouseMove(&canvas(), there);
  ASSERT_TRUE(document.isSupposing());
  QTest::mouseRelease(&canvas(), Qt::LeftButton, {}, there);
  EXPECT_EQ(std::get<site::OutletSocket>(socketNow()).outlet, outlet);
  document.undo();
  EXPECT_EQ(document.site(), before);
}

TEST_F(Plugging, ACordToAnotherFloorIsAStubOnBoth) {
  site::OutletId upstairs("none");
  for (const site::Outlet& outlet : document.site().all<site::Outlet>()) {
    if (outlet.place && outlet.place->floor != *canvas().floor()) upstairs = outlet.id;
  }
  const std::string contact = document.site().at<site::Outlet>(upstairs).contacts.front().name;
  const MachinePlug plug{site::MachineId("M2"), "A", site::HookupId("H05")};
  ASSERT_TRUE(canvas().apply(plugInto(document.site(), plug, {upstairs, contact})));
  const auto drawnEnd = [&] {
    for (std::size_t i = 0; i < canvas().content().cords.size(); ++i) {
      if (canvas().content().cords[i].hookup == site::HookupId("H05")) return i;
    }
    return canvas().content().cords.size();
  };
  const std::size_t here = drawnEnd();
  ASSERT_LT(here, canvas().content().cords.size());
  EXPECT_EQ(canvas().content().cords[here].otherFloor, QStringLiteral("Second floor"));
  EXPECT_TRUE(canvas().layout().cords[here].stubEnd);
  EXPECT_TRUE(canvas().pointOfPlug(plug));
  view.showFloor(document.site().at<site::Outlet>(upstairs).place->floor);
  const std::size_t there = drawnEnd();
  ASSERT_LT(there, canvas().content().cords.size());
  EXPECT_EQ(canvas().content().cords[there].otherFloor, QStringLiteral("First floor"));
  EXPECT_TRUE(canvas().layout().cords[there].stubEnd);
}

TEST_F(Plugging, EscapeOnAnotherFloorGoesBackToTheFirst) {
  const site::Site before = document.site();
  const auto first = canvas().floor();
  canvas().focusItem(itemOf(canvas().content(), {SubjectKind::Machine, "M2"}));
  key(Qt::Key_P);
  key(Qt::Key_PageUp);
  ASSERT_NE(canvas().floor(), first);
  key(Qt::Key_Tab);
  EXPECT_TRUE(canvas().plugs().isHolding());
  key(Qt::Key_Escape);
  EXPECT_EQ(canvas().floor(), first);
  EXPECT_FALSE(canvas().plugs().isHolding());
  EXPECT_EQ(document.site(), before);
  EXPECT_FALSE(document.isSupposing());
}

TEST_F(Plugging, WhatIsLetGoBesideAnOutletGoesBackByItself) {
  drag(plugOf("M2", "H05"), canvas().toWidget(QPointF(22.0, 12.5) * canvas().scale()).toPoint());
  ASSERT_TRUE(canvas().state().returning);
  EXPECT_TRUE(QTest::qWaitFor([&] { return !canvas().state().returning; }, 2000));
}

TEST_F(Plugging, APlugOfWhatIsOutOfServiceStaysAndSaysWhy) {
  site::Site site = document.site();
  site::Machine machine = site.at<site::Machine>(site::MachineId("M2"));
  machine.outOfService = site::OutOfService{"cord cut", {}, {}};
  site.all<site::Machine>().put(machine);
  document.replace(site, {});
  QStringList told;
  QObject::connect(&canvas(), &MapCanvas::told, [&](const QString& sentence) { told << sentence; });
  drag(plugOf("M2", "H05"), column(), false);
  EXPECT_FALSE(canvas().plugs().isHolding());
  EXPECT_FALSE(document.isSupposing());
  ASSERT_EQ(told.size(), 1);
  EXPECT_TRUE(told.front().contains(QStringLiteral("cord cut"))) << told.front().toStdString();
  QTest::mouseRelease(&canvas(), Qt::LeftButton, {}, column());
  canvas().focusItem(itemOf(canvas().content(), {SubjectKind::Machine, "M2"}));
  key(Qt::Key_P);
  EXPECT_FALSE(canvas().plugs().isHolding());
  EXPECT_EQ(told.size(), 2);
}

}  // namespace
}  // namespace cordreach::app
