// SPDX-License-Identifier: GPL-3.0-or-later
// A plug in the hand, by pointer or by keys: while it is over an outlet the document supposes it is in; letting go
// makes one edit, Escape leaves no trace. Floors may change while it is held.
#pragma once

#include <QPointF>
#include <memory>
#include <optional>
#include <string>

#include "map/map_paint.h"
#include "map/plug_edits.h"

class QVariantAnimation;

namespace cordreach::app {

class MapCanvas;

class PlugDrag {
 public:
  explicit PlugDrag(MapCanvas& canvas);
  ~PlugDrag();

  [[nodiscard]] bool isHolding() const;
  // False, and told why, when the machine or cord is out of service.
  bool pickUp(const HeldPlug& plug, const QPointF& at);
  void moveTo(const QPointF& at);  // pixels of the plan
  void overOutlet(int outlet);     // by keys
  void nextContact();              // the outlet's other one
  void drop();
  void cancel();
  // Another floor is about to be shown: it is over no outlet any more.
  void leaveOutlet();
  // After the content was made anew: the same plug over the same outlet.
  void refresh();

 private:
  void suppose(std::optional<int> outlet, const std::string& preferred);
  void light();
  [[nodiscard]] QString whyNot(const HeldPlug& plug) const;
  [[nodiscard]] HeldState stateOf(const HeldPlug& plug, const QPointF& at) const;
  void letGo();
  void snapBack(HeldState held);

  MapCanvas& m_canvas;
  std::optional<site::OutletSocket> m_socket;  // supposed
  QPointF m_at;
  std::optional<site::FloorId> m_homeFloor;  // on which it was picked up
  std::unique_ptr<QVariantAnimation> m_return;
};

}  // namespace cordreach::app
