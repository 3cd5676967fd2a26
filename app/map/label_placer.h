// SPDX-License-Identifier: GPL-3.0-or-later
// Finds room for labels: each is tried at eight positions round its thing and left out when none is free. Those asked
// for first have the first choice; what must be seen gets its least bad position.
#pragma once

#include <QPointF>
#include <QRectF>
#include <QSizeF>
#include <optional>
#include <unordered_map>
#include <vector>

namespace cordreach::app {

enum class Insist { No, Yes };

struct LabelWish {
  QPointF anchor;
  QSizeF size;
  double gap = 0;  // from the anchor to the label's nearest edge
  Insist insist = Insist::No;
  bool centred = false;  // on the anchor or not at all
};

class LabelPlacer {
 public:
  // Nothing may cover this.
  void block(const QRectF& box);
  // Nothing may stand outside this.
  void confine(const QRectF& box) { m_bounds = box; }
  // Better not covered.
  void discourage(const QRectF& box);
  [[nodiscard]] std::optional<QRectF> place(const LabelWish& wish);

 private:
  using Grid = std::unordered_map<long long, std::vector<QRectF>>;
  static void add(Grid& grid, const QRectF& box);
  [[nodiscard]] static double covered(const Grid& grid, const QRectF& box);

  QRectF m_bounds;  // empty: anywhere
  Grid m_blocked;
  Grid m_discouraged;
};

}  // namespace cordreach::app
