// SPDX-License-Identifier: GPL-3.0-or-later
// Rooms are chosen, renamed, moved, copied and deleted like other things; every deed undoes.
#include <QAccessible>

#include "app/map/canvas_fixture.h"
#include "panels/delete_things.h"
#include "panels/names.h"
#include "panels/new_things.h"
#include "panels/property_fields.h"

namespace cordreach::app {
namespace {

using rules::SubjectKind;

class RoomTest : public test::MapTest {
 protected:
  [[nodiscard]] const site::Room& room() const { return document.site().at<site::Room>(m_room); }
  // Of that room a point on which nothing stands.
  [[nodiscard]] QPoint bareSpot() const {
    const auto item = itemOf(canvas().content(), subject());
    const QRectF box = canvas().content().rooms[static_cast<std::size_t>(item->index)].outline.boundingRect();
    for (double across = 0.1; across < 1; across += 0.1) {
      const QPointF plan = (box.topLeft() + QPointF(box.width() * across, box.height() / 2)) * canvas().scale();
      if (!canvas().itemAt(plan) && canvas().roomAt(plan) == item) return canvas().toWidget(plan).toPoint();
    }
    return {};
  }
  [[nodiscard]] rules::Subject subject() const { return {SubjectKind::Room, m_room.text()}; }
  [[nodiscard]] Field field(const std::string& key) const {
    for (const FieldGroup& group : fieldsOf(document.site(), subject(), book)) {
      for (const Field& field : group.fields) {
        if (field.key == key) return field;
      }
    }
    return {};
  }
  void write(const std::string& key, const char* text) {
    const auto edit = field(key).write(document.site(), text);
    ASSERT_TRUE(edit.ok());
    ASSERT_TRUE(document.apply(edit.value()));
  }

  site::RoomId m_room = test::demoSite().all<site::Room>().begin()->id;
};

TEST_F(RoomTest, AClickBesideEverythingChoosesTheRoomAndOneOutsideNothing) {
  ASSERT_EQ(*canvas().floor(), room().floor);
  QTest::mouseClick(&canvas(), Qt::LeftButton, {}, bareSpot());
  EXPECT_EQ(selection.chosen(), std::vector{subject()});
  QTest::mouseClick(&canvas(), Qt::LeftButton, {}, QPoint(3, 3));
  EXPECT_TRUE(selection.chosen().empty());
}

TEST_F(RoomTest, ThingsInItComeBeforeIt) {
  const QPoint outlet = at(SubjectKind::Outlet, "1-01");
  QTest::mouseClick(&canvas(), Qt::LeftButton, {}, outlet);
  EXPECT_TRUE(selection.holds({SubjectKind::Outlet, "1-01"}));
}

TEST_F(RoomTest, NumberNameAndUseAreItsPropertiesAndUndo) {
  const site::Site before = document.site();
  write("room_number", "104");
  write("room_name", " Store ");
  EXPECT_EQ(room().name, "Store");
  EXPECT_EQ(subjectName(book, document.site(), subject()), "Room 104, Store");
  const bool was = room().corridor;
  write("room_use", was ? "room" : "corridor");
  EXPECT_NE(room().corridor, was);
  EXPECT_EQ(field("room_use").write(document.site(), "pantry").error().code, "field.no_choice");
  while (document.canUndo()) document.undo();
  EXPECT_EQ(document.site(), before);
}

TEST_F(RoomTest, SeveralAreRenamedAtOnce) {
  std::vector<rules::Subject> rooms;
  for (const site::Room& one : document.site().all<site::Room>()) rooms.push_back({SubjectKind::Room, one.id.text()});
  ASSERT_GT(rooms.size(), 2U);
  const FieldGroups groups = commonFieldsOf(document.site(), rooms, book);
  ASSERT_EQ(groups.size(), 1U);
  EXPECT_EQ(groups.front().fields.size(), 3U);
  EXPECT_TRUE(groups.front().fields[1].mixed);
}

TEST_F(RoomTest, DeleteTakesTheRoomAndLeavesWhatStandsInIt) {
  const site::Site before = document.site();
  selection.choose({subject()});
  key(Qt::Key_Delete);
  EXPECT_EQ(document.site().find<site::Room>(m_room), nullptr);
  EXPECT_EQ(document.site().all<site::Outlet>().size(), before.all<site::Outlet>().size());
  document.undo();
  EXPECT_EQ(document.site(), before);
}

TEST_F(RoomTest, AltArrowsNudgeItsWholeOutline) {
  const auto before = room().outline;
  selection.choose({subject()});
  QTest::keyClick(&canvas(), Qt::Key_Right, Qt::AltModifier | Qt::ShiftModifier);
  ASSERT_EQ(room().outline.size(), before.size());
  for (std::size_t i = 0; i < before.size(); ++i) EXPECT_NEAR(room().outline[i].xM, before[i].xM + 1.0, 1e-9);
}

TEST_F(RoomTest, ACopyStandsWallToWall) {
  const site::Edit edit = copyOf(document.site(), {subject()});
  ASSERT_EQ(edit.changes.size(), 1U);
  const site::Room twin = *std::get<site::Change<site::Room>>(edit.changes.front()).after;
  EXPECT_NE(twin.id, m_room);
  const auto left = [](const site::Room& one) { return std::ranges::min(one.outline, {}, &geometry::Point::xM).xM; };
  const auto right = [](const site::Room& one) { return std::ranges::max(one.outline, {}, &geometry::Point::xM).xM; };
  EXPECT_NEAR(left(twin), right(room()), 1e-9);
}

TEST_F(RoomTest, IsReachedByTabAndHasAName) {
  key(Qt::Key_Backtab);
  const auto focus = canvas().state().focus;
  ASSERT_TRUE(focus.has_value());
  EXPECT_EQ(focus->kind, ItemKind::Room);
  EXPECT_TRUE(canvas().nameOf(*focus).startsWith("Room ")) << canvas().nameOf(*focus).toStdString();
}

}  // namespace
}  // namespace cordreach::app
