// SPDX-License-Identifier: GPL-3.0-or-later
// The crosshair that keys move over the plan: what a pointer does for the drawing tools, done by arrows and Return. One
// for all tools; each is told what it would be told of a pointer.
#pragma once

#include <QPointF>
#include <QString>
#include <Qt>
#include <optional>

class QKeyEvent;
class QPainter;

namespace cordreach::app {

class MapCanvas;
class MapTool;
struct ToolPointer;

class KeyPen {
 public:
  explicit KeyPen(MapCanvas& canvas) : m_canvas(canvas) {}

  // Arrows move it on a grid, with Ctrl to the next corner, wall's end or thing; Return sets a point, Backspace takes
  // the last one back. False: the key is not its.
  bool key(QKeyEvent& event, MapTool& tool);
  // Shows it there: where Tab has gone to.
  void goTo(const QPointF& metres, MapTool& tool, Qt::KeyboardModifiers modifiers = {});
  // The tool has done something with a key: what it draws now is told again.
  void follow(MapTool& tool);
  // The pointer is used again, or another tool.
  void hide() { m_at.reset(); }
  [[nodiscard]] bool isShown() const { return m_at.has_value(); }
  [[nodiscard]] const std::optional<QPointF>& metres() const { return m_at; }
  void paint(QPainter& painter) const;

 private:
  [[nodiscard]] double stepM() const;
  [[nodiscard]] QPointF start() const;
  [[nodiscard]] ToolPointer pointer(Qt::KeyboardModifiers modifiers) const;
  [[nodiscard]] std::optional<QPointF> nextSnap(const QPointF& direction) const;
  void moveBy(const QPointF& direction, MapTool& tool, Qt::KeyboardModifiers modifiers);
  bool setPoint(MapTool& tool, Qt::KeyboardModifiers modifiers);
  [[nodiscard]] QString words(const MapTool& tool) const;

  MapCanvas& m_canvas;
  std::optional<QPointF> m_at;  // in metres; none: it is not shown
};

}  // namespace cordreach::app
