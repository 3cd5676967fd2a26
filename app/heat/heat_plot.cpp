// SPDX-License-Identifier: GPL-3.0-or-later
#include "heat/heat_plot.h"

#include <QAreaSeries>
#include <QFontMetricsF>
#include <QGraphicsLayout>
#include <QPainter>
#include <QPainterPathStroker>
#include <algorithm>
#include <cmath>

#include "heat/plot_parts.h"
#include "look/look.h"
#include "look/temperature_ramp.h"

namespace cordreach::app {

namespace {

using study::Band;
using study::Demonstration;
using study::DemonstrationPoint;
using units::Temperature;

constexpr double kCoolestTopC = 70.0;

// The degrees and the ramp at the left, a limit's degrees at the right; the clock's handle above, the minutes below.
QMargins marginsOf() {
  const QFontMetrics metrics(look::font(look::Type::Caption));
  return {metrics.horizontalAdvance(QStringLiteral("288")) + static_cast<int>(kRampPx) + 12, look::scaled(24) + 4,
          metrics.horizontalAdvance(QStringLiteral("120")) + 12, metrics.height() + 6};
}

}  // namespace

void HeatPlot::Parts::begin(const HeatModel& model, const text::Phrasebook& book, const PlotWishes& wishes,
                            const QSizeF& size) {
  scene.clear();
  curves.clear();
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
  area = QRectF(QPointF(), size).marginsRemoved(QMarginsF(marginsOf()));
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

// Its outline, to be filled: a drawing that can be scaled knows no gradient for a line, and the charts library draws
// one piece by piece, so that each joint is seen.
template <class Read>
void HeatPlot::Parts::addCurve(const Demonstration& demonstration, const CurveLook& how, Read read) {
  QPainterPath line;
  for (const DemonstrationPoint& point : demonstration.points) {
    const std::optional<Temperature> at = read(point);
    if (!at) break;
    const QPointF joint = QPointF(x(point.time.si() / 60.0), y(std::min(*at, Temperature::fromCelsius(hotC))));
    line.elementCount() == 0 ? line.moveTo(joint) : line.lineTo(joint);
    if (at->celsius() > hotC) break;  // out of the chart at its top
  }
  QPainterPathStroker stroker;
  stroker.setWidth(how.widthPx);
  stroker.setCapStyle(how.style == Qt::SolidLine ? Qt::RoundCap : Qt::FlatCap);
  stroker.setJoinStyle(Qt::RoundJoin);
  stroker.setDashPattern(how.style);
  curves.push_back(stroker.createStroke(line).translated(-area.topLeft()));
}

void HeatPlot::Parts::add(QAbstractSeries* series) const {
  chart->addSeries(series);
  for (QAbstractAxis* each : chart->axes()) series->attachAxis(each);
}

void HeatPlot::Parts::addBand(const Demonstration& demonstration) {
  const Temperature top = Temperature::fromCelsius(hotC);
  const auto edge = [&](auto read) {
    QList<QPointF> points;
    for (const DemonstrationPoint& point : demonstration.points) {
      if (point.conductor) points.append({point.time.si() / 60.0, shown(std::min(read(*point.conductor), top))});
    }
    auto* series = new QLineSeries;
    series->replace(points);
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
  for (std::size_t side = kSides; side-- > 0;) {
    const Demonstration& demonstration = model.side(side).demonstration;
    if (wishes.bands) addBand(demonstration);
    if (wishes.plug) {
      addCurve(demonstration, {kLinePx * 0.7, Qt::DotLine},
               [](const DemonstrationPoint& point) { return std::optional(point.plug); });
    }
    if (!wishes.outside) continue;
    addCurve(demonstration, {kLinePx * 0.6, Qt::DashLine}, [](const DemonstrationPoint& point) {
      return point.surface ? std::optional(point.surface->likely) : std::nullopt;
    });
  }
  for (std::size_t side = kSides; side-- > 0;) {
    addCurve(model.side(side).demonstration, {kLinePx, Qt::SolidLine}, [](const DemonstrationPoint& point) {
      return point.conductor ? std::optional(point.conductor->likely) : std::nullopt;
    });
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
  const double minute = QFontMetricsF(parts.small).horizontalAdvance(QStringLiteral("120")) * 1.6;
  parts.axis(Qt::AlignBottom, 0.0, parts.minutes,
             stepFor(parts.minutes, std::clamp(static_cast<int>(parts.area.width() / minute), 2, 8)));
  parts.addCurves(model, wishes);
  parts.addLimits(parts.limits);
  parts.chart->layout()->activate();
  parts.markCurves(model, book, wishes);
  parts.markEvents(model, book);
  parts.markLimits(model, book, wishes);
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
  painter.translate(parts.area.topLeft() - ramp.topLeft());
  for (const QPainterPath& curve : parts.curves) painter.drawPath(curve);
  painter.restore();
  parts.paintDegrees(painter);
  painter.setPen(QPen(look::tokens().ink2, 1.2, Qt::DotLine));
  for (const double x : parts.trips) painter.drawLine(QLineF(x, parts.area.top(), x, parts.area.bottom()));
  for (const Parts::Mark& mark : parts.marks) parts.paintMark(painter, mark);
}

QSize HeatPlot::around() {
  const QMargins margins = marginsOf();
  return {margins.left() + margins.right(), margins.top() + margins.bottom()};
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
