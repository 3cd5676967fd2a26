// SPDX-License-Identifier: GPL-3.0-or-later
// How a cord lies on the sketch: a loose curve from outlet to machine, cut where one cord ends and the next begins.
#pragma once

#include <QPointF>
#include <QPolygonF>
#include <vector>

namespace cordreach::app {

struct CurveWish {
  QPointF from;                  // the outlet
  QPointF leaving;               // direction in which it leaves the wall, length 1, or zero
  QPointF to;                    // the machine
  double clearance = 0;          // ends that far before `to`
  std::vector<double> lengthsM;  // of the cords, from the outlet on
  unsigned seed = 0;             // swings to one side or the other
};

struct CordCurve {
  std::vector<QPolygonF> parts;  // one a cord
};

[[nodiscard]] CordCurve cordCurve(const CurveWish& wish);

// The point at that fraction of its length, 0 to 1.
[[nodiscard]] QPointF pointAlong(const QPolygonF& line, double fraction);
// Direction of travel there in degrees, clockwise from the right.
[[nodiscard]] double angleAlong(const QPolygonF& line, double fraction);
[[nodiscard]] double lengthOf(const QPolygonF& line);
[[nodiscard]] double distanceTo(const QPolygonF& line, const QPointF& point);

// 3.0 px for 0.823 mm² (18 AWG), by the root of the copper: area on screen is copper.
[[nodiscard]] double cordWidth(double copperMm2);

}  // namespace cordreach::app
