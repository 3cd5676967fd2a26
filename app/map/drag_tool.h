// SPDX-License-Identifier: GPL-3.0-or-later
// What the tools share that draw from press to release: Escape gives up what is begun, else the tool.
#pragma once

#include <QKeyEvent>
#include <optional>

#include "map/map_canvas.h"

namespace cordreach::app {

class DragTool : public MapTool {
 public:
  using MapTool::MapTool;

  bool key(QKeyEvent& event) override {
    if (event.key() != Qt::Key_Escape) return false;
    if (!cancel()) canvas().use(ToolKind::Select);
    return true;
  }

  [[nodiscard]] bool isStroke() const override { return true; }
  [[nodiscard]] std::optional<QLineF> drawing() const override {
    return m_from ? std::optional(QLineF(*m_from, m_to)) : std::nullopt;
  }

  bool cancel() override {
    const bool any = m_from.has_value();
    m_from.reset();
    canvas().update();
    return any;
  }

 protected:
  std::optional<QPointF> m_from;  // in metres; none: nothing is begun
  QPointF m_to;
};

}  // namespace cordreach::app
