// SPDX-License-Identifier: GPL-3.0-or-later
#include "heat/heat_plot.h"

#include <QAreaSeries>
#include <QChart>
#include <QFontMetricsF>
#include <QGraphicsLayout>
#include <QGraphicsScene>
#include <QLineSeries>
#include <QPainter>
#include <QValueAxis>
#include <algorithm>
#include <cmath>

#include "heat/plot_limits.h"
#include "look/look.h"
#include "look/temperature_ramp.h"
#include "shell/say.h"

namespace cordreach::app {

namespace {

using study::Band;
using study::Demonstration;
using study::DemonstrationPoint;
using units::Temperature;

constexpr double kCoolestTopC = 70.0;
constexpr double kRampPx = 8;
constexpr double kLinePx = 4;

}  // namespace

struct HeatPlot::Parts {
  QGraphicsScene scene;
  QChart* chart = nullptr;
  QRectF area;
  double minutes = 1.0;
  double coolC = 20.0;
  double hotC = 100.0;
  bool fahrenheit = false;
  QFont small;

  [[nodiscard]] double shown(Temperature at) const { return fahrenheit ? at.fahrenheit() : at.celsius(); }
  [[nodiscard]] double x(double minute) const { return area.left() + area.width() * minute / minutes; }
  [[nodiscard]] double y(Temperature at) const {
    return area.bottom() - area.height() * (at.celsius() - coolC) / (hotC - coolC);
  }

  void begin(const HeatModel& model, const text::Phrasebook& book, const PlotWishes& wishes, const QSizeF& size);
  QValueAxis* axis(Qt::Alignment where, double from, double to, double step);
  QBrush rampBrush() const;
  template <class Read>
  QLineSeries* curve(const Demonstration& demonstration, Read read) const;
  void add(QAbstractSeries* series) const;
  void addBand(const Demonstration& demonstration);
  void addCurves(const HeatModel& model, const PlotWishes& wishes);
  void addLimits(const std::vector<PlotLimit>& limits);

