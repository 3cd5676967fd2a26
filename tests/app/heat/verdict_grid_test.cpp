// SPDX-License-Identifier: GPL-3.0-or-later
// Heat says what the console says: 600 sides against `assess` of the same building as a file, and its curves against
// `heat` for the same cord at the same amps.
#include <gtest/gtest.h>

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTemporaryDir>
#include <set>
#include <sstream>

#include "app/console/support.h"
#include "console/heat_answer.h"
#include "io/site_file.h"
#include "planning/lesson.h"
#include "rules/severity.h"
#include "site/invariants.h"

namespace cordreach::app {
namespace {

using tables::Laying;
using tables::LoadClass;

planning::LessonCase sideOf(int awg, double feet, const site::LayingOfCord& laying) {
  planning::LessonCase side;
  side.cord.type = "SJTW";
  side.cord.legend = "SJTW " + std::to_string(awg) + "/3";
  side.cord.size = site::known(units::WireSize::awg(awg));
  side.cord.conductors = site::known(3);
  side.cord.length = site::known(feet * units::foot);
  side.cord.plug = "5-15";
  side.laying = laying;
  site::Inlet& inlet = side.machine.inlets.emplace_back();
  inlet.name = "A";
  inlet.cord.size = site::known(units::WireSize::awg(14));
  inlet.cord.conductors = site::known(3);
  inlet.cord.length = site::known(50.0 * units::foot);
  side.machine.name = "Machine";
  return side;
}

std::vector<planning::LessonCase> grid() {
  struct Machine {
    LoadClass loadClass;
    double amps;
  };
  const std::vector<Machine> machines{{LoadClass::Induction, 13.0},
                                      {LoadClass::RectifiedDc, 14.5},
                                      {LoadClass::Universal, 9.0},
                                      {LoadClass::Resistance, 6.0},
                                      {LoadClass::Induction, 16.0}};
  const std::vector<site::LayingOfCord> layings{{Laying::Floor, 0.0, {}},   {Laying::Straight, 0.0, {}},
                                                {Laying::Carpet, 0.0, {}},  {Laying::Covered, 0.0, {}},
                                                {Laying::Coiled, 10.0, {}}, {Laying::Reel, 3.0, {}}};
  std::vector<planning::LessonCase> sides;
  for (const int awg : {18, 16, 14, 12, 10}) {
    for (const double feet : {50.0, 100.0}) {
      for (const auto& laying : layings) {
        for (const Machine& machine : machines) {
          for (const double breaker : {15.0, 20.0}) {
            planning::LessonCase side = sideOf(awg, feet, laying);
            side.machine.inlets.front().loadClass = machine.loadClass;
            side.machine.inlets.front().plate = site::known(machine.amps * units::ampere);
            side.breaker = breaker * units::ampere;
            sides.push_back(side);
          }
        }
      }
    }
  }
  return sides;
}

TEST(HeatVerdictGrid, EverySideIsJudgedAsAssessJudgesItsBuilding) {
  const QTemporaryDir folder;
  const std::vector<planning::LessonCase> sides = grid();
  ASSERT_GE(sides.size(), 500U);
  std::vector<std::string> arguments{"assess", "--json"};
  for (std::size_t i = 0; i < sides.size(); ++i) {
    const site::Site site = planning::lessonSite(sides[i], "A");
    ASSERT_TRUE(site::checkInvariants(site).ok());
    arguments.push_back(folder.path().toStdString() + "/" + std::to_string(i) + ".json");
    ASSERT_TRUE(io::saveSite(arguments.back(), site).ok());
  }
  std::istringstream lines(console::ran(arguments).out);
  std::size_t at = 0;
  std::set<rules::Severity> met;
  for (std::string line; std::getline(lines, line); ++at) {
    const QJsonObject answer = QJsonDocument::fromJson(QByteArray::fromStdString(line)).object();
    const planning::LessonVerdict verdict = planning::judgeLesson(sides.at(at), "A");
    const QString assessed = answer["hookups"].toArray().at(0).toObject()["verdict"].toString();
    EXPECT_EQ(assessed.toLower().toStdString(), rules::nameOf(verdict.severity)) << at;
    met.insert(verdict.severity);
  }
  EXPECT_EQ(at, sides.size());
  EXPECT_GE(met.size(), 3U);  // a grid that is all alike would show nothing
}

TEST(HeatVerdictGrid, TheCurvesEndWhereHeatEndsAtTheSameAmps) {
  for (const int awg : {16, 12}) {
    for (const site::LayingOfCord& laying : {site::LayingOfCord{}, site::LayingOfCord{Laying::Covered, 0.0, {}},
                                             site::LayingOfCord{Laying::Coiled, 10.0, {}}}) {
      planning::LessonCase side = sideOf(awg, 50.0, laying);
      side.machine.inlets.front().loadClass = LoadClass::Resistance;
      side.machine.inlets.front().plate = site::known(8.0 * units::ampere);
      const auto run = 2.0 * units::hour;
      const study::Demonstration shown = planning::demonstrateLesson(side, run);
      const console::HeatAnswer heat =
          console::answerHeat({side.cord, laying, shown.points.back().current, shown.air, run});
      ASSERT_TRUE(shown.points.back().conductor && heat.last().conductorC);
      EXPECT_NEAR(shown.points.back().conductor->likely.celsius(), heat.last().conductorC->likely, 0.5);
      EXPECT_NEAR(shown.points.back().surface->likely.celsius(), heat.last().surfaceC->likely, 0.5);
      EXPECT_NEAR(shown.points.back().conductor->high.celsius(), heat.last().conductorC->high, 1.0);
    }
  }
}

}  // namespace
}  // namespace cordreach::app
