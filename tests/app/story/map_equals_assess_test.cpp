// SPDX-License-Identifier: GPL-3.0-or-later
// The window says what the console says of the saved file: the same figures on the map, the same findings in order.
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSet>

#include "app/console/support.h"
#include "app/story/story.h"
#include "console/site_answer.h"
#include "map/map_figures.h"
#include "text/severity_text.h"

namespace cordreach::app {
namespace {

class MapEqualsAssess : public StoryTest {
 protected:
  // What `assess --json` writes about the file that the window saves.
  [[nodiscard]] QJsonObject assessed() {
    const QString path = folder.path() + "/saved.json";
    if (!window->files().saveTo(path)) throw std::runtime_error("not saved");
    const console::Ran ran = console::ran({"assess", "--json", path.toStdString()});
    return QJsonDocument::fromJson(QByteArray::fromStdString(ran.out)).object();
  }

  [[nodiscard]] static QJsonObject withId(const QJsonArray& all, const std::string& id) {
    for (const auto& one : all) {
      if (one.toObject()["id"].toString().toStdString() == id) return one.toObject();
    }
    throw std::runtime_error("not assessed: " + id);
  }

  [[nodiscard]] const text::Phrasebook& book() const { return window->session().book; }

  [[nodiscard]] QString machineFigure(const QJsonObject& hookup) const {
    return voltsText(book(), hookup["voltage_v"].toDouble() * units::volt) + ", " +
           ampsText(book(), hookup["current_a"].toDouble() * units::ampere);
  }

  void compareCords(const MapCord& onMap, const QJsonArray& cords) {
    ASSERT_EQ(onMap.parts.size(), static_cast<std::size_t>(cords.size())) << onMap.hookup.text();
    for (qsizetype i = 0; i < cords.size(); ++i) {
      const MapCordPart& part = onMap.parts[static_cast<std::size_t>(i)];
      const QJsonObject cord = cords[i].toObject();
      EXPECT_EQ(part.cord ? QString::fromStdString(part.cord->text()) : QString(), cord["id"].toString());
      EXPECT_EQ(part.beyondModel, cord["conductor_c"].isNull());
      if (part.beyondModel) continue;
      const double celsius = cord["conductor_c"].toDouble();
      EXPECT_NEAR(part.conductor->celsius(), celsius, 1e-5 * celsius);
      EXPECT_EQ(part.figure, degreesText(book(), units::Temperature::fromCelsius(celsius)));
    }
  }

  // Everything that the floor now on the map shows.
  void compareFloor(const QJsonArray& hookups, QSet<QString>& seen) {
    const MapContent& content = canvas().content();
    ASSERT_TRUE(content.fresh);
    for (const MapCord& cord : content.cords) {
      compareCords(cord, withId(hookups, cord.hookup.text())["cords"].toArray());
    }
    for (const MapMachine& machine : content.machines) {
      QStringList figures;
      for (const site::HookupId& id : machine.hookups) {
        const QJsonObject hookup = withId(hookups, id.text());
        figures << machineFigure(hookup);
        seen << QString::fromStdString(id.text());
        const std::string code = hookup["verdict"].toString().toStdString();
        EXPECT_EQ(text::severityCode(rules::verdictOf(id, verdict()->findings)), code) << id.text();
      }
      EXPECT_EQ(machine.figure, figures.join("; ")) << machine.id.text();
    }
  }
};

TEST_F(MapEqualsAssess, EveryHookupsFiguresAtEachMomentOfTheEvening) {
  const QJsonArray hookups = assessed()["hookups"].toArray();
  ASSERT_TRUE(settles());
  ASSERT_GE(hookups.size(), 10);
  MapView& view = *window->map()->view();
  QSet<QString> seen;
  for (const units::Duration& moment : momentsOf(document().site())) {
    view.moment().choose(moment);
    for (const site::Floor& floor : document().site().all<site::Floor>()) {
      view.showFloor(floor.id);
      compareFloor(hookups, seen);
    }
  }
  EXPECT_EQ(seen.size(), hookups.size());
}

TEST_F(MapEqualsAssess, TheSameFindingsInTheSameOrder) {
  const QJsonArray listed = assessed()["findings"].toArray();
  ASSERT_TRUE(settles());
  const auto& findings = verdict()->findings;
  ASSERT_EQ(findings.size(), static_cast<std::size_t>(listed.size()));
  for (std::size_t i = 0; i < findings.size(); ++i) {
    const QJsonObject one = listed[static_cast<qsizetype>(i)].toObject();
    EXPECT_EQ(findings[i].code, one["code"].toString().toStdString());
    EXPECT_EQ(text::severityCode(findings[i].severity), one["severity"].toString().toStdString());
    const QJsonArray subjects = one["subjects"].toArray();
    ASSERT_EQ(findings[i].subjects.size(), static_cast<std::size_t>(subjects.size()));
    for (std::size_t s = 0; s < findings[i].subjects.size(); ++s) {
      EXPECT_EQ(findings[i].subjects[s].id,
                subjects[static_cast<qsizetype>(s)].toObject()["id"].toString().toStdString());
    }
    EXPECT_EQ(verdict()->remedies[i].size(), static_cast<std::size_t>(one["remedies"].toArray().size()));
  }
}

TEST_F(MapEqualsAssess, ToTheLastDigitBeforeAnythingIsRounded) {
  const QString path = folder.path() + "/saved.json";
  ASSERT_TRUE(window->files().saveTo(path));
  ASSERT_TRUE(settles());
  const console::SiteAnswer file = console::answerSite(path.toStdString()).value();
  const study::Answer& shown = verdict()->answer;
  ASSERT_EQ(shown.hookups.size(), file.answer.hookups.size());
  for (std::size_t i = 0; i < shown.hookups.size(); ++i) {
    const study::HookupAnswer& here = shown.hookups[i];
    const study::HookupAnswer& there = file.answer.hookups[i];
    EXPECT_EQ(here.id, there.id);
    EXPECT_EQ(here.voltage, there.voltage) << here.id.text();
    EXPECT_EQ(here.current, there.current) << here.id.text();
    ASSERT_EQ(here.cords.size(), there.cords.size());
    for (std::size_t c = 0; c < here.cords.size(); ++c) EXPECT_EQ(here.cords[c].conductor, there.cords[c].conductor);
  }
}

}  // namespace
}  // namespace cordreach::app
