// SPDX-License-Identifier: GPL-3.0-or-later
// Drawn in a unit square and scaled, so that every size has the same proportions.
#include "look/severity_mark.h"

#include <QPainter>
#include <QPolygonF>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "look/tokens.h"

namespace cordreach::look {

namespace {

using rules::Severity;

QPainterPath closed(const QPolygonF& polygon) {
  QPainterPath path;
  path.addPolygon(polygon);
  path.closeSubpath();
  return path;
}

QPainterPath octagon() {
  QPolygonF corners;
  for (int i = 0; i < 8; ++i) {
    const double angle = (i + 0.5) * std::numbers::pi / 4;
    corners << QPointF(0.5 + 0.47 * std::cos(angle), 0.5 + 0.47 * std::sin(angle));
  }
  return closed(corners);
}

void paintExclamation(QPainter& painter, double middle, double top, double bottom) {
  QPen pen(painter.brush().color(), 0.105, Qt::SolidLine, Qt::RoundCap);
  painter.setPen(pen);
  const double dot = bottom - 0.045;
  painter.drawLine(QPointF(middle, top), QPointF(middle, dot - 0.19));
  painter.setPen(Qt::NoPen);
  painter.drawEllipse(QPointF(middle, dot), 0.062, 0.062);
}

void paintGlyph(QPainter& painter, Severity severity) {
  const QColor color = painter.brush().color();
  switch (severity) {
    case Severity::Danger:
      paintExclamation(painter, 0.5, 0.26, 0.76);
      return;
    case Severity::Warning:
      paintExclamation(painter, 0.5, 0.40, 0.85);
      return;
    case Severity::Caution:
      paintExclamation(painter, 0.5, 0.27, 0.75);
      return;
    case Severity::Notice:
      painter.setPen(QPen(color, 0.1, Qt::SolidLine, Qt::RoundCap));
      painter.drawLine(QPointF(0.5, 0.47), QPointF(0.5, 0.72));
      painter.setPen(Qt::NoPen);
      painter.drawEllipse(QPointF(0.5, 0.29), 0.062, 0.062);
      return;
    case Severity::Ok:
      break;
  }
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(color, 0.09, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  painter.drawPolyline(QPolygonF{{0.30, 0.52}, {0.44, 0.66}, {0.71, 0.37}});
}

}  // namespace

QPainterPath severityShape(Severity severity) {
  QPainterPath path;
  switch (severity) {
    case Severity::Danger:
      return octagon();
    case Severity::Warning:
      return closed({{0.5, 0.07}, {0.96, 0.92}, {0.04, 0.92}});
    case Severity::Caution:
      return closed({{0.5, 0.03}, {0.97, 0.5}, {0.5, 0.97}, {0.03, 0.5}});
    case Severity::Notice:
      path.addRoundedRect(QRectF(0.08, 0.08, 0.84, 0.84), 0.15, 0.15);
      return path;
    case Severity::Ok:
      break;
  }
  path.addEllipse(QRectF(0.06, 0.06, 0.88, 0.88));
  return path;
}

void paintSeverityMark(QPainter& painter, const QRectF& box, Severity severity, bool darkGround) {
  const SeverityColors colors = severityColors(severity, darkGround);
  const double side = std::min(box.width(), box.height());
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.translate(box.center() - QPointF(side / 2, side / 2));
  painter.scale(side, side);
  painter.setBrush(colors.fill);
  QPen outline(colors.outlined ? colors.onFill : colors.fill, std::clamp(1.6 / side, 0.042, 0.08));
  outline.setJoinStyle(Qt::RoundJoin);
  painter.setPen(outline);
  painter.drawPath(severityShape(severity));
  painter.setBrush(colors.onFill);
  paintGlyph(painter, severity);
  painter.restore();
}

void paintSignalPlate(QPainter& painter, const QRectF& box, Severity severity, const QString& word, bool darkGround) {
  const SeverityColors colors = severityColors(severity, darkGround);
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setBrush(colors.fill);
  painter.setPen(QPen(colors.outlined ? colors.onFill : colors.fill, 1));
  painter.drawRoundedRect(box.adjusted(0.5, 0.5, -0.5, -0.5), 4, 4);
  painter.setPen(colors.onFill);
  painter.drawText(box, Qt::AlignCenter, word);
  painter.restore();
}

}  // namespace cordreach::look
