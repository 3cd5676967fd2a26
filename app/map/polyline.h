// SPDX-License-Identifier: GPL-3.0-or-later
// A line with bends while it is being drawn, in metres.
#pragma once

#include <QPainter>
#include <QPolygonF>
#include <cmath>
#include <vector>

#include "geometry/point.h"
#include "look/look.h"

namespace cordreach::app {

[[nodiscard]] inline QPointF toTenths(const QPointF& metres) {
  return {std::round(metres.x() * 10.0) / 10.0, std::round(metres.y() * 10.0) / 10.0};
}

// The nearest point that lies at a right angle from there.
[[nodiscard]] inline QPointF squaredFrom(const QPointF& from, const QPointF& to) {
  const QPointF way = to - from;
  return std::abs(way.x()) > std::abs(way.y()) ? QPointF(to.x(), from.y()) : QPointF(from.x(), to.y());
}

[[nodiscard]] inline std::vector<geometry::Point> toPoints(const QPolygonF& line) {
  std::vector<geometry::Point> points;
  for (const QPointF& point : line) points.push_back({point.x(), point.y()});
  return points;
}

// With a dashed last stretch to where the pointer is.
inline void paintGrowing(QPainter& painter, const QPolygonF& line, const QPointF& pointer, double scale) {
  if (line.isEmpty()) return;
  QPolygonF drawn = line;
  for (QPointF& point : drawn) point *= scale;
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(look::tokens().select, 2.5));
  painter.drawPolyline(drawn);
  painter.setPen(QPen(look::tokens().select, 2.5, Qt::DashLine));
  painter.drawLine(drawn.last(), pointer * scale);
}

}  // namespace cordreach::app
