// SPDX-License-Identifier: GPL-3.0-or-later
// The area that a cord reaches: filled with its usual slack kept, dashed when it is pulled tight.
#include <QPainter>

#include "map/map_paint.h"

namespace cordreach::app {
namespace {

constexpr float kFill = 0.26F;
constexpr float kFillTight = 0.10F;

void fillArea(QPainter& painter, const QPainterPath& path, float opacity, const QPen& edge) {
  QColor fill = look::tokens().select;
  fill.setAlphaF(opacity);
  painter.setPen(edge);
  painter.setBrush(fill);
  painter.drawPath(path);
}

}  // namespace

void paintReachArea(QPainter& painter, const PaintScene& scene) {
  const ReachArea& area = scene.state.area;
  if (area.stretched.isEmpty()) return;
  const QPen edge(look::tokens().select, 1.5 / scene.layout.scale);
  QPen dashed = edge;
  dashed.setDashPattern({5, 4});
  painter.save();
  painter.scale(scene.layout.scale, scene.layout.scale);
  // Outside the building nobody asks; where it ends is known of drawn walls and of a picture only.
  if (!scene.content.walls.empty() || !scene.pictureFrame.isEmpty()) {
    painter.setClipRect(scene.extent.adjusted(-0.2, -0.2, 0.2, 0.2), Qt::IntersectClip);
  }
  fillArea(painter, area.stretched, kFillTight, dashed);
  fillArea(painter, area.withSlack, kFill, edge);
  painter.restore();
}

}  // namespace cordreach::app
