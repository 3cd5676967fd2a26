// SPDX-License-Identifier: GPL-3.0-or-later
// Where everything lies at one scale, in pixels from the plan's origin: panning moves all of it, zooming makes it anew.
#pragma once

#include <QPointF>
#include <QPolygonF>
#include <optional>
#include <vector>

#include "map/cord_curve.h"
#include "map/hit_index.h"
#include "map/map_content.h"

namespace cordreach::app {

inline constexpr double kMachineRadius = 21.0;  // px at text size 100 %

// A plug that can be held.
struct MapPlug {
  HeldPlug plug;
  QPointF at;
  double angleDegrees = 0;
  int cord = -1;     // among the content's cords; -1: hangs free
  int machine = -1;  // among the content's machines
};

struct LaidCord {
  CordCurve curve;
  double widestPx = 0;
  std::optional<QPointF> stubEnd{};  // where it leaves for another floor
};

struct MapLayout {
  double scale = 20;     // px a metre
  double symbolPx = 24;  // size of an outlet's symbol; under kDotBelow it is a dot
  bool withText = true;
  std::vector<QPointF> outlets;
  std::vector<QPointF> panels;
  std::vector<QPointF> loads;
  std::vector<QPointF> machines;
  std::vector<QPointF> rooms;
  std::vector<LaidCord> cords;
  std::vector<MapPlug> plugs;
  HitIndex index;

  [[nodiscard]] QPointF at(const ItemRef& item) const;
};

inline constexpr double kDotBelow = 13.0;

[[nodiscard]] MapLayout layoutOf(const MapContent& content, double scale);

// What the symbol of that thing covers.
[[nodiscard]] QRectF symbolBox(const MapLayout& layout, const ItemRef& item);

// Where the short arrow of a home run, which points towards its panel, ends.
[[nodiscard]] QPointF homeRunTip(const MapContent& content, const MapLayout& layout, const MapRun& run);

}  // namespace cordreach::app
