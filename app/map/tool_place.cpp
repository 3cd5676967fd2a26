// SPDX-License-Identifier: GPL-3.0-or-later
#include "map/tool_place.h"

#include <QKeyEvent>
#include <QPainter>
#include <cmath>
#include <utility>

#include "panels/new_things.h"

namespace cordreach::app {

PlaceTool::PlaceTool(MapCanvas& canvas, std::string_view hint, Make make)
    : MapTool(canvas), m_hint(hint), m_make(std::move(make)) {}

void PlaceTool::move(const ToolPointer& pointer) {
  m_at = pointer.at;
  canvas().update();
}

void PlaceTool::release(const ToolPointer& pointer) {
  if (!canvas().floor()) return;
  const auto tenths = [](double metres) { return std::round(metres * 10.0) / 10.0; };
  const geometry::Point at{tenths(pointer.metres.x()), tenths(pointer.metres.y())};
  const EditResult edit = m_make(canvas().session().document.site(), {*canvas().floor(), at});
  if (!canvas().apply(edit)) return;
  if (const auto placed = changedBy(edit.value())) canvas().session().selection.choose({*placed});
}

bool PlaceTool::key(QKeyEvent& event) {
  if (event.key() != Qt::Key_Escape) return false;
  canvas().use(ToolKind::Select);
  return true;
}

void PlaceTool::paint(QPainter& painter) {
  if (!m_at) return;
  painter.setPen(QPen(look::tokens().select, 1.5, Qt::DashLine));
  painter.setBrush(Qt::NoBrush);
  painter.drawEllipse(*m_at, 12, 12);
}

}  // namespace cordreach::app
