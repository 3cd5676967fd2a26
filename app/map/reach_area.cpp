// SPDX-License-Identifier: GPL-3.0-or-later
#include "map/reach_area.h"

#include <QPainter>
#include <algorithm>

namespace cordreach::app {

namespace {

constexpr float kFill = 0.26F;
constexpr float kFillTight = 0.10F;
constexpr int kMostCorners = 12000;           // that are filled anew: a floor of a hundred outlets has some 5,000
constexpr double kMostPixels = 2400.0;        // along the longer side of a shade
constexpr double kMostPixelsPerMetre = 20.0;  // a cell of the walk is 0.2 m or more

QPainterPath pathOf(const std::vector<geometry::Outline>& outlines) {
  QPainterPath path;
  path.setFillRule(Qt::WindingFill);
  for (const geometry::Outline& outline : outlines) {
    QPolygonF polygon;
    for (const geometry::Point& point : outline) polygon << QPointF(point.xM, point.yM);
    path.addPolygon(polygon);
    path.closeSubpath();
  }
  return path;
}

void fillArea(QPainter& painter, const QPainterPath& path, QColor fill, float opacity, const QPen& edge) {
  fill.setAlphaF(opacity);
  painter.setPen(edge);
  painter.setBrush(fill);
  painter.drawPath(path);
}

void shadeInstead(ReachArea& area) {
  const QRectF frame = area.stretched.boundingRect().adjusted(-0.5, -0.5, 0.5, 0.5);
  const double perMetre = std::min(kMostPixelsPerMetre, kMostPixels / std::max(frame.width(), frame.height()));
  QImage shade((frame.size() * perMetre).toSize().expandedTo({1, 1}), QImage::Format_ARGB32_Premultiplied);
  shade.fill(Qt::transparent);
  QPainter painter(&shade);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.scale(shade.width() / frame.width(), shade.height() / frame.height());
  painter.translate(-frame.topLeft());
  paintOutlines(painter, area.withSlack, area.stretched, Qt::black, perMetre);
  painter.end();
  area = {{}, {}, shade.convertToFormat(QImage::Format_Alpha8), frame};
}

}  // namespace

ReachArea areaOf(const planning::Reach& reach) {
  ReachArea area{pathOf(reach.withSlack), pathOf(reach.stretched), {}, {}};
  if (area.withSlack.elementCount() + area.stretched.elementCount() > kMostCorners) shadeInstead(area);
  return area;
}

QPixmap shadeIn(const QColor& colour, const ReachArea& area) {
  if (area.shade.isNull()) return {};
  QImage tinted(area.shade.size(), QImage::Format_ARGB32_Premultiplied);
  tinted.fill(colour);
  QPainter painter(&tinted);
  painter.setCompositionMode(QPainter::CompositionMode_DestinationIn);
  painter.drawImage(0, 0, area.shade);
  painter.end();
  return QPixmap::fromImage(tinted);
}

void paintOutlines(QPainter& painter, const QPainterPath& withSlack, const QPainterPath& stretched,
                   const QColor& colour, double pixelsPerMetre) {
  const QPen edge(colour, 1.5 / pixelsPerMetre);
  QPen dashed = edge;
  dashed.setDashPattern({5, 4});
  fillArea(painter, stretched, colour, kFillTight, dashed);
  fillArea(painter, withSlack, colour, kFill, edge);
}

}  // namespace cordreach::app
