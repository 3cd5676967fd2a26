// SPDX-License-Identifier: GPL-3.0-or-later
// Draws a run of wire from a panel or an outlet to the outlet that it feeds: in one drag, or click by click with its
// bends, at right angles unless Alt is held.
#include <QKeyEvent>
#include <QPainter>

#include "map/map_canvas.h"
#include "map/place_edits.h"
#include "map/polyline.h"

namespace cordreach::app {
namespace {

constexpr double kClickPx = 5;    // less is a click
constexpr double kTargetPx = 20;  // an outlet that near is meant

class RunTool : public MapTool {
 public:
  using MapTool::MapTool;

  void press(const ToolPointer& pointer) override {
    m_pressed = pointer.at;
    if (m_from) return;
    const auto item = canvas().itemAt(pointer.at);
    if (item && (item->kind == ItemKind::Outlet || item->kind == ItemKind::Panel)) m_from = item;
    m_line.clear();
    if (m_from) m_line << placeOf(*m_from);
    m_to = pointer.metres;
  }

  void move(const ToolPointer& pointer) override {
    m_to = bend(pointer);
    canvas().update();
  }

  void release(const ToolPointer& pointer) override {
    canvas().update();
    if (!m_from) return;
    const auto to = canvas().outletAt(pointer.at, kTargetPx);
    const bool isClick = QLineF(m_pressed, pointer.at).length() < kClickPx;
    if (to && !(m_from->kind == ItemKind::Outlet && m_from->index == *to)) return finish(*to);
    if (!isClick && m_line.size() == 1) {
      cancel();  // dragged to nowhere
    } else if (isClick && !isOnStart(pointer.at)) {
      m_line << bend(pointer);
    }
  }

  bool key(QKeyEvent& event) override {
    if (event.key() == Qt::Key_Backspace && m_from) {
      if (m_line.size() < 2) return cancel();
      m_line.removeLast();
      canvas().update();
      return true;
    }
    if (event.key() != Qt::Key_Escape) return false;
    if (!cancel()) canvas().use(ToolKind::Select);
    return true;
  }

  bool cancel() override {
    const bool any = m_from.has_value();
    m_from.reset();
    m_line.clear();
    canvas().update();
    return any;
  }

  [[nodiscard]] std::optional<QLineF> drawing() const override {
    return m_line.isEmpty() ? std::nullopt : std::optional(QLineF(m_line.last(), m_to));
  }

  void paint(QPainter& painter) override {
    if (m_from) paintGrowing(painter, m_line, m_to, canvas().scale());
  }

  [[nodiscard]] std::string_view hint() const override { return "map.hint.run"; }

 private:
  [[nodiscard]] QPointF placeOf(const ItemRef& item) const {
    const auto index = static_cast<std::size_t>(item.index);
    return item.kind == ItemKind::Outlet ? canvas().content().outlets[index].at : canvas().content().panels[index].at;
  }

  [[nodiscard]] QPointF bend(const ToolPointer& pointer) const {
    if (m_line.isEmpty() || pointer.modifiers.testFlag(Qt::AltModifier)) return pointer.metres;
    return squaredFrom(m_line.last(), pointer.metres);
  }

  [[nodiscard]] bool isOnStart(const QPointF& at) const {
    return m_line.size() == 1 && QLineF(canvas().layout().at(*m_from), at).length() < kTargetPx;
  }

  void finish(int to) {
    const auto& outlets = canvas().content().outlets;
    const MapOutlet& target = outlets[static_cast<std::size_t>(to)];
    std::optional<site::OutletId> source;
    if (m_from->kind == ItemKind::Outlet) source = outlets[static_cast<std::size_t>(m_from->index)].id;
    std::vector<geometry::Point> path;
    if (m_line.size() > 1) path = toPoints(m_line + QPolygonF{target.at});
    const auto id = target.id;
    cancel();
    canvas().apply(addRun(canvas().session().document.site(), source, id, std::move(path)));
  }

  std::optional<ItemRef> m_from;
  QPolygonF m_line;  // metres, from its start on
  QPointF m_to;
  QPointF m_pressed;
};

}  // namespace

std::unique_ptr<MapTool> runTool(MapCanvas& canvas) { return std::make_unique<RunTool>(canvas); }

}  // namespace cordreach::app
