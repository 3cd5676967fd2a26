// SPDX-License-Identifier: GPL-3.0-or-later
// The area that a cord reaches: filled with its usual slack kept, dashed when it is pulled tight.
#include <QPainter>

#include "map/map_paint.h"

namespace cordreach::app {

void paintReachArea(QPainter& painter, const PaintScene& scene) {
  const ReachArea& area = scene.state.area;
  if (area.isEmpty()) return;
  painter.save();
  painter.scale(scene.layout.scale, scene.layout.scale);
  // Outside the building nobody asks; where it ends is known of drawn walls and of a picture only.
  if (!scene.content.walls.empty() || !scene.pictureFrame.isEmpty()) {
    painter.setClipRect(scene.extent.adjusted(-0.2, -0.2, 0.2, 0.2), Qt::IntersectClip);
  }
  if (area.shade.isNull()) {
    paintOutlines(painter, area.withSlack, area.stretched, look::tokens().select, scene.layout.scale);
  } else {
    painter.drawPixmap(area.shadeFrame, scene.state.shade, scene.state.shade.rect());
  }
  painter.restore();
}

}  // namespace cordreach::app
