// SPDX-License-Identifier: GPL-3.0-or-later
// What is written on the curves: which is which, when one passes its limit, when a breaker trips, the limits' names.
#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "heat/plot_parts.h"
#include "look/look.h"
#include "shell/say.h"

namespace cordreach::app {

using study::Demonstration;
using units::Temperature;

// Beside the curves, where they have settled; two that run close stand one above and one below.
void HeatPlot::Parts::markCurves(const HeatModel& model, const text::Phrasebook& book, const PlotWishes& wishes) {
  const units::Duration where = model.run() * 0.62;
  const auto heightOf = [&](std::size_t side) {
    const auto point = model.side(side).demonstration.at(where);
    return point.conductor ? y(std::min(point.conductor->likely, Temperature::fromCelsius(hotC))) : area.top();
  };
  const double a = heightOf(0);
  const double b = heightOf(1);
  for (std::size_t side = 0; side < kSides; ++side) {
    const double own = side == 0 ? a : b;
    const bool above = own < (side == 0 ? b : a) || (a == b && side == 0);
    marks.push_back({{x(where.si() / 60.0), own + (above ? -6 : 6)},
                     say(book, "lesson.curve", {{"side", sideLetter(side).toStdString()}, {"place", "inside"}}),
                     above ? Qt::AlignBottom : Qt::AlignTop,
                     false,
                     true});
    const auto point = model.side(side).demonstration.at(model.run() * 0.85);
    if (wishes.plug) {
      marks.push_back({{x(minutes * 0.85), y(point.plug) - 5},
                       say(book, "lesson.curve", {{"side", sideLetter(side).toStdString()}, {"place", "plug"}}),
                       Qt::AlignBottom,
                       false,
                       false});
    }
    if (!wishes.outside || !point.surface) continue;
    marks.push_back({{x(minutes * 0.85), y(std::min(point.surface->likely, Temperature::fromCelsius(hotC))) + 5},
                     say(book, "lesson.curve", {{"side", sideLetter(side).toStdString()}, {"place", "outside"}}),
                     Qt::AlignTop,
                     false,
                     false});
  }
}

void HeatPlot::Parts::markEvents(const HeatModel& model, const text::Phrasebook& book) {
  for (std::size_t side = 0; side < kSides; ++side) {
    const Demonstration& demonstration = model.side(side).demonstration;
    const auto over = demonstration.conductorOver(demonstration.limit);
    if (over && *over < model.run()) {
      const QString minute = say(book, "unit.minutes", {{"n", std::to_string(std::lround(over->si() / 60.0))}});
      marks.push_back({{x(over->si() / 60.0), y(demonstration.limit)},
                       sideLetter(side) + QStringLiteral(", ") + minute,
                       Qt::AlignBottom,
                       true,
                       true});
    }
    const auto trip = demonstration.trips[static_cast<std::size_t>(physics::TripCurve::Likely)];
    if (!trip || *trip > model.run()) continue;
    trips.push_back(x(trip->si() / 60.0));
    marks.push_back({{trips.back() + 4, area.top() + 2 + static_cast<double>(side) * QFontMetricsF(small).height()},
                     say(book, "lesson.curve.trip", {{"side", sideLetter(side).toStdString()}}),
                     Qt::AlignTop,
                     false,
                     false});
  }
}

// Nothing else is written there, and no curve runs through it.
bool HeatPlot::Parts::isFree(const QRectF& box, const HeatModel& model, const PlotWishes& wishes) const {
  const auto covers = [&](const Mark& mark) { return boxOf(mark).intersects(box); };
  if (std::any_of(marks.begin(), marks.end(), covers)) return false;
  constexpr int kPlaces = 8;
  const QRectF around = box.adjusted(0, -kLinePx, 0, kLinePx);
  const auto runsThrough = [&](double at, const std::optional<Temperature>& height) {
    return height && around.contains(QPointF(at, y(*height)));
  };
  for (int i = 0; i <= kPlaces; ++i) {
    const double at = box.left() + box.width() * i / kPlaces;
    for (std::size_t side = 0; side < kSides; ++side) {
      const auto point = model.side(side).demonstration.at((at - area.left()) / area.width() * model.run());
      const auto likely = [](const auto& band) { return band ? std::optional(band->likely) : std::nullopt; };
      if (runsThrough(at, likely(point.conductor))) return false;
      if (wishes.outside && runsThrough(at, likely(point.surface))) return false;
      if (wishes.plug && runsThrough(at, point.plug)) return false;
    }
  }
  return true;
}

// Where the whole of it would reach over the middle, the half that matters.
QString HeatPlot::Parts::limitWords(const text::Phrasebook& book, const PlotLimit& limit) const {
  const QString whole = say(book, limit.code);
  const std::string brief = std::string(limit.code) + ".brief";
  const bool fits = QFontMetricsF(small).horizontalAdvance(whole) < area.width() * 0.45;
  return fits || !book.has(brief) ? whole : say(book, brief);
}

// At the right above its line, or where that is free: last of all that is written.
void HeatPlot::Parts::markLimits(const HeatModel& model, const text::Phrasebook& book, const PlotWishes& wishes) {
  for (const PlotLimit& limit : limits) {
    if (limit.at.celsius() > hotC) continue;
    const QString words = limitWords(book, limit);
    std::vector<Mark> places;
    for (const Qt::Alignment side : {Qt::AlignRight, Qt::AlignLeft}) {
      for (const Qt::Alignment edge : {Qt::AlignBottom, Qt::AlignTop}) {
        const double at = side == Qt::AlignRight ? area.right() - 6 : area.left() + 6;
        places.push_back({{at, y(limit.at) + (edge == Qt::AlignBottom ? -2 : 2)}, words, edge | side, false, false});
      }
    }
    const auto free = std::find_if(places.begin(), places.end(),
                                   [&](const Mark& place) { return isFree(boxOf(place), model, wishes); });
    marks.push_back(free != places.end() ? *free : places.front());
    marks.push_back({{area.right() + 6, y(limit.at)},
                     QString::number(std::lround(shown(limit.at))),
                     Qt::AlignVCenter,
                     false,
                     true});
  }
}

QRectF HeatPlot::Parts::boxOf(const Mark& mark) const {
  const QFontMetricsF metrics(mark.bold ? look::font(look::Type::CaptionBold) : small);
  QRectF box(mark.at, metrics.size(Qt::TextSingleLine, mark.words));
  if (mark.side & Qt::AlignBottom) box.translate(0, -box.height() - (mark.dot ? 5 : 0));
  if (mark.side & Qt::AlignVCenter) box.translate(0, -box.height() / 2);
  if (mark.side & Qt::AlignRight) box.translate(-box.width(), 0);
  if (mark.dot) box.translate(-box.width() - 2, 0);
  if (box.left() < area.left() + 2) box.moveLeft(mark.at.x() + 8);
  return box;
}

void HeatPlot::Parts::paintMark(QPainter& painter, const Mark& mark) const {
  const look::Tokens& tokens = look::tokens();
  if (mark.dot) {
    painter.setPen(Qt::NoPen);
    painter.setBrush(tokens.ink);
    painter.drawEllipse(mark.at, 4, 4);
  }
  painter.setFont(mark.bold ? look::font(look::Type::CaptionBold) : small);
  const QRectF box = boxOf(mark);
  QColor ground = tokens.sheet;
  ground.setAlphaF(0.8F);
  painter.fillRect(box.adjusted(-2, 0, 2, 0), ground);
  painter.setPen(mark.bold ? tokens.ink : tokens.ink2);
  painter.drawText(box, Qt::AlignLeft | Qt::AlignVCenter, mark.words);
}

void HeatPlot::Parts::paintDegrees(QPainter& painter) const {
  const double from = shown(Temperature::fromCelsius(coolC));
  const double to = shown(Temperature::fromCelsius(hotC));
  painter.setFont(small);
  painter.setPen(look::tokens().ink2);
  const double line = QFontMetricsF(small).height();
  for (double at = std::ceil(from / degreeStep) * degreeStep; at <= to; at += degreeStep) {
    const double y = area.bottom() - area.height() * (at - from) / (to - from);
    painter.drawText(QRectF(0, y - line / 2, area.left() - kRampPx - 5, line), Qt::AlignRight | Qt::AlignVCenter,
                     QString::number(std::lround(at)));
  }
}

}  // namespace cordreach::app
