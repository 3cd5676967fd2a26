// SPDX-License-Identifier: GPL-3.0-or-later
// Every drawing tool with keys alone: a crosshair moved by arrows, points set by Return.
#include <QAccessible>
#include <QLabel>
#include <QTimer>
#include <algorithm>

#include "app/map/canvas_fixture.h"
#include "map/row_bar.h"
#include "panels/ask_dialog.h"
#include "panels/field_row.h"
#include "panels/new_things.h"
#include "panels/plain_controls.h"

namespace cordreach::app {
namespace {

using rules::SubjectKind;

class KeyPenTest : public test::MapTest {
 protected:
  // A floor with nothing on it, 30 by 16 m in sight.
  void SetUp() override {
    document.replace(newSite({"Elm House", "Supply", "Floor 1"}), {});
    MapTest::SetUp();
  }
  void press(Qt::Key key, int times = 1, Qt::KeyboardModifiers modifiers = {}) {
    for (int i = 0; i < times; ++i) QTest::keyClick(&canvas(), key, modifiers);
  }
  void take(ToolKind kind) {
    canvas().use(kind);
    press(Qt::Key_Return);  // it is shown, and sets nothing yet
    ASSERT_TRUE(canvas().pen().isShown());
  }
  [[nodiscard]] QPointF pen() const { return canvas().pen().metres().value(); }
  [[nodiscard]] const site::Floor& floor() const { return document.site().at<site::Floor>(*canvas().floor()); }
  template <class T>
  [[nodiscard]] std::vector<T> all() const {
    return {document.site().all<T>().begin(), document.site().all<T>().end()};
  }
};

TEST_F(KeyPenTest, ArrowsMoveItOnAGridThatZoomMakesFiner) {
  take(ToolKind::Outlet);
  const QPointF from = pen();
  press(Qt::Key_Right);
  EXPECT_DOUBLE_EQ(pen().x(), from.x() + 0.5);
  press(Qt::Key_Down, 1, Qt::ShiftModifier);
  EXPECT_DOUBLE_EQ(pen().y(), from.y() + 2.5);
  press(Qt::Key_Plus, 8);
  press(Qt::Key_Left);
  EXPECT_DOUBLE_EQ(pen().x(), from.x() + 0.4);
}

TEST_F(KeyPenTest, ReturnPlacesOutletsWhereItIs) {
  take(ToolKind::Outlet);
  EXPECT_TRUE(all<site::Outlet>().empty());
  const QPointF at = pen();
  press(Qt::Key_Return);
  press(Qt::Key_Right, 4);
  press(Qt::Key_Return);
  ASSERT_EQ(all<site::Outlet>().size(), 2U);
  const auto outlets = all<site::Outlet>();  // in no order that means anything
  const auto [left, right] = std::minmax({outlets[0].place->at.xM, outlets[1].place->at.xM});
  EXPECT_NEAR(left, at.x(), 1e-9);
  EXPECT_NEAR(right - left, 2.0, 1e-9);
  document.undo();
  EXPECT_EQ(all<site::Outlet>().size(), 1U);
}

TEST_F(KeyPenTest, ARowOfOutletsIsOneEditWithItsSpacing) {
  canvas().row().spacing = 1.0 * units::metre;
  take(ToolKind::Row);
  press(Qt::Key_Return);
  press(Qt::Key_Right, 8);
  press(Qt::Key_Return);
  ASSERT_EQ(all<site::Outlet>().size(), 5U);
  EXPECT_EQ(selection.chosen().size(), 5U);
  document.undo();
  EXPECT_TRUE(all<site::Outlet>().empty());
}

TEST_F(KeyPenTest, BackspaceTakesTheBeginningBackAndEscapeLeavesNoTrace) {
  const site::Site before = document.site();
  take(ToolKind::Wall);
  press(Qt::Key_Return);
  press(Qt::Key_Right, 6);
  press(Qt::Key_Backspace);
  press(Qt::Key_Right, 6);
  press(Qt::Key_Return);  // begins
  press(Qt::Key_Down, 6);
  press(Qt::Key_Escape);
  EXPECT_EQ(document.site(), before);
  EXPECT_EQ(canvas().tool(), ToolKind::Wall);
  press(Qt::Key_Escape);
  EXPECT_EQ(canvas().tool(), ToolKind::Select);
  EXPECT_FALSE(canvas().pen().isShown());
  EXPECT_FALSE(document.canUndo());
}

TEST_F(KeyPenTest, WallsGoFromPointToPointAndCornersAreFoundAgain) {
  take(ToolKind::Wall);
  const QPointF corner = pen();
  press(Qt::Key_Return);
  press(Qt::Key_Right, 8);
  press(Qt::Key_Return);
  ASSERT_EQ(floor().walls.size(), 1U);
  EXPECT_NEAR(floor().walls[0].to.xM - floor().walls[0].from.xM, 4.0, 1e-9);
  press(Qt::Key_Down, 5);
  press(Qt::Key_Left, 1, Qt::ControlModifier);
  EXPECT_EQ(pen(), corner) << "the other end of the wall lies that way";
  press(Qt::Key_Return);
  press(Qt::Key_Down, 6);
  press(Qt::Key_Return);
  ASSERT_EQ(floor().walls.size(), 2U);
  EXPECT_EQ(floor().walls[1].from, floor().walls[0].from);
}

TEST_F(KeyPenTest, CorridorLinesTakeTheirLastPointBackAndEndWhereReturnIsPressedTwice) {
  take(ToolKind::Corridor);
  press(Qt::Key_Return);
  press(Qt::Key_Right, 8);
  press(Qt::Key_Return);
  press(Qt::Key_Down, 4);
  press(Qt::Key_Return);
  press(Qt::Key_Backspace);
  press(Qt::Key_Up, 8);
  press(Qt::Key_Return, 2);
  ASSERT_EQ(floor().corridorLines.size(), 1U);
  const auto& points = floor().corridorLines[0].points;
  ASSERT_EQ(points.size(), 3U);
  EXPECT_NEAR(points[2].yM - points[1].yM, -2.0, 1e-9);
}

TEST_F(KeyPenTest, ARoomIsDrawnNamedAndChosen) {
  take(ToolKind::Room);
  press(Qt::Key_Return);
  press(Qt::Key_Right, 8);
  press(Qt::Key_Down, 6);
  QTimer::singleShot(0, &view, [] {
    auto* dialog = qobject_cast<AskDialog*>(QApplication::activeModalWidget());
    ASSERT_NE(dialog, nullptr);
    QTest::keyClicks(dialog->row("room_number")->editor(), "104");
    QTest::keyClick(dialog, Qt::Key_Return);
  });
  press(Qt::Key_Return);
  ASSERT_EQ(all<site::Room>().size(), 1U);
  EXPECT_EQ(all<site::Room>()[0].number, "104");
  EXPECT_TRUE(selection.holds({SubjectKind::Room, all<site::Room>()[0].id.text()}));
}

TEST_F(KeyPenTest, TabBringsItToThingsAndARunIsDrawnWithItsBend) {
  site::Site site = test::demoSite();
  const site::Run old = site.at<site::Run>(site::RunId("1A-1 to 1-02"));
  ASSERT_TRUE(site::apply({"run.remove", {site::Change<site::Run>{old, std::nullopt}}}, site));
  document.replace(site, {});
  canvas().use(ToolKind::Run);
  const auto goTo = [&](const char* id) {
    const auto wanted = itemOf(canvas().content(), {SubjectKind::Outlet, id});
    for (int i = 0; i < 100 && canvas().state().focus != wanted; ++i) press(Qt::Key_Tab);
  };
  goTo("1-01");
  ASSERT_TRUE(canvas().pen().isShown());
  press(Qt::Key_Return);
  press(Qt::Key_Down, 4);
  press(Qt::Key_Return);
  goTo("1-02");
  const std::size_t before = all<site::Run>().size();
  press(Qt::Key_Return);
  ASSERT_EQ(all<site::Run>().size(), before + 1);
  const auto isDrawn = [](const site::Run& run) { return run.path.size() == 3 && run.to == site::OutletId("1-02"); };
  EXPECT_EQ(std::ranges::count_if(all<site::Run>(), isDrawn), 1);
}

TEST_F(KeyPenTest, WhereItIsIsSaidToTheEyeAndToTheScreenReader) {
  canvas().row().spacing = 1.0 * units::metre;
  take(ToolKind::Row);
  press(Qt::Key_Return);
  press(Qt::Key_Right, 4);
  const auto* face = QAccessible::queryAccessibleInterface(&canvas());
  const QString said = face->text(QAccessible::Description);
  EXPECT_TRUE(said.contains("from the left")) << said.toStdString();
  EXPECT_TRUE(said.contains("6.56")) << said.toStdString();  // feet are 2 m
  EXPECT_TRUE(said.contains("1-01")) << said.toStdString();
  const auto isShown = [&](const QLabel* label) { return label->isVisible() && label->text() == said; };
  EXPECT_EQ(std::ranges::count_if(canvas().findChildren<QLabel*>(), isShown), 1);
}

TEST_F(KeyPenTest, ThePointerTakesOver) {
  take(ToolKind::Outlet);
  QTest::mouseClick(&canvas(), Qt::LeftButton, {}, QPoint(100, 100));
  EXPECT_FALSE(canvas().pen().isShown());
  EXPECT_EQ(all<site::Outlet>().size(), 1U);
}

}  // namespace
}  // namespace cordreach::app
