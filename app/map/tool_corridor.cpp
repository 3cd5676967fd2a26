// SPDX-License-Identifier: GPL-3.0-or-later
// Draws lines along which people walk, click by click, at right angles unless Alt is held; a click on a line that is
// there takes it away.
#include <QKeyEvent>
#include <QPainter>

#include "map/map_canvas.h"
#include "map/place_edits.h"
#include "map/polyline.h"

namespace cordreach::app {
namespace {

constexpr double kSamePx = 6;
constexpr double kHitPx = 6;

class CorridorTool : public MapTool {
 public:
  using MapTool::MapTool;

  void press(const ToolPointer&) override {}

  void move(const ToolPointer& pointer) override {
    m_to = bend(pointer);
    canvas().update();
  }

  // A double click ends: its second half comes down where the first did.
  void release(const ToolPointer& pointer) override {
    if (!canvas().floor()) return;
    if (m_line.isEmpty() && takeAway(pointer.at)) return;
    const QPointF at = bend(pointer);
    const bool again = !m_line.isEmpty() && QLineF(m_line.last() * canvas().scale(), pointer.at).length() < kSamePx;
    if (again) return finish();
    m_line << at;
    m_to = at;
    canvas().update();
  }

  bool key(QKeyEvent& event) override {
    if (event.key() == Qt::Key_Return || event.key() == Qt::Key_Enter) return finish(), true;
    if (event.key() == Qt::Key_Backspace && !m_line.isEmpty()) {
      m_line.removeLast();
      canvas().update();
      return true;
    }
    if (event.key() != Qt::Key_Escape) return false;
    if (!cancel()) canvas().use(ToolKind::Select);
    return true;
  }

  bool cancel() override {
    const bool any = !m_line.isEmpty();
    m_line.clear();
    canvas().update();
    return any;
  }

  [[nodiscard]] std::optional<QLineF> drawing() const override {
    return m_line.isEmpty() ? std::nullopt : std::optional(QLineF(m_line.last(), m_to));
  }

  void paint(QPainter& painter) override { paintGrowing(painter, m_line, m_to, canvas().scale()); }

  [[nodiscard]] std::string_view hint() const override { return "map.hint.corridor"; }

 private:
  [[nodiscard]] QPointF bend(const ToolPointer& pointer) const {
    const QPointF at = toTenths(pointer.metres);
    const bool squares = !m_line.isEmpty() && !pointer.modifiers.testFlag(Qt::AltModifier);
    return squares ? squaredFrom(m_line.last(), at) : at;
  }

  void finish() {
    if (m_line.size() >= 2 && canvas().floor()) {
      canvas().apply(addCorridorLine(canvas().session().document.site(), *canvas().floor(), {toPoints(m_line)}));
    }
    m_line.clear();
    canvas().update();
  }

  bool takeAway(const QPointF& at) {
    const auto& lines = canvas().content().corridorLines;
    for (std::size_t i = 0; i < lines.size(); ++i) {
      QPolygonF drawn = lines[i];
      for (QPointF& point : drawn) point *= canvas().scale();
      if (distanceTo(drawn, at) > kHitPx) continue;
      return canvas().apply(removeCorridorLine(canvas().session().document.site(), *canvas().floor(), i));
    }
    return false;
  }

  QPolygonF m_line;  // metres
  QPointF m_to;
};

}  // namespace

std::unique_ptr<MapTool> corridorTool(MapCanvas& canvas) { return std::make_unique<CorridorTool>(canvas); }

}  // namespace cordreach::app