  std::vector<PlotLimit> limits;
  struct Mark {
    QPointF at;
    QString words;
    Qt::Alignment side;
    bool dot;
    bool bold;
  };
  std::vector<Mark> marks;
  std::vector<double> trips;  // x of them
  double degreeStep = 10.0;
  void paintDegrees(QPainter& painter) const;
  void markCurves(const HeatModel& model, const text::Phrasebook& book, const PlotWishes& wishes);
  void markEvents(const HeatModel& model, const text::Phrasebook& book);
  void markLimits(const text::Phrasebook& book);
  void paintMark(QPainter& painter, const Mark& mark) const;
};

void HeatPlot::Parts::begin(const HeatModel& model, const text::Phrasebook& book, const PlotWishes& wishes,
                            const QSizeF& size) {
  scene.clear();
  marks.clear();
  trips.clear();
  fahrenheit = book.locale().units == text::UnitSystem::Us;
  minutes = model.run().si() / 60.0;
  const Demonstration& a = model.side(0).demonstration;
  const Demonstration& b = model.side(1).demonstration;
  coolC = std::min(20.0, std::floor(std::min(a.air, b.air).celsius() / 10.0) * 10.0);
  hotC = std::max({hottestC(a, wishes), hottestC(b, wishes), kCoolestTopC});
  limits = limitsOf(model, wishes);
  for (const PlotLimit& limit : limits) hotC = std::max(hotC, limit.at.celsius() + 6.0);
  hotC = std::min(std::ceil(hotC / 10.0) * 10.0, kHottestShownC);
  small = look::font(look::Type::Caption);
  const QFontMetricsF metrics(small);
  const double left = metrics.horizontalAdvance(QStringLiteral("288")) + kRampPx + 12;
  const double right = metrics.horizontalAdvance(QStringLiteral("120")) + 12;
  area = QRectF(left, look::scaled(30), size.width() - left - right,
                size.height() - look::scaled(30) - metrics.height() - 10);
  chart = new QChart;
  scene.addItem(chart);
  chart->legend()->hide();
  chart->setBackgroundVisible(false);
  chart->setMargins({});
  chart->layout()->setContentsMargins(0, 0, 0, 0);
  chart->resize(size);
  chart->setPlotArea(area);
  scene.setSceneRect(QRectF(QPointF(), size));
}

QValueAxis* HeatPlot::Parts::axis(Qt::Alignment where, double from, double to, double step) {
  const look::Tokens& tokens = look::tokens();
  auto* axis = new QValueAxis;
  axis->setRange(from, to);
  axis->setTickType(QValueAxis::TicksDynamic);
  axis->setTickAnchor(0);
  axis->setTickInterval(step);
  axis->setLabelFormat(QStringLiteral("%.0f"));
  axis->setLabelsVisible(where != Qt::AlignLeft);  // these stand left of the ramp
  axis->setLabelsFont(small);
  axis->setLabelsColor(tokens.ink2);
  axis->setLinePen(QPen(tokens.line, 1));
  axis->setGridLinePen(QPen(tokens.rule, tokens.hairline));
  axis->setGridLineVisible(where == Qt::AlignLeft);
  chart->addAxis(axis, where);
  return axis;
}

// In the plane of the plot, so that a curve has everywhere the colour of its height.
QBrush HeatPlot::Parts::rampBrush() const {
  const double perC = area.height() / (hotC - coolC);
  const double coolY = area.height() + (coolC - look::kRampLowC) * perC;
  const double hotY = coolY - (look::kRampHighC - look::kRampLowC) * perC;
  return look::temperatureGradient(QPointF(0, coolY), QPointF(0, hotY), look::tokens().dark);
}

template <class Read>
QLineSeries* HeatPlot::Parts::curve(const Demonstration& demonstration, Read read) const {
  auto* series = new QLineSeries;
  QList<QPointF> points;
  for (const DemonstrationPoint& point : demonstration.points) {
    const std::optional<Temperature> at = read(point);
    if (!at) break;
    const Temperature kept = std::min(*at, Temperature::fromCelsius(hotC));
    points.append({point.time.si() / 60.0, shown(kept)});
    if (*at > kept) break;  // out of the chart at its top
  }
  series->replace(points);
  return series;
}

void HeatPlot::Parts::add(QAbstractSeries* series) const {
  chart->addSeries(series);
  for (QAbstractAxis* each : chart->axes()) series->attachAxis(each);
}

void HeatPlot::Parts::addBand(const Demonstration& demonstration) {
  const Temperature top = Temperature::fromCelsius(hotC);
  const auto edge = [&](auto read) {
    auto* series = new QLineSeries;
    for (const DemonstrationPoint& point : demonstration.points) {
      if (point.conductor) series->append(point.time.si() / 60.0, shown(std::min(read(*point.conductor), top)));
    }
    return series;
  };
  auto* band = new QAreaSeries(edge([](const Band<Temperature>& one) { return one.high; }),
                               edge([](const Band<Temperature>& one) { return one.low; }));
  QColor fill = look::tokens().line;
  band->setPen(QPen(fill, 0.8));
  fill.setAlphaF(0.2F);
  band->setBrush(fill);
  add(band);
}

void HeatPlot::Parts::addCurves(const HeatModel& model, const PlotWishes& wishes) {
  const QBrush ramp = rampBrush();
  for (std::size_t side = kSides; side-- > 0;) {
    const Demonstration& demonstration = model.side(side).demonstration;
    if (wishes.bands) addBand(demonstration);
    if (wishes.plug) {
      QLineSeries* plug =
          curve(demonstration, [](const DemonstrationPoint& point) { return std::optional(point.plug); });
      plug->setPen(QPen(ramp, kLinePx * 0.7, Qt::DotLine, Qt::FlatCap));
      add(plug);
    }
    if (wishes.outside) {
      QLineSeries* outside = curve(demonstration, [](const DemonstrationPoint& point) {
        return point.surface ? std::optional(point.surface->likely) : std::nullopt;
      });
      outside->setPen(QPen(ramp, kLinePx * 0.6, Qt::DashLine, Qt::FlatCap));
      add(outside);
    }
  }
  for (std::size_t side = kSides; side-- > 0;) {
    QLineSeries* inside = curve(model.side(side).demonstration, [](const DemonstrationPoint& point) {
      return point.conductor ? std::optional(point.conductor->likely) : std::nullopt;
    });
    inside->setPen(QPen(ramp, kLinePx, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    add(inside);
  }
}

void HeatPlot::Parts::addLimits(const std::vector<PlotLimit>& all) {
  for (const PlotLimit& limit : all) {
    if (limit.at.celsius() > hotC) continue;
    auto* line = new QLineSeries;
    line->append(0.0, shown(limit.at));
    line->append(minutes, shown(limit.at));
    QPen pen(look::tokens().ink, 1.4);
    if (!limit.solid) pen.setDashPattern({6, 4});
    line->setPen(pen);
    add(line);
  }
}

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

void HeatPlot::Parts::markLimits(const text::Phrasebook& book) {
  for (const PlotLimit& limit : limits) {
    if (limit.at.celsius() > hotC) continue;
    marks.push_back({{area.right() - 6, y(limit.at) - 2},
                     say(book, limit.code, {{"source_short", std::string()}}),
                     Qt::AlignBottom | Qt::AlignRight,
                     false,
                     false});
    marks.push_back({{area.right() + 6, y(limit.at)},
                     QString::number(std::lround(shown(limit.at))),
                     Qt::AlignVCenter,
                     false,
                     true});
  }
}

void HeatPlot::Parts::paintMark(QPainter& painter, const Mark& mark) const {
  const look::Tokens& tokens = look::tokens();
  if (mark.dot) {
    painter.setPen(Qt::NoPen);
    painter.setBrush(tokens.ink);
    painter.drawEllipse(mark.at, 4, 4);
  }
  painter.setFont(mark.bold ? look::font(look::Type::CaptionBold) : small);
  const QFontMetricsF metrics(painter.font());
  QRectF box(mark.at, metrics.size(Qt::TextSingleLine, mark.words));
  if (mark.side & Qt::AlignBottom) box.translate(0, -box.height() - (mark.dot ? 5 : 0));
  if (mark.side & Qt::AlignVCenter) box.translate(0, -box.height() / 2);
  if (mark.side & Qt::AlignRight) box.translate(-box.width(), 0);
  if (mark.dot) box.translate(-box.width() - 2, 0);
  if (box.left() < area.left() + 2) box.moveLeft(mark.at.x() + 8);
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

HeatPlot::HeatPlot() : m_parts(std::make_unique<Parts>()) {}
HeatPlot::~HeatPlot() = default;

void HeatPlot::build(const HeatModel& model, const text::Phrasebook& book, const PlotWishes& wishes,
                     const QSizeF& size) {
  Parts& parts = *m_parts;
  parts.begin(model, book, wishes, size);
  const Temperature cool = Temperature::fromCelsius(parts.coolC);
  const Temperature hot = Temperature::fromCelsius(parts.hotC);
  const double line = QFontMetricsF(parts.small).height();
  const int mostTicks = std::max(2, static_cast<int>(parts.area.height() / (line * 1.4)));
  const double from = parts.shown(cool);
  const double to = parts.shown(hot);
  parts.degreeStep = std::max(10.0, stepFor(to - from, mostTicks));
  parts.axis(Qt::AlignLeft, from, to, parts.degreeStep);
  parts.axis(Qt::AlignBottom, 0.0, parts.minutes, stepFor(parts.minutes, 8));
  parts.addCurves(model, wishes);
  parts.addLimits(parts.limits);
  parts.chart->layout()->activate();
  parts.markLimits(book);
  parts.markCurves(model, book, wishes);
  parts.markEvents(model, book);
}

void HeatPlot::paint(QPainter& painter) const {
  const Parts& parts = *m_parts;
  if (parts.chart == nullptr) return;
  painter.setRenderHint(QPainter::Antialiasing);
  m_parts->scene.render(&painter, parts.scene.sceneRect(), parts.scene.sceneRect());
  const QRectF ramp(parts.area.left() - kRampPx, parts.area.top(), kRampPx, parts.area.height());
  painter.save();
  painter.translate(ramp.topLeft());
  painter.setPen(Qt::NoPen);
  painter.setBrush(parts.rampBrush());
  painter.drawRoundedRect(QRectF(QPointF(), ramp.size()), 2, 2);
  painter.restore();
  parts.paintDegrees(painter);
  painter.setPen(QPen(look::tokens().ink2, 1.2, Qt::DotLine));
  for (const double x : parts.trips) painter.drawLine(QLineF(x, parts.area.top(), x, parts.area.bottom()));
  for (const Parts::Mark& mark : parts.marks) parts.paintMark(painter, mark);
}

QRectF HeatPlot::area() const { return m_parts->area; }
double HeatPlot::xOf(units::Duration time) const { return m_parts->x(time.si() / 60.0); }
double HeatPlot::yOf(units::Temperature temperature) const {
  return std::max(m_parts->y(temperature), m_parts->area.top());
}
units::Duration HeatPlot::timeAt(double x) const {
  const QRectF& area = m_parts->area;
  return (x - area.left()) / area.width() * m_parts->minutes * units::minute;
}

}  // namespace cordreach::app
