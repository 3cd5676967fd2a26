// SPDX-License-Identifier: GPL-3.0-or-later
#include "map/label_placer.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace cordreach::app {
namespace {

constexpr double kCell = 64.0;

template <class Visit>
void forEachCell(const QRectF& box, Visit&& visit) {
  const auto last = [](double v) { return static_cast<long long>(std::floor(v / kCell)); };
  for (long long y = last(box.top()); y <= last(box.bottom()); ++y) {
    for (long long x = last(box.left()); x <= last(box.right()); ++x) visit((y << 24) + x);
  }
}

// Right, left, above, below, then the corners.
std::array<QRectF, 8> positionsOf(const LabelWish& wish) {
  const double w = wish.size.width();
  const double h = wish.size.height();
  const double x = wish.anchor.x();
  const double y = wish.anchor.y();
  const double g = wish.gap;
  const double d = g * 0.6;
  return {QRectF(x + g, y - h / 2, w, h), QRectF(x - g - w, y - h / 2, w, h), QRectF(x - w / 2, y - g - h, w, h),
          QRectF(x - w / 2, y + g, w, h), QRectF(x + d, y - d - h, w, h),     QRectF(x - d - w, y - d - h, w, h),
          QRectF(x + d, y + d, w, h),     QRectF(x - d - w, y + d, w, h)};
}

}  // namespace

void LabelPlacer::add(Grid& grid, const QRectF& box) {
  forEachCell(box, [&](long long cell) { grid[cell].push_back(box); });
}

void LabelPlacer::block(const QRectF& box) { add(m_blocked, box); }

void LabelPlacer::discourage(const QRectF& box) { add(m_discouraged, box); }

double LabelPlacer::covered(const Grid& grid, const QRectF& box) {
  double area = 0;
  forEachCell(box, [&](long long cell) {
    const auto found = grid.find(cell);
    if (found == grid.end()) return;
    for (const QRectF& other : found->second) {
      const QRectF common = box.intersected(other);
      area += common.width() * common.height();
    }
  });
  return area;
}

std::optional<QRectF> LabelPlacer::place(const LabelWish& wish) {
  const auto positions = positionsOf(wish);
  std::optional<QRectF> best;
  double bestCost = 1e18;
  const auto consider = [&](const QRectF& box, double turn) {
    const QRectF inside = m_bounds.isEmpty() ? box : box.intersected(m_bounds);
    const double outside = box.width() * box.height() - inside.width() * inside.height();
    const double hard = covered(m_blocked, box) + outside * 4;
    if (hard > 0.5 && wish.insist == Insist::No) return;
    const double cost = hard * 20 + covered(m_discouraged, box) + turn;
    if (cost >= bestCost) return;
    bestCost = cost;
    best = box;
  };
  if (wish.centred) {
    consider(QRectF(wish.anchor - QPointF(wish.size.width() / 2, wish.size.height() / 2), wish.size), 0);
  } else {
    for (std::size_t i = 0; i < positions.size(); ++i) consider(positions[i], static_cast<double>(i) * 3.0);
  }
  if (best) block(*best);
  return best;
}

}  // namespace cordreach::app
