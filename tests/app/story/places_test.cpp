// SPDX-License-Identifier: GPL-3.0-or-later
// Going to a place of the building: what is sought, what a breaker feeds, what is near its limit, what is warm.
#include <QLabel>
#include <QListWidget>
#include <set>

#include "app/story/story.h"
#include "panels/find_dialog.h"
#include "panels/link_button.h"
#include "panels/place_list.h"
#include "panels/places_dialog.h"
#include "panels/selection_panel.h"
#include "rules/near_limit.h"
#include "shell/map_lists.h"
#include "site/feeding.h"
#include "site/natural_order.h"

namespace cordreach::app {
namespace {

using rules::Subject;
using rules::SubjectKind;

class GoingToPlaces : public StoryTest {
 protected:
  [[nodiscard]] MapLists& lists() const { return *window->map()->placeLists(); }
  [[nodiscard]] const Selection& selection() const { return window->session().selection; }
  [[nodiscard]] QAction* action(const char* code) const {
    for (QAction* one : window->findChildren<QAction*>()) {
      if (one->text() == say(window->session().book, code)) return one;
    }
    return nullptr;
  }
  void seek(const QString& typed) {
    action("window.action.find")->trigger();
    ASSERT_TRUE(lists().finder()->isVisible());
    lists().finder()->line()->clear();
    QTest::keyClicks(lists().finder()->line(), typed);
  }
  void pressInLine(Qt::Key key) { QTest::keyClick(lists().finder()->line(), key); }
};

TEST_F(GoingToPlaces, AnOutletIsFoundByItsNumberOnAnotherFloorAndChosen) {
  EXPECT_EQ(action("window.action.find")->shortcut(), QKeySequence(QKeySequence::Find));
  seek("2-11");
  pressInLine(Qt::Key_Return);
  EXPECT_EQ(selection().chosen(), (std::vector<Subject>{{SubjectKind::Outlet, "2-11"}}));
  EXPECT_EQ(canvas().floor(), site::FloorId("F2"));
  EXPECT_TRUE(canvas().pointOf({SubjectKind::Outlet, "2-11"}));
  EXPECT_FALSE(lists().finder()->isVisible());
}

TEST_F(GoingToPlaces, ArrowsInTheLineChooseAmongWhatWasFound) {
  seek("burnisher");
  ASSERT_GE(lists().finder()->list()->count(), 2);
  pressInLine(Qt::Key_Down);
  const QString second = lists().finder()->list()->currentItem()->text();
  EXPECT_EQ(second, lists().finder()->list()->item(1)->text());
  pressInLine(Qt::Key_Return);
  ASSERT_EQ(selection().chosen().size(), 1U);
  EXPECT_EQ(selection().chosen().front().kind, SubjectKind::Machine);
}

TEST_F(GoingToPlaces, ARoomIsGoneToOnItsFloorAndChosen) {
  seek("201");
  pressInLine(Qt::Key_Return);
  EXPECT_EQ(canvas().floor(), site::FloorId("F2"));
  const auto single = selection().single();
  ASSERT_TRUE(single && single->kind == SubjectKind::Room);
  EXPECT_EQ(document().site().at<site::Room>(site::RoomId(single->id)).number, "201");
}

TEST_F(GoingToPlaces, EveryKindOfThingIsFoundByWhatStandsOnIt) {
  const ThingIndex index(window->session().book, document().site());
  const std::vector<std::pair<const char*, Subject>> sought{
      {"1-13", Subject{SubjectKind::Outlet, "1-13"}},  {"1A", Subject{SubjectKind::Panel, "1A"}},
      {"1a-4", Subject{SubjectKind::Circuit, "1A-4"}}, {"c07", Subject{SubjectKind::Cord, "C07"}},
      {"103", Subject{SubjectKind::Room, "R103"}},     {"wet vacuum", Subject{SubjectKind::Machine, "M8"}}};
  for (const auto& [typed, thing] : sought) {
    const auto found = index.find(typed);
    ASSERT_FALSE(found.empty()) << typed;
    EXPECT_EQ(found.front().thing, thing) << typed;
  }
  EXPECT_FALSE(index.find("sump pump").empty());
  EXPECT_TRUE(index.find("").empty());
}

TEST_F(GoingToPlaces, NothingFoundIsSaidAndReturnStays) {
  seek("no such thing");
  EXPECT_EQ(lists().finder()->list()->count(), 0);
  EXPECT_TRUE(lists().finder()->said().contains("no such thing"));
  pressInLine(Qt::Key_Return);
  EXPECT_TRUE(lists().finder()->isVisible());
  lists().finder()->line()->clear();
  EXPECT_EQ(lists().finder()->said(), say(window->session().book, "find.ask"));
}

TEST_F(GoingToPlaces, WhatIsOnABreakerIsListedFloorByFloorAndGoneTo) {
  window->session().selection.choose({{SubjectKind::Circuit, "1A-4"}});
  action("window.action.dark")->trigger();
  ASSERT_NE(lists().places(), nullptr);
  const auto fed = site::feedingOf(document().site(), site::CircuitId("1A-4"));
  std::size_t places = 0;
  QListWidget& list = *lists().places()->list();
  for (int i = 0; i < list.count(); ++i) places += (list.item(i)->flags() & Qt::ItemIsSelectable) != 0 ? 1 : 0;
  EXPECT_EQ(places, fed.outlets.size() + fed.loads.size() + fed.machines.size());
  QStringList outlets;
  for (int i = 0; i < list.count(); ++i) {
    if (list.item(i)->text().startsWith("Outlet")) outlets << list.item(i)->text();
  }
  QStringList inOrder = outlets;
  std::ranges::sort(inOrder, site::comesBefore, &QString::toStdString);
  EXPECT_GT(outlets.size(), 2);
  EXPECT_EQ(outlets, inOrder);
  EXPECT_TRUE(lists().places()->head().contains("1A-4"));
  EXPECT_TRUE(lists().places()->note().contains("named person"));
  EXPECT_EQ(selection().chosen(), (std::vector<Subject>{{SubjectKind::Circuit, "1A-4"}}));
  QTest::keyClick(&list, Qt::Key_Return);
  ASSERT_EQ(selection().chosen().size(), 1U);
  EXPECT_EQ(selection().chosen().front().kind, SubjectKind::Outlet);
}

TEST_F(GoingToPlaces, APanelTakesAllItFeedsAlongAndSaysWhatIsOffLimits) {
  const auto list = darkList(window->session().book, document().site(), {SubjectKind::Panel, "1A"});
  EXPECT_TRUE(list.note.contains("1A-12, 1A-13")) << list.note.toStdString();
  EXPECT_TRUE(list.note.contains("off limits"));
  std::set<std::string> outlets;
  for (const PlaceRow& row : list.rows) {
    if (row.subject && row.subject->kind == SubjectKind::Outlet) outlets.insert(row.subject->id);
  }
  std::set<std::string> expected;
  const auto circuits = site::circuitsBehind(document().site(), site::PanelId("1A"));
  for (const site::Outlet& outlet : document().site().all<site::Outlet>()) {
    for (const site::Contact& contact : outlet.contacts) {
      const bool isOn =
          contact.assignment && std::count(circuits.begin(), circuits.end(), contact.assignment->circuit) > 0;
      if (isOn) expected.insert(outlet.id.text());
    }
  }
  EXPECT_EQ(outlets, expected);
}

TEST_F(GoingToPlaces, TheColumnAndTheOutletsMenuOfferIt) {
  window->session().selection.choose({{SubjectKind::Outlet, "1-13"}});
  auto* link = window->map()->selection()->findChild<LinkButton*>("dark");
  ASSERT_TRUE(link != nullptr && link->isVisible());
  QTest::keyClick(link, Qt::Key_Space);
  ASSERT_NE(lists().places(), nullptr);
  EXPECT_EQ(selection().chosen().front().kind, SubjectKind::Circuit);
  window->session().selection.clear();
  EXPECT_FALSE(link->isVisible());
}

TEST_F(GoingToPlaces, NearLimitNamesTheReasonAndLeadsToTheCircuit) {
  action("window.action.near")->trigger();
  ASSERT_NE(lists().places(), nullptr);
  const auto near = rules::nearLimit(document().site());
  ASSERT_FALSE(near.empty());
  QListWidget& list = *lists().places()->list();
  ASSERT_EQ(list.count(), static_cast<int>(near.size()));
  EXPECT_TRUE(list.item(0)->text().contains(QString::fromStdString(near.front().circuit.text())));
  EXPECT_TRUE(list.item(0)->text().contains(
      QString::fromStdString(std::get<std::string>(near.front().why.front().arguments.back().value))));
  QTest::mouseClick(list.viewport(), Qt::LeftButton, {}, list.visualItemRect(list.item(0)).center());
  EXPECT_EQ(selection().chosen(), (std::vector<Subject>{{SubjectKind::Circuit, near.front().circuit.text()}}));
}

TEST_F(GoingToPlaces, WarmPlacesFollowTheVerdict) {
  ASSERT_TRUE(settles());
  action("window.action.hot")->trigger();
  ASSERT_NE(lists().places(), nullptr);
  EXPECT_GT(lists().places()->list()->count(), 5);
  EXPECT_FALSE(lists().places()->head().isEmpty());
}

}  // namespace
}  // namespace cordreach::app
