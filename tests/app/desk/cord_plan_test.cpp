// SPDX-License-Identifier: GPL-3.0-or-later
// The place Cord and the plan: the way that is followed along it, and what else is planned at the same hours.
#include <QPushButton>

#include "app/desk/cord_fixture.h"
#include "desk/cart_rows.h"
#include "rules/judge.h"
#include "shell/remedy_button.h"
#include "study/assess.h"

namespace cordreach::app {
namespace {

class CordAndPlanTest : public CordPlaceTest {
 protected:
  [[nodiscard]] QString distanceNotes() const {
    QStringList said;
    for (const QLabel* label : editor(Ask::Distance)->findChildren<QLabel*>()) {
      if (!label->isHidden()) said << label->text();
    }
    return said.join(' ');
  }
  void chooseOutlet(const char* outlet) {
    place->model().change([outlet](CordInputs& said) {
      said.outletBy = OutletBy::Site;
      said.outlet = site::OutletSocket{site::OutletId(outlet), "upper"};
    });
  }
};

TEST_F(CordAndPlanTest, TheDistanceFollowsThePlanRoundItsWallsFromTheStart) {
  EXPECT_EQ(inputs().measure, Measure::Plan);
  ASSERT_TRUE(place->model().walk().has_value());
  EXPECT_EQ(place->model().walk()->by, site::WalkBy::Walls);
  const auto ends = planEnds(inputs(), place->model().site()).value();
  EXPECT_EQ(inputs().distance, site::walkBetween(place->model().site(), ends.outlet, ends.work)->length);
  QTest::mouseClick(input(Ask::Distance), Qt::LeftButton);
  EXPECT_TRUE(distanceNotes().contains("round its walls")) << distanceNotes().toStdString();
  // On the other side of a wall it is farther than two right angles.
  chooseOutlet("1-16");
  const site::Outlet& outlet = place->model().site().at<site::Outlet>(site::OutletId("1-16"));
  const units::Length rightAngles = geometry::rightAngleDistance(outlet.place->at, ends.work.at);
  EXPECT_GT(inputs().distance, rightAngles + 1.0 * units::metre);
}

TEST_F(CordAndPlanTest, WhatIsTypedIsNoLongerFollowedUntilItIsAskedFor) {
  const units::Length followed = inputs().distance;
  QTest::mouseClick(input(Ask::Distance), Qt::LeftButton);
  type("77");
  EXPECT_EQ(inputs().measure, Measure::Length);
  chooseOutlet("1-05");
  chooseOutlet("1-02");
  EXPECT_NEAR(inputs().distance.in(units::foot), 77.0, 1e-9);
  auto* again = editor(Ask::Distance)->findChild<QPushButton*>();
  ASSERT_TRUE(again->isVisible() && again->isEnabled());
  QTest::mouseClick(again, Qt::LeftButton);
  EXPECT_EQ(inputs().distance, followed);
  EXPECT_FALSE(again->isVisible());
}

TEST_F(CordAndPlanTest, SaysWhenItTakesRightAnglesOrCannotFollow) {
  site::Site bare = document().site();
  std::vector<site::Floor> floors(bare.all<site::Floor>().begin(), bare.all<site::Floor>().end());
  for (site::Floor& floor : floors) {
    floor.walls.clear();
    bare.all<site::Floor>().put(floor);
  }
  document().replace(bare, {});
  ASSERT_TRUE(place->model().walk().has_value());
  EXPECT_EQ(place->model().walk()->by, site::WalkBy::Undrawn);
  QTest::mouseClick(input(Ask::Distance), Qt::LeftButton);
  EXPECT_TRUE(distanceNotes().contains("No walls are drawn")) << distanceNotes().toStdString();
  place->model().change([](CordInputs& said) { said.outletBy = OutletBy::Hand; });
  EXPECT_FALSE(place->model().walk().has_value());
  EXPECT_TRUE(distanceNotes().contains("does not say")) << distanceNotes().toStdString();
}

TEST_F(CordAndPlanTest, TheSlackStandsInTheQuestion) {
  EXPECT_TRUE(input(Ask::Distance)->text().contains(QString::fromUtf8("8\u202fft slack")))
      << input(Ask::Distance)->text().toStdString();
}

TEST_F(CordAndPlanTest, CountsWhatElseIsPlannedOnThatCircuit) {
  askOfThePlan("1-05");
  ASSERT_TRUE(advises());
  EXPECT_GE(words().severity, rules::Severity::Caution);
  EXPECT_FALSE(advice().choice.has_value());
  EXPECT_TRUE(words().reason.contains("Also on this breaker: Burnisher, 1600 rpm")) << words().reason.toStdString();
  askOfThePlan("1-31");
  ASSERT_TRUE(advises());
  EXPECT_LT(words().severity, rules::Severity::Caution);
  EXPECT_FALSE(words().reason.contains("Also on")) << words().reason.toStdString();
}

TEST_F(CordAndPlanTest, NoCellIsExplainedUntilOneIsGoneTo) {
  askOfThePlan("1-05");
  ASSERT_TRUE(answers());
  ASSERT_FALSE(advice().choice.has_value());
  place->field()->setFocus();
  EXPECT_FALSE(place->field()->explained().has_value());
  key(Qt::Key_Right);
  EXPECT_TRUE(place->field()->explained().has_value());
}

TEST_F(CordAndPlanTest, SaysThatASocketIsTaken) {
  askOfThePlan("1-02");
  ASSERT_TRUE(advises());
  EXPECT_TRUE(words().reason.contains("This socket is taken")) << words().reason.toStdString();
}

// What was advised is what the map says once the button is pressed.
TEST_F(CordAndPlanTest, TheMapSaysTheSameOnceItIsUsed) {
  askOfThePlan();
  ASSERT_TRUE(advises());
  ASSERT_TRUE(advice().choice.has_value()) << words().spoken().toStdString();
  const planning::CordCandidate chosen = advice().candidates[*advice().choice];
  QTest::mouseClick(window->band()->button(), Qt::LeftButton);
  const study::Answer answer = study::assess(document().site());
  const site::HookupId hookup("H03");
  EXPECT_EQ(rules::verdictOf(hookup, rules::judge(document().site(), answer)), chosen.verdict);
  EXPECT_NEAR(answer.find(hookup)->voltage.likely.si(), chosen.voltage.likely.si(), 1e-6);
}

planning::CordCandidate cordOf(const char* label, int gauge, rules::Severity verdict, bool elsewhere = false) {
  const char* limit = verdict < rules::Severity::Caution ? "" : "cord.over_tag";
  return {units::WireSize::awg(gauge),
          50.0 * units::foot,
          {},
          {},
          label,
          elsewhere,
          {},
          {},
          {},
          verdict,
          limit,
          {},
          {},
          {}};
}

TEST(CartRows, StandInTheOrderInWhichOneWouldTakeThem) {
  using enum rules::Severity;
  planning::CordAdvice advice;
  advice.candidates = {cordOf("A", 16, Warning),  cordOf("B", 16, Warning), cordOf("C", 14, Ok),
                       cordOf("D", 12, Ok, true), cordOf("E", 12, Ok),      cordOf("F", 12, Ok),
                       cordOf("G", 10, Ok)};
  advice.choice = 4;
  const auto rows = cartRows(text::Phrasebook::load("en").value(), advice, units::WireSize::awg(14));
  ASSERT_EQ(rows.size(), 5U);
  EXPECT_TRUE(rows[0].words.startsWith("E, F, 12"));
  EXPECT_TRUE(rows[1].words.startsWith("G, 10"));
  EXPECT_TRUE(rows[2].words.startsWith("C, 14"));
  EXPECT_TRUE(rows[2].words.contains("no heavier"));
  EXPECT_EQ(rows[2].severity, Notice);
  EXPECT_TRUE(rows[3].words.startsWith("D, 12"));
  EXPECT_TRUE(rows[3].words.contains("elsewhere"));
  EXPECT_EQ(rows[3].severity, Notice);
  EXPECT_TRUE(rows[4].words.startsWith("A, B, 16"));
  EXPECT_EQ(rows[4].severity, Warning);
}

}  // namespace
}  // namespace cordreach::app
