// SPDX-License-Identifier: GPL-3.0-or-later
// Rows of outlets and their numbers, and the pointing tools that draw, choose and arrange.
#include <QMenu>
#include <algorithm>

#include "app/map/canvas_fixture.h"
#include "map/arrange_edits.h"
#include "map/arrange_menu.h"
#include "map/row_edits.h"
#include "panels/label_numbers.h"
#include "panels/new_things.h"

namespace cordreach::app {
namespace {

using rules::SubjectKind;
using site::FloorId;
using site::OutletId;

TEST(LabelNumbers, AreReadAndWrittenInTheirSpelling) {
  EXPECT_EQ(numberedLabel("1-07").stem, "1-");
  EXPECT_EQ(numberedLabel("1-07").number, 7);
  EXPECT_EQ(numberedLabel("1-07").digits, 2U);
  EXPECT_EQ(numberedLabel("hall").number, 0);
  EXPECT_EQ(withNumber("C", 8, 2), "C08");
  EXPECT_EQ(withNumber("C", 108, 2), "C108");
  EXPECT_EQ(lastNumber("12 lower"), 12);
  EXPECT_EQ(lastNumber("none"), 0);
}

TEST(RowEdits, NumbersGoOnByFloorAndByRoom) {
  site::Site site = test::demoSite();
  EXPECT_EQ(nextLabelBy(site, NumberBy::Floor, {FloorId("F1"), {0, 0}}).substr(0, 2), "1-");
  EXPECT_EQ(nextLabelBy(site, NumberBy::Floor, {FloorId("F2"), {0, 0}}).substr(0, 2), "2-");
  site.all<site::Room>().put(
      site::Room{site::RoomId("RX"), FloorId("F1"), "Store", "104", {{100, 100}, {110, 100}, {110, 110}, {100, 110}}});
  const site::Place inside{FloorId("F1"), {105, 105}};
  EXPECT_EQ(nextLabelBy(site, NumberBy::Room, inside), "104-01");
  const auto edit = addOutletRow(site, {FloorId("F1"), {101, 101}, {109, 101}, 2.0 * units::metre, "104-01"});
  ASSERT_TRUE(edit);
  ASSERT_TRUE(site::apply(edit.value(), site));
  EXPECT_EQ(nextLabelBy(site, NumberBy::Room, inside), "104-06");
  EXPECT_EQ(nextLabelBy(site, NumberBy::Room, {FloorId("F1"), {120, 120}}),
            nextLabelBy(site, NumberBy::Floor, {FloorId("F1"), {120, 120}}));
  for (const site::AnyChange& change : edit.value().changes) {
    EXPECT_EQ(std::get<site::Change<site::Outlet>>(change).after->room, "104");
  }
}

TEST(RowEdits, LabelsThatAreTakenAreLeftOut) {
  site::Site site = newSite({});
  ASSERT_TRUE(site::apply(addOutlet(site, {"A-03"}).value(), site));
  EXPECT_EQ(labelsFrom(site, "A-02", 3), (std::vector<std::string>{"A-02", "A-04", "A-05"}));
  EXPECT_EQ(labelsFrom(site, "hall", 2), (std::vector<std::string>{"hall-1", "hall-2"}));
}

TEST(RowEdits, StandsOneEachSpacingAndNoneBeyond) {
  const auto count = [](double lengthM, double spacingM) {
    return pointsOf({FloorId("F1"), {0, 0}, {lengthM, 0}, spacingM * units::metre, "1"}).size();
  };
  EXPECT_EQ(count(6.0, 2.0), 4U);
  EXPECT_EQ(count(5.9, 2.0), 3U);
  EXPECT_EQ(count(0.0, 2.0), 1U);
  EXPECT_EQ(count(3.0, 0.3), 11U) << "ten spacings of 0.3 make 3, whatever binary fractions say";
  const site::Site site = newSite({});
  const FloorId floor = site.all<site::Floor>().begin()->id;
  EXPECT_EQ(addOutletRow(site, {floor, {0, 0}, {9, 0}, 0.0 * units::metre, "1"}).error().code, "row.bad_spacing");
  EXPECT_EQ(addOutletRow(site, {floor, {0, 0}, {900, 0}, 1.0 * units::metre, "1"}).error().code, "row.too_many");
}

TEST(ArrangeEdits, PutsInLineAndSpreads) {
  const auto thing = [](const char* id, double x, double y) { return Standing{{SubjectKind::Outlet, id}, {x, y}}; };
  const std::vector<Standing> things{thing("a", 0, 1), thing("b", 9, 2), thing("c", 2, 4)};
  for (const Moved& moved : arranged(things, Arrangement::Row)) EXPECT_EQ(moved.shift.rightM, 0);
  EXPECT_EQ(arranged(things, Arrangement::Row)[2].shift.downM, -3);
  const auto spread = arranged(things, Arrangement::SpreadAcross);
  ASSERT_EQ(spread.size(), 3U);
  EXPECT_EQ(spread[1].subject.id, "c");
  EXPECT_DOUBLE_EQ(spread[1].shift.rightM, 2.5);
  EXPECT_EQ(spread[2].shift.rightM, 0);
}

TEST(ArrangeEdits, CopiesOutletsToAnotherFloorWithoutTheirBreakers) {
  site::Site site = test::demoSite();
  const site::Outlet original = site.at<site::Outlet>(OutletId("1-01"));
  const auto edit = copyToFloor(site, {{SubjectKind::Outlet, "1-01"}, {SubjectKind::Machine, "M2"}}, FloorId("F2"));
  ASSERT_TRUE(edit);
  ASSERT_EQ(edit.value().changes.size(), 1U);
  const site::Outlet twin = *std::get<site::Change<site::Outlet>>(edit.value().changes.front()).after;
  EXPECT_EQ(twin.place->floor, FloorId("F2"));
  EXPECT_EQ(twin.place->at, original.place->at);
  EXPECT_EQ(twin.label.substr(0, 2), "2-");
  for (const site::Contact& contact : twin.contacts) EXPECT_FALSE(contact.assignment.has_value());
  EXPECT_EQ(copyToFloor(site, {{SubjectKind::Machine, "M2"}}, FloorId("F2")).error().code, "copy.nothing");
}

class ToolTest : public test::MapTest {
 protected:
  [[nodiscard]] QPoint onPlan(double xM, double yM) const {
    return canvas().toWidget(QPointF(xM, yM) * canvas().scale()).toPoint();
  }
  void clickAt(double xM, double yM) { QTest::mouseClick(&canvas(), Qt::LeftButton, {}, onPlan(xM, yM)); }
  [[nodiscard]] const site::Floor& floor() const { return document.site().at<site::Floor>(*canvas().floor()); }
};

TEST_F(ToolTest, CorridorLinesAreDrawnClickByClickAndTakenAway) {
  canvas().use(ToolKind::Corridor);
  const std::size_t before = floor().corridorLines.size();
  clickAt(2, 8);
  clickAt(12, 8.2);
  clickAt(12.1, 4);
  key(Qt::Key_Return);
  ASSERT_EQ(floor().corridorLines.size(), before + 1);
  const auto& points = floor().corridorLines.back().points;
  ASSERT_EQ(points.size(), 3U);
  EXPECT_EQ(points[1].yM, points[0].yM) << "at a right angle";
  EXPECT_EQ(points[2].xM, points[1].xM);
  clickAt(7, points[0].yM);
  EXPECT_EQ(floor().corridorLines.size(), before);
  document.undo();
  EXPECT_EQ(floor().corridorLines.size(), before + 1);
}

TEST_F(ToolTest, ARunIsDrawnWithItsBends) {
  const site::Run old = document.site().at<site::Run>(site::RunId("1A-1 to 1-02"));
  ASSERT_TRUE(document.apply({"run.remove", {site::Change<site::Run>{old, std::nullopt}}}));
  canvas().use(ToolKind::Run);
  const std::size_t before = document.site().all<site::Run>().size();
  const auto outlet = [&](const char* id) { return document.site().at<site::Outlet>(OutletId(id)); };
  ASSERT_TRUE(outlet("1-01").place && outlet("1-02").place);
  const QPoint from = at(SubjectKind::Outlet, "1-01");
  const QPoint to = at(SubjectKind::Outlet, "1-02");
  QTest::mouseClick(&canvas(), Qt::LeftButton, {}, from);
  QTest::mouseClick(&canvas(), Qt::LeftButton, Qt::AltModifier, (from + to) / 2 + QPoint(0, 60));
  QTest::mouseClick(&canvas(), Qt::LeftButton, {}, to);
  ASSERT_EQ(document.site().all<site::Run>().size(), before + 1);
  const site::Run* drawn = nullptr;
  for (const site::Run& run : document.site().all<site::Run>()) {
    if (run.path.size() == 3) drawn = &run;
  }
  ASSERT_NE(drawn, nullptr);
  EXPECT_EQ(drawn->path.front(), outlet("1-01").place->at);
  EXPECT_EQ(drawn->path.back(), outlet("1-02").place->at);
  document.undo();
  EXPECT_EQ(document.site().all<site::Run>().size(), before);
}

TEST_F(ToolTest, ThePanelsOfTheStartArePlacedInTheOrderOfTheirNames) {
  const site::SupplyId supply = document.site().all<site::Supply>().begin()->id;
  const site::Panel late{.id = site::PanelId("a"), .name = "9B", .supply = supply};
  const site::Panel early{.id = site::PanelId("b"), .name = "9A", .supply = supply};
  ASSERT_TRUE(document.apply(
      {"panels.add", {site::Change<site::Panel>{std::nullopt, late}, site::Change<site::Panel>{std::nullopt, early}}}));
  const auto isPlaced = [&](const site::Panel& panel) {
    return document.site().at<site::Panel>(panel.id).place.has_value();
  };
  canvas().use(ToolKind::Panel);
  QTest::mouseClick(&canvas(), Qt::LeftButton, {}, QPoint(300, 300));
  EXPECT_TRUE(isPlaced(early));
  EXPECT_FALSE(isPlaced(late));
  EXPECT_EQ(selection.single(), (rules::Subject{SubjectKind::Panel, "b"}));
}

TEST_F(ToolTest, AltDragChoosesWhatTheLineGoesRound) {
  // One beside which there is room to begin.
  const auto isFree = [&](const MapOutlet& outlet) {
    const QPointF corner = outlet.at * canvas().scale() - QPointF(30, 30);
    return canvas().rect().contains(canvas().toWidget(corner).toPoint()) && !canvas().itemAt(corner);
  };
  const auto& outlets = canvas().content().outlets;
  const auto found = std::find_if(outlets.begin(), outlets.end(), isFree);
  ASSERT_NE(found, outlets.end());
  const std::string id = found->id.text();
  const QPoint middle = at(SubjectKind::Outlet, id.c_str());
  QTest::mousePress(&canvas(), Qt::LeftButton, Qt::AltModifier, middle + QPoint(-30, -30));
  for (const QPoint& way : {QPoint(30, -30), QPoint(30, 30), QPoint(-30, 30)}) {
    QTest::mouseMove(&canvas(), middle + way);
  }
  QTest::mouseRelease(&canvas(), Qt::LeftButton, Qt::AltModifier, middle + QPoint(-30, 30));
  EXPECT_TRUE(selection.holds({SubjectKind::Outlet, id}));
}

TEST_F(ToolTest, AltArrowsNudgeInOneUndoStep) {
  const site::Site before = document.site();
  const auto x = [&] { return document.site().at<site::Outlet>(OutletId("1-31")).place->at.xM; };
  const double was = x();
  selection.choose({{SubjectKind::Outlet, "1-31"}});
  QTest::keyClick(&canvas(), Qt::Key_Right, Qt::AltModifier);
  QTest::keyClick(&canvas(), Qt::Key_Right, Qt::AltModifier | Qt::ShiftModifier);
  EXPECT_NEAR(x(), was + 1.1, 1e-9);
  document.undo();
  EXPECT_EQ(document.site(), before);
}

TEST_F(ToolTest, TheMenuOfSeveralPutsThemInLineAndOnOtherFloors) {
  selection.choose({{SubjectKind::Outlet, "1-01"}, {SubjectKind::Outlet, "1-31"}});
  QMenu menu;
  fillArrangeMenu(menu, canvas());
  ASSERT_EQ(menu.actions().size(), 3) << "two can't be spread";
  menu.actions().front()->trigger();
  const auto y = [&](const char* id) { return document.site().at<site::Outlet>(OutletId(id)).place->at.yM; };
  EXPECT_DOUBLE_EQ(y("1-01"), y("1-31"));
  const std::size_t outlets = document.site().all<site::Outlet>().size();
  menu.actions().back()->menu()->actions().front()->trigger();
  EXPECT_EQ(document.site().all<site::Outlet>().size(), outlets + 2);
  document.undo();
  EXPECT_EQ(document.site().all<site::Outlet>().size(), outlets);
}

}  // namespace
}  // namespace cordreach::app
