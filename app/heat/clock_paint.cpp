// SPDX-License-Identifier: GPL-3.0-or-later
#include "heat/clock_paint.h"

#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>
#include <vector>

#include "heat/heat_words.h"
#include "look/look.h"
#include "shell/say.h"

namespace cordreach::app {

namespace {

constexpr double kHandleWidthPx = 64;
constexpr double kHandleHeightPx = 24;
constexpr double kDotPx = 5;
constexpr double kSmallDotPx = 3.5;
constexpr double kBesidePx = 10;

// What one curve has at the clock's time.
struct Reading {
  double y;
  QString words;
  bool inside;
};

std::vector<Reading> readingsOf(const ClockScene& scene) {
  std::vector<Reading> all;
  for (std::size_t side = 0; side < kSides; ++side) {
    const study::DemonstrationPoint point = scene.model.now(side);
    const auto add = [&](units::Temperature at, const char* place) {
      const base::Arguments arguments{{"side", sideLetter(side).toStdString()},
                                      {"place", place},
                                      {"degrees", degrees(scene.book, at).toStdString()}};
      all.push_back({scene.plot.yOf(at), say(scene.book, "lesson.cursor", arguments), place == std::string("inside")});
    };
    if (point.conductor) add(point.conductor->likely, "inside");
    if (scene.wishes.outside && point.surface) add(point.surface->likely, "outside");
    if (scene.wishes.plug) add(point.plug, "plug");
  }
  std::stable_sort(all.begin(), all.end(), [](const Reading& a, const Reading& b) { return a.y < b.y; });
  return all;
}

// Where the words stand: each beside its dot, moved apart where they would cover each other.
std::vector<double> placesOf(const std::vector<Reading>& readings, const QRectF& area, double line) {
  std::vector<double> places;
  for (const Reading& reading : readings) {
    const double least = places.empty() ? area.top() : places.back() + line;
    places.push_back(std::max(reading.y - line / 2, least));
  }
  double most = area.bottom() - line;
  for (std::size_t i = places.size(); i-- > 0;) {
    places[i] = std::min(places[i], most);
    most = places[i] - line;
  }
  return places;
}

void paintReadings(QPainter& painter, const ClockScene& scene, double x) {
  const look::Tokens& tokens = look::tokens();
  const std::vector<Reading> readings = readingsOf(scene);
  painter.setPen(QPen(tokens.ink, 2));
  painter.setBrush(tokens.sheet);
  for (const Reading& reading : readings) {
    const double radius = reading.inside ? kDotPx : kSmallDotPx;
    painter.drawEllipse(QPointF(x, reading.y), radius, radius);
  }
  painter.setFont(look::font(look::Type::CaptionBold));
  const QFontMetricsF metrics(painter.font());
  double widest = 0.0;
  for (const Reading& reading : readings) widest = std::max(widest, metrics.horizontalAdvance(reading.words));
  const QRectF area = scene.plot.area();
  const bool right = x + kBesidePx + widest <= area.right();
  const std::vector<double> places = placesOf(readings, area, metrics.height());
  QColor ground = tokens.sheet;
  ground.setAlphaF(0.85F);
  for (std::size_t i = 0; i < readings.size(); ++i) {
    const double wide = metrics.horizontalAdvance(readings[i].words);
    const QRectF box(right ? x + kBesidePx : x - kBesidePx - wide, places[i], wide, metrics.height());
    painter.fillRect(box.adjusted(-2, 0, 2, 0), ground);
    painter.setPen(tokens.ink);
    painter.drawText(box, Qt::AlignLeft | Qt::AlignVCenter, readings[i].words);
  }
}

}  // namespace

void paintClock(QPainter& painter, const ClockScene& scene) {
  const look::Tokens& tokens = look::tokens();
  const double x = scene.plot.xOf(scene.model.clock());
  const QRectF area = scene.plot.area();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(tokens.select, 2));
  painter.drawLine(QLineF(x, area.top() - 4, x, area.bottom() + 4));
  paintReadings(painter, scene, x);
  const double width = look::scaled(kHandleWidthPx);
  const double height = look::scaled(kHandleHeightPx);
  QRectF handle(x - width / 2, area.top() - height - 4, width, height);
  handle.moveLeft(std::clamp(handle.left(), 2.0, scene.width - width - 2.0));
  painter.setPen(Qt::NoPen);
  painter.setBrush(tokens.select);
  painter.drawRoundedRect(handle, 5, 5);
  painter.setFont(look::font(look::Type::BodyBold));
  painter.setPen(tokens.sheet);
  painter.drawText(handle, Qt::AlignCenter, clockWords(scene.model.clock()));
}

}  // namespace cordreach::app
