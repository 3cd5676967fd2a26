// SPDX-License-Identifier: GPL-3.0-or-later
// A pointing tool: what pressing, moving and letting go on the plan do. One kind a file, tool_<kind>.cpp.
#pragma once

#include <QLineF>
#include <QPointF>
#include <QString>
#include <Qt>
#include <memory>
#include <optional>
#include <string_view>

class QKeyEvent;
class QPainter;

namespace cordreach::app {

class MapCanvas;

struct ToolPointer {
  QPointF at;      // pixels from the plan's origin
  QPointF metres;  // the same on the floor
  Qt::KeyboardModifiers modifiers;
};

class MapTool {
 public:
  explicit MapTool(MapCanvas& canvas) : m_canvas(canvas) {}
  virtual ~MapTool() = default;
  MapTool(const MapTool&) = delete;
  MapTool& operator=(const MapTool&) = delete;

  virtual void press(const ToolPointer& pointer) = 0;
  virtual void move(const ToolPointer&) {}  // with or without a button held
  virtual void release(const ToolPointer&) {}
  // True when the key was its.
  virtual bool key(QKeyEvent&) { return false; }
  // Whatever was begun leaves no trace. True when something was.
  virtual bool cancel() { return false; }
  virtual void paint(QPainter&) {}
  // It draws from pressing to letting go; else each press sets a point.
  [[nodiscard]] virtual bool isStroke() const { return false; }
  // While something is begun: from its last point to what the pointer would make of it, in metres.
  [[nodiscard]] virtual std::optional<QLineF> drawing() const { return std::nullopt; }
  // What would come of it, in words; empty: nothing is to be said.
  [[nodiscard]] virtual QString progress() const { return {}; }
  // Code of the sentence that says what to do; empty: none needed.
  [[nodiscard]] virtual std::string_view hint() const { return {}; }

 protected:
  [[nodiscard]] MapCanvas& canvas() const { return m_canvas; }

 private:
  MapCanvas& m_canvas;
};

enum class ToolKind { Select, Outlet, Row, Panel, Machine, Load, Wall, Room, Corridor, Run, Circuit };

[[nodiscard]] std::unique_ptr<MapTool> selectTool(MapCanvas& canvas);
[[nodiscard]] std::unique_ptr<MapTool> outletTool(MapCanvas& canvas);
[[nodiscard]] std::unique_ptr<MapTool> rowTool(MapCanvas& canvas);
[[nodiscard]] std::unique_ptr<MapTool> panelTool(MapCanvas& canvas);
[[nodiscard]] std::unique_ptr<MapTool> machineTool(MapCanvas& canvas);
[[nodiscard]] std::unique_ptr<MapTool> loadTool(MapCanvas& canvas);
[[nodiscard]] std::unique_ptr<MapTool> wallTool(MapCanvas& canvas);
[[nodiscard]] std::unique_ptr<MapTool> roomTool(MapCanvas& canvas);
[[nodiscard]] std::unique_ptr<MapTool> corridorTool(MapCanvas& canvas);
[[nodiscard]] std::unique_ptr<MapTool> runTool(MapCanvas& canvas);
[[nodiscard]] std::unique_ptr<MapTool> circuitTool(MapCanvas& canvas);

}  // namespace cordreach::app
