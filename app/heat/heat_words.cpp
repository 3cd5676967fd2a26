// SPDX-License-Identifier: GPL-3.0-or-later
#include "heat/heat_words.h"

#include <array>
#include <cmath>

#include "physics/touch_limits.h"
#include "shell/say.h"
#include "site/file_words.h"
#include "text/quantity_text.h"

namespace cordreach::app {

QString layingWords(const text::Phrasebook& book, const site::LayingOfCord& laying) {
  base::Arguments arguments{{"laying", std::string(site::fileWord(laying.laying))}};
  if (laying.turns > 0.0) arguments.push_back({"turns", laying.turns});
  if (laying.affected) arguments.push_back({"affected_m", laying.affected->si()});
  return say(book, "lesson.laying", arguments);
}

QString cordWords(const text::Phrasebook& book, const site::CordMake& make) {
  return say(book, "lesson.cord", {{"print", make.legend}, {"length_m", make.length->value.si()}});
}

QString shortCordWords(const text::Phrasebook& book, const site::CordMake& make) {
  const std::size_t space = make.legend.find(' ');
  const std::string print = space == std::string::npos ? make.legend : make.legend.substr(space + 1);
  return say(book, "lesson.cord", {{"print", print}, {"length_m", make.length->value.si()}});
}

QString caseName(const text::Phrasebook& book, const planning::LessonCase& side) {
  const QString name = side.name.empty() ? cordWords(book, side.cord) : QString::fromStdString(side.name);
  return name + QStringLiteral(", ") + layingWords(book, side.laying);
}

namespace {

constexpr std::array kFeels = {"cool", "warm", "hot", "never"};

// Which of these words says how a jacket feels.
const char* feelOf(const study::DemonstrationPoint& point) {
  if (!point.surface) return "never";
  switch (physics::jacketFeel(point.surface->likely)) {
    case physics::JacketFeel::Cool:
      return "cool";
    case physics::JacketFeel::WarmToHold:
      return "warm";
    case physics::JacketFeel::TooHotToHold:
      return "hot";
    case physics::JacketFeel::TooHotToTouch:
      break;
  }
  return "never";
}

}  // namespace

QString handWords(const text::Phrasebook& book, const study::DemonstrationPoint& point) {
  return say(book, std::string("lesson.hand.") + feelOf(point));
}

QString outsideWords(const text::Phrasebook& book, const study::DemonstrationPoint& point) {
  return say(book, std::string("lesson.outside.") + feelOf(point));
}

QString insideWords(const text::Phrasebook& book, const study::DemonstrationPoint& point, units::Temperature limit) {
  if (!point.conductor) return say(book, "lesson.inside.burns");
  const units::Temperature inside = point.conductor->likely;
  if (inside > physics::conductorDamage().value) return say(book, "lesson.inside.damaged");
  if (inside > limit) return say(book, "lesson.inside.softens");
  if (inside > physics::jacketWarm().value) return say(book, "lesson.inside.hot");
  return say(book, inside.celsius() > 32.0 ? "lesson.inside.warm" : "lesson.inside.cool");
}

QStringList allHandWords(const text::Phrasebook& book) {
  QStringList all;
  for (const char* feel : kFeels) all << say(book, std::string("lesson.hand.") + feel);
  return all;
}

QStringList allFeelWords(const text::Phrasebook& book) {
  QStringList all;
  for (const char* feel : kFeels) all << say(book, std::string("lesson.outside.") + feel);
  for (const char* inside : {"cool", "warm", "hot", "softens", "damaged", "burns"}) {
    all << say(book, std::string("lesson.inside.") + inside);
  }
  return all;
}

QString degrees(const text::Phrasebook& book, units::Temperature temperature) {
  return QString::fromStdString(text::quantityText(book, "value_c", temperature.celsius()));
}

QString degrees(const text::Phrasebook& book, const std::optional<study::Band<units::Temperature>>& band) {
  return band ? degrees(book, band->likely) : say(book, "heat.beyond");
}

QString clockWords(units::Duration time) {
  const auto seconds = static_cast<int>(std::lround(time.si()));
  const QString rest = QStringLiteral("%1").arg(seconds % 60, 2, 10, QLatin1Char('0'));
  if (seconds < 3600) return QString::number(seconds / 60) + ':' + rest;
  return QStringLiteral("%1:%2:%3").arg(seconds / 3600).arg(seconds / 60 % 60, 2, 10, QLatin1Char('0')).arg(rest);
}

}  // namespace cordreach::app
