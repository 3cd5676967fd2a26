// SPDX-License-Identifier: GPL-3.0-or-later
// A plug in the hand, by pointer or by keys: while it is over an outlet the document supposes it is in; letting go
// makes one edit, Escape leaves no trace.
#pragma once

#include <QPointF>
#include <optional>
#include <string>

#include "map/map_paint.h"
#include "map/plug_edits.h"

namespace cordreach::app {

class MapCanvas;

class PlugDrag {
 public:
  explicit PlugDrag(MapCanvas& canvas) : m_canvas(canvas) {}

  [[nodiscard]] bool isHolding() const;
  void pickUp(const HeldPlug& plug, const QPointF& at);
  void moveTo(const QPointF& at);  // pixels of the plan
  void overOutlet(int outlet);     // by keys
  void nextContact();              // the outlet's other one
  void drop();
  void cancel();
  // After the content was made anew: the same plug over the same outlet.
  void refresh();

 private:
  void suppose(std::optional<int> outlet, const std::string& preferred);
  void light();

  MapCanvas& m_canvas;
  std::optional<site::OutletSocket> m_socket;  // supposed
  QPointF m_at;
};

}  // namespace cordreach::app
