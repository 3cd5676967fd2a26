// SPDX-License-Identifier: GPL-3.0-or-later
#include "map/cord_curve.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace cordreach::app {
namespace {

constexpr int kSteps = 56;
constexpr double kPi = 3.14159265358979323846;

double length(const QPointF& v) { return std::hypot(v.x(), v.y()); }

QPointF bezier(const QPointF& a, const QPointF& b, const QPointF& c, const QPointF& d, double t) {
  const double s = 1 - t;
  return a * (s * s * s) + b * (3 * s * s * t) + c * (3 * s * t * t) + d * (t * t * t);
}

// The whole way: out of the wall, then in a wave to the machine.
QPolygonF wholeLine(const CurveWish& wish) {
  const QPointF across = wish.to - wish.from;
  const double distance = length(across);
  QPolygonF line;
  if (distance < 1.0) return line << wish.from << wish.to;
  const QPointF along = across / distance;
  const QPointF side(-along.y(), along.x());
  const double sign = wish.seed % 2 == 0 ? 1.0 : -1.0;
  const double swing = std::clamp(0.11 * distance, 3.0, 30.0) * sign;
  const double pull = std::clamp(0.35 * distance, 10.0, 90.0);
  const QPointF first = wish.leaving.isNull() ? wish.from + along * pull : wish.from + wish.leaving * pull;
  const QPointF end = distance > 2 * wish.clearance ? wish.to - along * wish.clearance : wish.to;
  const QPointF second = end - along * pull + side * swing;
  for (int i = 0; i <= kSteps; ++i) {
    const double t = static_cast<double>(i) / kSteps;
    const double wave = swing * std::sin(2 * kPi * t) * std::sin(kPi * t);
    line << bezier(wish.from, first, second, end, t) + side * wave;
  }
  return line;
}

}  // namespace

double lengthOf(const QPolygonF& line) {
  double sum = 0;
  for (int i = 1; i < line.size(); ++i) sum += length(line[i] - line[i - 1]);
  return sum;
}

CordCurve cordCurve(const CurveWish& wish) {
  const QPolygonF whole = wholeLine(wish);
  const double total = std::accumulate(wish.lengthsM.begin(), wish.lengthsM.end(), 0.0);
  CordCurve curve;
  if (wish.lengthsM.empty() || total <= 0) return curve;
  const double px = lengthOf(whole);
  double covered = 0;
  double done = 0;
  QPolygonF part;
  part << whole.first();
  std::size_t which = 0;
  const auto partEnd = [&](std::size_t i) { return px * (done + wish.lengthsM[i]) / total; };
  for (int i = 1; i < whole.size(); ++i) {
    const double step = length(whole[i] - whole[i - 1]);
    while (which + 1 < wish.lengthsM.size() && step > 0 && covered + step >= partEnd(which)) {
      const QPointF cut = whole[i - 1] + (whole[i] - whole[i - 1]) * ((partEnd(which) - covered) / step);
      part << cut;
      curve.parts.push_back(part);
      part = QPolygonF() << cut;
      done += wish.lengthsM[which++];
    }
    part << whole[i];
    covered += step;
  }
  curve.parts.push_back(part);
  while (curve.parts.size() < wish.lengthsM.size()) curve.parts.push_back(QPolygonF() << whole.last() << whole.last());
  return curve;
}

QPointF pointAlong(const QPolygonF& line, double fraction) {
  if (line.isEmpty()) return {};
  double left = lengthOf(line) * std::clamp(fraction, 0.0, 1.0);
  for (int i = 1; i < line.size(); ++i) {
    const double step = length(line[i] - line[i - 1]);
    if (step >= left && step > 0) return line[i - 1] + (line[i] - line[i - 1]) * (left / step);
    left -= step;
  }
  return line.last();
}

double angleAlong(const QPolygonF& line, double fraction) {
  const QPointF way = pointAlong(line, fraction + 0.03) - pointAlong(line, fraction - 0.03);
  return std::atan2(way.y(), way.x()) * 180.0 / kPi;
}

double distanceTo(const QPolygonF& line, const QPointF& point) {
  double best = 1e9;
  for (int i = 1; i < line.size(); ++i) {
    const QPointF along = line[i] - line[i - 1];
    const double length2 = QPointF::dotProduct(along, along);
    const double t =
        length2 > 0 ? std::clamp(QPointF::dotProduct(point - line[i - 1], along) / length2, 0.0, 1.0) : 0.0;
    best = std::min(best, length(point - (line[i - 1] + along * t)));
  }
  return best;
}

double cordWidth(double copperMm2) { return 3.0 * std::sqrt(std::max(copperMm2, 0.05) / 0.823); }

}  // namespace cordreach::app
