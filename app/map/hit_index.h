// SPDX-License-Identifier: GPL-3.0-or-later
// Finds what is near a point or in a rectangle without looking at everything: points in a grid of square cells.
#pragma once

#include <QPointF>
#include <QRectF>
#include <functional>
#include <optional>
#include <vector>

namespace cordreach::app {

// A room is an area: no index finds it.
enum class ItemKind { Outlet, Panel, Load, Machine, Plug, Room };

// A thing of the map's content or layout by its place in its list.
struct ItemRef {
  ItemKind kind = ItemKind::Outlet;
  int index = -1;

  friend bool operator==(const ItemRef&, const ItemRef&) = default;
};

struct HitEntry {
  QPointF at;
  ItemRef item;
};

class HitIndex {
 public:
  void build(std::vector<HitEntry> entries);

  using Wanted = std::function<bool(const ItemRef&)>;
  // The nearest within the radius; of two at the same place the later one, which is drawn on top.
  [[nodiscard]] std::optional<ItemRef> nearest(const QPointF& at, double radius, const Wanted& wanted = {}) const;
  // Everything in the rectangle, in no order.
  void forEachIn(const QRectF& box, const std::function<void(const HitEntry&)>& visit) const;

 private:
  [[nodiscard]] int column(double x) const;
  [[nodiscard]] int row(double y) const;
  template <class Visit>
  void walk(const QRectF& box, Visit&& visit) const;

  std::vector<HitEntry> m_entries;  // sorted by cell
  std::vector<int> m_starts;        // of each cell's entries; one more at the end
  QRectF m_box;
  double m_cell = 64.0;
  int m_columns = 1;
  int m_rows = 1;
};

}  // namespace cordreach::app
