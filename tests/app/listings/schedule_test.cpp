// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTableView>
#include <QTest>

#include "app/panels/support.h"
#include "listings/schedule_model.h"
#include "listings/schedule_view.h"
#include "panels/plain_controls.h"

namespace cordreach::app {
namespace {

using testing::demoBuilding;

class Schedule : public ::testing::Test {
 protected:
  Schedule() {
    view.resize(900, 560);
    view.show();
  }
  [[nodiscard]] ScheduleModel& model() const { return *view.model(); }
  [[nodiscard]] QString text(int row, int column) const {
    return model().index(row, column).data(Qt::DisplayRole).toString().replace(QChar(0x202F), QChar(' '));
  }

  testing::Desk desk{demoBuilding()};
  Surveyor surveyor;
  ScheduleView view{desk.session, surveyor};
};

TEST_F(Schedule, ShowsOddSpacesAtTheLeftAndEvenOnesAtTheRight) {
  EXPECT_EQ(view.panels()->currentText(), "1A");
  EXPECT_EQ(model().rowCount(), 7);  // 1A has circuits up to 14
  EXPECT_EQ(text(0, ScheduleModel::kNumber), "1");
  EXPECT_EQ(text(0, ScheduleModel::kHalf), "2");
  EXPECT_EQ(text(0, ScheduleModel::kRating), "20 A");
  EXPECT_EQ(text(5, 2 * ScheduleModel::kHalf - 2), "15 A");  // 12: the fire alarm
  EXPECT_TRUE(text(5, 2 * ScheduleModel::kHalf - 3).contains("never"));
}

TEST_F(Schedule, IsEditedAndUndone) {
  EXPECT_TRUE(model().setData(model().index(0, ScheduleModel::kFeeds), "Corridor, east", Qt::EditRole));
  EXPECT_EQ(text(0, ScheduleModel::kFeeds), "Corridor, east");
  EXPECT_TRUE(model().setData(model().index(0, ScheduleModel::kRating), "15 A", Qt::EditRole));
  EXPECT_EQ(text(0, ScheduleModel::kRating), "15 A");
  QSignalSpy refused(&view, &ScheduleView::refused);
  EXPECT_FALSE(model().setData(model().index(0, ScheduleModel::kRating), "much", Qt::EditRole));
  EXPECT_EQ(refused.count(), 1);
  desk.document.undo();
  desk.document.undo();
  EXPECT_EQ(desk.document.site(), demoBuilding());
}

TEST_F(Schedule, AddsABreakerInAnEmptySpace) {
  site::Panel before = desk.document.site().at<site::Panel>(site::PanelId("1A"));
  site::Panel after = before;
  after.spaces = site::known(24);
  ASSERT_TRUE(desk.document.apply({"panel.change", {site::Change<site::Panel>{before, after}}}).ok());
  ASSERT_EQ(model().rowCount(), 12);
  const QModelIndex empty = model().index(8, ScheduleModel::kFeeds);  // space 17
  EXPECT_TRUE(model().circuitsAt(empty).empty());
  EXPECT_TRUE(model().setData(empty, "Water heater", Qt::EditRole));
  ASSERT_EQ(model().circuitsAt(empty).size(), 1U);
  const site::Circuit& added = desk.document.site().at<site::Circuit>(model().circuitsAt(empty).front());
  EXPECT_EQ(added.number, "17");
  EXPECT_EQ(added.purpose, "Water heater");
  EXPECT_EQ(added.phases, std::vector<std::size_t>{0});
}

TEST_F(Schedule, ShowsTwoPolesTandemsAndTies) {
  const site::Circuit before = desk.document.site().at<site::Circuit>(site::CircuitId("1A-1"));
  site::Circuit after = before;
  after.number = "1A";
  after.tandem = true;
  site::Circuit twin{site::CircuitId("twin"), before.panel, "1B", {0}, "Door bell"};
  twin.tandem = true;
  site::Circuit heater{site::CircuitId("heater"), before.panel, "15", {0, 1}, "Heater"};
  heater.tied = true;
  ASSERT_TRUE(desk.document
                  .apply({"circuit.change",
                          {site::Change<site::Circuit>{before, after}, site::Change<site::Circuit>{{}, twin},
                           site::Change<site::Circuit>{{}, heater}}})
                  .ok());
  EXPECT_TRUE(text(0, ScheduleModel::kFeeds).endsWith(" / Door bell"));
  EXPECT_TRUE(text(0, ScheduleModel::kKind).contains("tandem"));
  EXPECT_EQ(text(7, ScheduleModel::kFeeds), "Heater");
  EXPECT_EQ(text(7, ScheduleModel::kKind), "tied");
  EXPECT_EQ(text(8, ScheduleModel::kFeeds), "with 15");
  EXPECT_FALSE(model().flags(model().index(8, ScheduleModel::kFeeds)).testFlag(Qt::ItemIsEditable));
}

TEST_F(Schedule, ChoosesCircuitsAndFollowsThem) {
  view.table()->setFocus();
  view.table()->setCurrentIndex(model().index(1, ScheduleModel::kFeeds));
  ASSERT_TRUE(desk.selection.single().has_value());
  EXPECT_EQ(desk.selection.single()->id, "1A-3");
  desk.selection.choose({{rules::SubjectKind::Circuit, "2A-6"}});
  EXPECT_EQ(view.panels()->currentText(), "2A");
  EXPECT_EQ(view.table()->currentIndex(), model().indexOf(site::CircuitId("2A-6")));
}

}  // namespace
}  // namespace cordreach::app
