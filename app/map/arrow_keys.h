// SPDX-License-Identifier: GPL-3.0-or-later
// Arrow keys as directions on the plan, and what lies in one.
#pragma once

#include <QPointF>
#include <Qt>
#include <cmath>
#include <optional>

namespace cordreach::app {

[[nodiscard]] inline bool isArrow(int key) {
  return key == Qt::Key_Left || key == Qt::Key_Right || key == Qt::Key_Up || key == Qt::Key_Down;
}

[[nodiscard]] inline QPointF directionOf(int key) {
  if (key == Qt::Key_Left) return {-1, 0};
  if (key == Qt::Key_Right) return {1, 0};
  return key == Qt::Key_Up ? QPointF(0, -1) : QPointF(0, 1);
}

// The cheapest is the next one that way: what lies aside counts double. None: it does not lie there.
[[nodiscard]] inline std::optional<double> costOfWay(const QPointF& way, const QPointF& direction) {
  constexpr double kLeastPx = 2.0;
  const double ahead = QPointF::dotProduct(way, direction);
  const double aside = std::abs(way.x() * direction.y() - way.y() * direction.x());
  if (ahead < kLeastPx || aside > ahead * 2.5) return std::nullopt;
  return ahead + 2 * aside;
}

}  // namespace cordreach::app
