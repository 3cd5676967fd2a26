// SPDX-License-Identifier: GPL-3.0-or-later
// A cord cut through, at work: conductors, insulation and jacket in the scale of temperature, a coil as the turns of
// its hank, a reel as its layers, with a bar of 5 mm where there is room for it.
#pragma once

#include <QPointF>
#include <QRectF>

#include "planning/lesson.h"

class QPainter;

namespace cordreach::app {

struct CutPlaces {
  QPointF inside;   // in the hottest conductor, for a leader line
  QPointF outside;  // on the surface, at the right
  QPointF barLeft;
  QPointF barRight;  // both null: no bar
};

// Centred in the box. Where the cord is beyond the model it is painted in the hottest colour.
CutPlaces paintCut(QPainter& painter, const QRectF& box, const planning::LessonCase& side,
                   const study::DemonstrationPoint& point);

}  // namespace cordreach::app
