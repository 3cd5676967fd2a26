// SPDX-License-Identifier: GPL-3.0-or-later
#include "map/label_placer.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace cordreach::app {
namespace {

constexpr double kCell = 64.0;
constexpr double kTouching = 0.5;  // px² that still count as free
constexpr int kFartherRings = 12;
constexpr int kFartherTurns = 16;
constexpr double kFartherStep = 16;
constexpr double kPi = 3.14159265358979323846;

template <class Visit>
void forEachCell(const QRectF& box, Visit&& visit) {
  const auto last = [](double v) { return static_cast<long long>(std::floor(v / kCell)); };
  for (long long y = last(box.top()); y <= last(box.bottom()); ++y) {
    for (long long x = last(box.left()); x <= last(box.right()); ++x) visit((y << 24) + x);
  }
}

// Right, left, above, below, then the corners.
std::array<QRectF, 8> ringOf(const QPointF& anchor, const QSizeF& size, double g) {
  const double w = size.width();
  const double h = size.height();
  const double x = anchor.x();
  const double y = anchor.y();
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

double LabelPlacer::outside(const QRectF& box) const {
  if (m_bounds.isEmpty()) return 0;
  const QRectF inside = box.intersected(m_bounds);
  return box.width() * box.height() - inside.width() * inside.height();
}

bool LabelPlacer::isFree(const QRectF& box) const { return covered(m_blocked, box) + outside(box) < kTouching; }

void LabelPlacer::consider(Choice& best, const PlacedLabel& label, double detour) const {
  const double hard = covered(m_blocked, label.box) + outside(label.box) * 4;
  const double cost = hard * 20 + covered(m_discouraged, label.box) + detour;
  const bool isFree = hard < kTouching;
  if (best.isFree && !isFree) return;
  if (best.isFree == isFree && cost >= best.cost) return;
  best = {label, cost, isFree};
}

void LabelPlacer::tryRing(Choice& best, const LabelWish& wish, double gap, bool isShort) const {
  const auto ring = ringOf(wish.anchor, isShort ? wish.shorter : wish.size, gap);
  const bool isAway = gap > wish.gap;
  const double detour = isAway ? wish.awayCost : 0;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    consider(best, {ring[i], isShort, isAway}, detour + static_cast<double>(i) * 3);
  }
}

// Round the thing in ever wider circles, until somewhere is free.
void LabelPlacer::searchFarther(Choice& best, const LabelWish& wish) const {
  for (int ring = 1; ring <= kFartherRings && !best.isFree; ++ring) {
    const double away = std::max(wish.secondRing, wish.gap) + ring * kFartherStep;
    for (int turn = 0; turn < kFartherTurns; ++turn) {
      const double angle = 2 * kPi * turn / kFartherTurns;
      const QPointF middle = wish.anchor + QPointF(std::cos(angle) * (away + wish.size.width() / 2),
                                                   std::sin(angle) * (away + wish.size.height() / 2));
      const QRectF box(middle - QPointF(wish.size.width() / 2, wish.size.height() / 2), wish.size);
      consider(best, {box, false, true}, ring * 10);
    }
  }
}

std::optional<PlacedLabel> LabelPlacer::place(const LabelWish& wish) {
  Choice best;
  if (wish.centred) {
    const QPointF half(wish.size.width() / 2, wish.size.height() / 2);
    consider(best, {QRectF(wish.anchor - half, wish.size)}, 0);
  } else {
    const bool hasShort = !wish.shorter.isEmpty();
    tryRing(best, wish, wish.gap, false);
    const bool isPoor = !best.isFree || best.cost > wish.awayCost;
    if (isPoor && wish.secondRing > 0) tryRing(best, wish, wish.secondRing, false);
    if (!best.isFree && hasShort) tryRing(best, wish, wish.gap, true);
    if (!best.isFree && hasShort && wish.secondRing > 0) tryRing(best, wish, wish.secondRing, true);
    if (!best.isFree && wish.insist == Insist::Yes) searchFarther(best, wish);
  }
  if (!best.isFree && wish.insist == Insist::No) return std::nullopt;
  block(best.label.box);
  return best.label;
}

}  // namespace cordreach::app
