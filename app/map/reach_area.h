// SPDX-License-Identifier: GPL-3.0-or-later
// The area that a cord reaches, as it is painted. Small outlines are filled anew each time, and stay sharp; those of a
// whole floor of outlets have too many corners for that, so they are drawn once, off the window's thread, as a shade.
#pragma once

#include <QImage>
#include <QPainterPath>
#include <QPixmap>
#include <QRectF>

#include "planning/reach.h"

class QPainter;

namespace cordreach::app {

struct ReachArea {
  QPainterPath withSlack{};  // in metres; empty where there is a shade
  QPainterPath stretched{};
  QImage shade{};       // how strongly the colour covers, 8 bits of alpha
  QRectF shadeFrame{};  // in metres

  [[nodiscard]] bool isEmpty() const { return stretched.isEmpty() && shade.isNull(); }
};

[[nodiscard]] ReachArea areaOf(const planning::Reach& reach);

// Null without a shade.
[[nodiscard]] QPixmap shadeIn(const QColor& colour, const ReachArea& area);

// At a scale in which one metre is `pixelsPerMetre`; the edge of the tight area is dashed.
void paintOutlines(QPainter& painter, const QPainterPath& withSlack, const QPainterPath& stretched,
                   const QColor& colour, double pixelsPerMetre);

}  // namespace cordreach::app
