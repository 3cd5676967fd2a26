// SPDX-License-Identifier: GPL-3.0-or-later
#include "map/hit_index.h"

#include <algorithm>
#include <cmath>

namespace cordreach::app {
namespace {

constexpr double kSmallestCell = 48.0;
constexpr double kMostCells = 128.0;  // along a side

}  // namespace

void HitIndex::build(std::vector<HitEntry> entries) {
  m_box = {};
  if (!entries.empty()) {
    double left = entries[0].at.x(), right = left, top = entries[0].at.y(), bottom = top;
    for (const HitEntry& entry : entries) {
      left = std::min(left, entry.at.x());
      right = std::max(right, entry.at.x());
      top = std::min(top, entry.at.y());
      bottom = std::max(bottom, entry.at.y());
    }
    m_box = QRectF(left, top, right - left, bottom - top);
  }
  m_cell = std::max(kSmallestCell, std::max(m_box.width(), m_box.height()) / kMostCells);
  m_columns = static_cast<int>(m_box.width() / m_cell) + 1;
  m_rows = static_cast<int>(m_box.height() / m_cell) + 1;
  const auto cellOf = [this](const HitEntry& entry) { return row(entry.at.y()) * m_columns + column(entry.at.x()); };
  std::stable_sort(entries.begin(), entries.end(),
                   [&](const HitEntry& a, const HitEntry& b) { return cellOf(a) < cellOf(b); });
  m_starts.assign(static_cast<std::size_t>(m_columns) * static_cast<std::size_t>(m_rows) + 1, 0);
  for (const HitEntry& entry : entries) ++m_starts[static_cast<std::size_t>(cellOf(entry)) + 1];
  for (std::size_t i = 1; i < m_starts.size(); ++i) m_starts[i] += m_starts[i - 1];
  m_entries = std::move(entries);
}

int HitIndex::column(double x) const {
  return static_cast<int>(std::clamp((x - m_box.left()) / m_cell, 0.0, static_cast<double>(m_columns - 1)));
}

int HitIndex::row(double y) const {
  return static_cast<int>(std::clamp((y - m_box.top()) / m_cell, 0.0, static_cast<double>(m_rows - 1)));
}

template <class Visit>
void HitIndex::walk(const QRectF& box, Visit&& visit) const {
  if (m_entries.empty()) return;
  const int lastColumn = column(box.right());
  const int lastRow = row(box.bottom());
  for (int r = row(box.top()); r <= lastRow; ++r) {
    for (int c = column(box.left()); c <= lastColumn; ++c) {
      const auto cell = static_cast<std::size_t>(r) * static_cast<std::size_t>(m_columns) + static_cast<std::size_t>(c);
      for (int i = m_starts[cell]; i < m_starts[cell + 1]; ++i) visit(m_entries[static_cast<std::size_t>(i)]);
    }
  }
}

std::optional<ItemRef> HitIndex::nearest(const QPointF& at, double radius, const Wanted& wanted) const {
  std::optional<ItemRef> best;
  double bestDistance = radius;
  walk(QRectF(at.x() - radius, at.y() - radius, 2 * radius, 2 * radius), [&](const HitEntry& entry) {
    const QPointF away = entry.at - at;
    const double distance = std::hypot(away.x(), away.y());
    if (distance > bestDistance || (wanted && !wanted(entry.item))) return;
    best = entry.item;
    bestDistance = distance;
  });
  return best;
}

void HitIndex::forEachIn(const QRectF& box, const std::function<void(const HitEntry&)>& visit) const {
  walk(box, [&](const HitEntry& entry) {
    if (box.contains(entry.at)) visit(entry);
  });
}

}  // namespace cordreach::app
