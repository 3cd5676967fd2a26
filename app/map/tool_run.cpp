// SPDX-License-Identifier: GPL-3.0-or-later
// Draws a run of wire from a panel or an outlet to the outlet that it feeds.
#include <QKeyEvent>
#include <QPainter>

#include "map/map_canvas.h"
#include "map/place_edits.h"

namespace cordreach::app {
namespace {

class RunTool : public MapTool {
 public:
  using MapTool::MapTool;

  void press(const ToolPointer& pointer) override {
    const auto item = canvas().itemAt(pointer.at);
    m_to = pointer.at;
    m_from.reset();
    if (item && (item->kind == ItemKind::Outlet || item->kind == ItemKind::Panel)) m_from = item;
  }

  void move(const ToolPointer& pointer) override {
    m_to = pointer.at;
    canvas().update();
  }

  void release(const ToolPointer& pointer) override {
    const auto from = m_from;
    m_from.reset();
    canvas().update();
    const auto to = canvas().outletAt(pointer.at, 20);
    if (!from || !to || (from->kind == ItemKind::Outlet && from->index == *to)) return;
    const auto& outlets = canvas().content().outlets;
    std::optional<site::OutletId> source;
    if (from->kind == ItemKind::Outlet) source = outlets[static_cast<std::size_t>(from->index)].id;
    canvas().apply(addRun(canvas().session().document.site(), source, outlets[static_cast<std::size_t>(*to)].id));
  }

  bool key(QKeyEvent& event) override {
    if (event.key() != Qt::Key_Escape) return false;
    if (!cancel()) canvas().use(ToolKind::Select);
    return true;
  }

  bool cancel() override {
    const bool any = m_from.has_value();
    m_from.reset();
    canvas().update();
    return any;
  }

  void paint(QPainter& painter) override {
    if (!m_from) return;
    painter.setPen(QPen(look::tokens().select, 2, Qt::DashLine));
    painter.drawLine(canvas().layout().at(*m_from), m_to);
  }

  [[nodiscard]] std::string_view hint() const override { return "map.hint.run"; }

 private:
  std::optional<ItemRef> m_from;
  QPointF m_to;
};

}  // namespace

std::unique_ptr<MapTool> runTool(MapCanvas& canvas) { return std::make_unique<RunTool>(canvas); }

}  // namespace cordreach::app
