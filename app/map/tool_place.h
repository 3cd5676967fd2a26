// SPDX-License-Identifier: GPL-3.0-or-later
// A tool whose every click puts one thing on the plan.
#pragma once

#include <functional>
#include <string>

#include "map/map_canvas.h"
#include "map/map_tool.h"

namespace cordreach::app {

class PlaceTool : public MapTool {
 public:
  using Make = std::function<EditResult(const site::Site&, const site::Place&)>;
  PlaceTool(MapCanvas& canvas, std::string_view hint, Make make);

  void press(const ToolPointer&) override {}
  void release(const ToolPointer& pointer) override;
  void move(const ToolPointer& pointer) override;
  bool key(QKeyEvent& event) override;
  void paint(QPainter& painter) override;
  [[nodiscard]] std::string_view hint() const override { return m_hint; }

 private:
  std::string_view m_hint;
  Make m_make;
  std::optional<QPointF> m_at;
};

}  // namespace cordreach::app
