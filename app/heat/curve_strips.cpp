// SPDX-License-Identifier: GPL-3.0-or-later
#include "heat/curve_strips.h"

#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>
#include <cmath>
#include <limits>

#include "look/look.h"
#include "shell/say.h"
#include "text/quantity_text.h"

namespace cordreach::app {

namespace {

using study::DemonstrationPoint;

constexpr double kCurvePx = 30;  // at least, below the name
constexpr double kMostPx = 76;
constexpr double kDotPx = 4;

// One quantity: its name, what it is at an instant, what of its scale always shows.
struct Quantity {
  const char* code;
  bool PlotWishes::*wish;
  std::optional<double> (*read)(const DemonstrationPoint&);
  int decimals;
  double leastSpan;
  bool fromZero;
};

const std::array kQuantities = {
    Quantity{"lesson.strip.volts", &PlotWishes::volts,
             [](const DemonstrationPoint& at) { return at.powered ? std::optional(at.voltage.si()) : std::nullopt; }, 1,
             4.0, false},
    Quantity{"lesson.strip.speed", &PlotWishes::speed,
             [](const DemonstrationPoint& at) { return at.powered ? at.speedRpm : std::nullopt; }, 0, 100.0, false},
    Quantity{"lesson.strip.watts", &PlotWishes::watts,
             [](const DemonstrationPoint& at) { return at.powered ? std::optional(at.heat.si()) : std::nullopt; }, 0,
             20.0, true}};

QString figureOf(const text::Phrasebook& book, const Quantity& quantity, const DemonstrationPoint& point) {
  const std::optional<double> value = quantity.read(point);
  if (!value) return QStringLiteral("–");
  const double shown = quantity.wish == &PlotWishes::speed ? std::round(*value / 10.0) * 10.0 : *value;
  return QString::fromStdString(text::numberText(book.locale(), shown, quantity.decimals));
}

QString figuresOf(const HeatModel& model, const text::Phrasebook& book, const Quantity& quantity) {
  QStringList sides;
  for (std::size_t side = 0; side < kSides; ++side) {
    sides << sideLetter(side) + ' ' + figureOf(book, quantity, model.now(side));
  }
  return sides.join(QStringLiteral("   "));
}

// Of both sides, widened to what always shows.
std::pair<double, double> rangeOf(const HeatModel& model, const Quantity& quantity) {
  double least = std::numeric_limits<double>::infinity();
  double most = -least;
  for (std::size_t side = 0; side < kSides; ++side) {
    for (const DemonstrationPoint& point : model.side(side).demonstration.points) {
      const std::optional<double> value = quantity.read(point);
      if (!value) continue;
      least = std::min(least, *value);
      most = std::max(most, *value);
    }
  }
  if (least > most) return {0.0, quantity.leastSpan};
  if (quantity.fromZero) return {0.0, std::max(most * 1.1, quantity.leastSpan)};
  const double wider = std::max(0.0, quantity.leastSpan - (most - least)) / 2.0 + (most - least) * 0.1;
  return {least - wider, most + wider};
}

// The next round step from that on.
double roundStep(double least) {
  const double decade = std::pow(10.0, std::floor(std::log10(std::max(least, 1.0))));
  for (const double step : {1.0, 2.0, 5.0}) {
    if (step * decade >= least) return step * decade;
  }
  return 10.0 * decade;
}

// A and B at the ends of their curves, moved apart where these run together.
std::array<double, kSides> endsOf(const std::array<QPolygonF, kSides>& curves, double line) {
  std::array<double, kSides> ends{};
  for (std::size_t side = 0; side < kSides; ++side) {
    if (!curves[side].isEmpty()) ends[side] = curves[side].last().y();
  }
  const double apart = std::max(0.0, line * 0.85 - std::abs(ends[0] - ends[1])) / 2.0;
  const bool aAbove = ends[0] <= ends[1];
  ends[0] += aAbove ? -apart : apart;
  ends[1] += aAbove ? apart : -apart;
  return ends;
}

}  // namespace

int CurveStrips::count(const PlotWishes& wishes) {
  return static_cast<int>(std::count_if(kQuantities.begin(), kQuantities.end(),
                                        [&](const Quantity& quantity) { return wishes.*quantity.wish; }));
}

int CurveStrips::leastHeight() {
  return static_cast<int>(QFontMetricsF(look::font(look::Type::Caption)).height() + kCurvePx);
}

int CurveStrips::usualHeight() { return leastHeight() + static_cast<int>(kCurvePx / 2); }

int CurveStrips::mostHeight() { return look::scaled(kMostPx); }

double CurveStrips::Strip::y(double value) const {
  return area.bottom() - area.height() * (value - least) / (most - least);
}

void CurveStrips::build(const HeatModel& model, const text::Phrasebook& book, const PlotWishes& wishes,
                        const QRectF& box) {
  m_strips.clear();
  m_minutes = model.run().si() / 60.0;
  const int all = count(wishes);
  double top = box.top();
  for (std::size_t i = 0; i < kQuantities.size(); ++i) {
    if (!(wishes.*kQuantities[i].wish)) continue;
    const QRectF strip(box.left(), top, box.width(), box.height() / all);
    addStrip(model, book, i, strip);
    top = strip.bottom();
  }
}

void CurveStrips::addStrip(const HeatModel& model, const text::Phrasebook& book, std::size_t quantity,
                           const QRectF& box) {
  const double name = QFontMetricsF(look::font(look::Type::Caption)).height() + 2;
  const auto [least, most] = rangeOf(model, kQuantities[quantity]);
  Strip strip{quantity, box.adjusted(0, name, 0, -4), least, most, {}, say(book, kQuantities[quantity].code)};
  for (std::size_t side = 0; side < kSides; ++side) {
    for (const DemonstrationPoint& point : model.side(side).demonstration.points) {
      const std::optional<double> value = kQuantities[quantity].read(point);
      if (!value) break;  // off from here on
      const double x = strip.area.left() + strip.area.width() * point.time.si() / 60.0 / m_minutes;
      strip.curves[side].append(QPointF(x, strip.y(*value)));
    }
  }
  m_strips.push_back(std::move(strip));
}

void CurveStrips::paint(QPainter& painter) const {
  const look::Tokens& tokens = look::tokens();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setFont(look::font(look::Type::Caption));
  const double line = QFontMetricsF(painter.font()).height();
  for (const Strip& strip : m_strips) {
    painter.setPen(QPen(tokens.rule, tokens.hairline));
    painter.drawLine(strip.area.topLeft(), strip.area.topRight());
    painter.setPen(QPen(tokens.line, 1));
    painter.drawLine(strip.area.bottomLeft(), strip.area.bottomRight());
    painter.setPen(tokens.ink2);
    const double step = roundStep((strip.most - strip.least) * line / strip.area.height());
    for (double value = std::ceil(strip.least / step) * step; value <= strip.most; value += step) {
      const QRectF place(0, strip.y(value) - line / 2, strip.area.left() - 5, line);
      painter.drawText(place, Qt::AlignRight | Qt::AlignVCenter, QString::number(std::lround(value)));
    }
    painter.setPen(tokens.ink);
    painter.drawText(QRectF(strip.area.left(), strip.area.top() - line - 2, strip.area.width(), line),
                     Qt::AlignLeft | Qt::AlignVCenter, strip.name);
    QPen pen(tokens.ink2, 2);
    pen.setDashPattern({4, 3});
    painter.setPen(pen);
    painter.drawPolyline(strip.curves[1]);
    painter.setPen(QPen(tokens.ink, 2.5));
    painter.drawPolyline(strip.curves[0]);
    const std::array<double, kSides> ends = endsOf(strip.curves, line);
    for (std::size_t side = 0; side < kSides; ++side) {
      if (strip.curves[side].isEmpty()) continue;
      painter.drawText(QRectF(strip.curves[side].last().x() + 6, ends[side] - line / 2, line * 2, line),
                       Qt::AlignLeft | Qt::AlignVCenter, sideLetter(side));
    }
  }
}

void CurveStrips::paintClock(QPainter& painter, const HeatModel& model, const text::Phrasebook& book) const {
  const look::Tokens& tokens = look::tokens();
  for (const Strip& strip : m_strips) {
    const Quantity& quantity = kQuantities[strip.quantity];
    const double x = strip.area.left() + strip.area.width() * model.clock().si() / 60.0 / m_minutes;
    painter.setPen(QPen(tokens.select, 2));
    painter.drawLine(QLineF(x, strip.area.top(), x, strip.area.bottom()));
    painter.setPen(QPen(tokens.ink, 1.5));
    painter.setBrush(tokens.sheet);
    for (std::size_t side = 0; side < kSides; ++side) {
      const std::optional<double> value = quantity.read(model.now(side));
      if (value) painter.drawEllipse(QPointF(x, strip.y(*value)), kDotPx, kDotPx);
    }
    painter.setFont(look::font(look::Type::CaptionBold));
    painter.setPen(tokens.ink);
    const double line = QFontMetricsF(painter.font()).height();
    painter.drawText(QRectF(strip.area.left(), strip.area.top() - line - 2, strip.area.width(), line),
                     Qt::AlignRight | Qt::AlignVCenter, figuresOf(model, book, quantity));
  }
}

QStringList CurveStrips::figures(const HeatModel& model, const text::Phrasebook& book, const PlotWishes& wishes) {
  QStringList lines;
  for (const Quantity& quantity : kQuantities) {
    if (wishes.*quantity.wish) lines << say(book, quantity.code) + ": " + figuresOf(model, book, quantity);
  }
  return lines;
}

}  // namespace cordreach::app
