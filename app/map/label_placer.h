// SPDX-License-Identifier: GPL-3.0-or-later
// Finds room for labels: each is tried at eight positions round its thing, then farther out and shortened, and left out
// when none is free. Those asked for first have the first choice; what must be seen is looked for farther away still.
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
  bool centred = false;   // on the anchor or not at all
  QSizeF shorter{};       // of the label with fewer words; empty: it has none
  double awayCost = 150;  // as bad as that many px² of walls and cords behind the words
  double secondRing = 0;  // gap of the second ring of positions; 0: none
};

struct PlacedLabel {
  QRectF box;
  bool isShort = false;
  bool isAway = false;  // so far that a line should lead back to its thing
};

class LabelPlacer {
 public:
  // Nothing may cover this.
  void block(const QRectF& box);
  // Nothing may stand outside this.
  void confine(const QRectF& box) { m_bounds = box; }
  // Better not covered.
  void discourage(const QRectF& box);
  [[nodiscard]] std::optional<PlacedLabel> place(const LabelWish& wish);
  // Whether nothing blocked lies there.
  [[nodiscard]] bool isFree(const QRectF& box) const;

 private:
  using Grid = std::unordered_map<long long, std::vector<QRectF>>;
  struct Choice {
    PlacedLabel label;
    double cost = 1e18;
    bool isFree = false;
  };
  static void add(Grid& grid, const QRectF& box);
  [[nodiscard]] static double covered(const Grid& grid, const QRectF& box);
  [[nodiscard]] double outside(const QRectF& box) const;
  void consider(Choice& best, const PlacedLabel& label, double detour) const;
  void tryRing(Choice& best, const LabelWish& wish, double gap, bool isShort) const;
  void searchFarther(Choice& best, const LabelWish& wish) const;

  QRectF m_bounds;  // empty: anywhere
  Grid m_blocked;
  Grid m_discouraged;
};

}  // namespace cordreach::app
