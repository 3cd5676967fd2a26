// SPDX-License-Identifier: GPL-3.0-or-later
// Draws walls from press to release, at right angles unless Alt is held; a click on a wall takes it away.
#include <QPainter>
#include <cmath>

#include "map/drag_tool.h"
#include "map/place_edits.h"

namespace cordreach::app {
namespace {

constexpr double kShortestM = 0.3;
constexpr double kSnapM = 0.4;  // to the end of another wall
constexpr double kHitPx = 6;

class WallTool : public DragTool {
 public:
  using DragTool::DragTool;

  void press(const ToolPointer& pointer) override {
    m_from = snapped(pointer.metres);
    m_to = *m_from;
  }

  void move(const ToolPointer& pointer) override {
    m_to = squared(pointer);
    canvas().update();
  }

  void release(const ToolPointer& pointer) override {
    if (!m_from || !canvas().floor()) return;
    const QPointF from = *m_from;
    const QPointF to = squared(pointer);
    m_from.reset();
    const site::Site& site = canvas().session().document.site();
    const QPointF way = to - from;
    if (std::hypot(way.x(), way.y()) >= kShortestM) {
      canvas().apply(addWall(site, *canvas().floor(), {{from.x(), from.y()}, {to.x(), to.y()}}));
    } else {
      takeAway(pointer.at);
    }
  }

  void paint(QPainter& painter) override {
    if (!m_from) return;
    painter.setPen(QPen(look::tokens().select, 3.5, Qt::DashLine));
    painter.drawLine(*m_from * canvas().scale(), m_to * canvas().scale());
  }

  [[nodiscard]] std::string_view hint() const override { return "map.hint.wall"; }

 private:
  [[nodiscard]] QPointF snapped(const QPointF& at) const {
    QPointF best(std::round(at.x() * 10) / 10, std::round(at.y() * 10) / 10);
    double nearest = kSnapM;
    for (const MapWall& wall : canvas().content().walls) {
      for (const QPointF& end : {wall.from, wall.to}) {
        const double distance = std::hypot(end.x() - at.x(), end.y() - at.y());
        if (distance >= nearest) continue;
        best = end;
        nearest = distance;
      }
    }
    return best;
  }

  [[nodiscard]] QPointF squared(const ToolPointer& pointer) const {
    QPointF to = snapped(pointer.metres);
    if (!m_from || pointer.modifiers.testFlag(Qt::AltModifier)) return to;
    const QPointF way = to - *m_from;
    return std::abs(way.x()) > std::abs(way.y()) ? QPointF(to.x(), m_from->y()) : QPointF(m_from->x(), to.y());
  }

  void takeAway(const QPointF& at) {
    const auto& walls = canvas().content().walls;
    for (std::size_t i = 0; i < walls.size(); ++i) {
      QPolygonF line;
      line << walls[i].from * canvas().scale() << walls[i].to * canvas().scale();
      if (distanceTo(line, at) > kHitPx) continue;
      canvas().apply(removeWall(canvas().session().document.site(), *canvas().floor(), i));
      return;
    }
  }
};

}  // namespace

std::unique_ptr<MapTool> wallTool(MapCanvas& canvas) { return std::make_unique<WallTool>(canvas); }

}  // namespace cordreach::app
