// SPDX-License-Identifier: GPL-3.0-or-later
// Plugs dragged by pointer and carried by keys.
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

}  // namespace
}  // namespace cordreach::app
