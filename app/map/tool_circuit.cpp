// SPDX-License-Identifier: GPL-3.0-or-later
// Paints a circuit over outlets: every contact of each outlet that the stroke comes over is on it from then on.
#include <QKeyEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "map/map_canvas.h"
#include "panels/fresh_id.h"
#include "panels/names.h"
#include "shell/say.h"
#include "site/assigning.h"

namespace cordreach::app {
namespace {

constexpr double kReachPx = 16;  // half the width of the stroke
constexpr double kStepPx = 8;    // a quick pointer leaves no outlet out

class CircuitTool : public MapTool {
 public:
  using MapTool::MapTool;

  void press(const ToolPointer& pointer) override {
    m_outlets.clear();
    m_isPainting = canPaint();
    m_at = pointer.at;
    m_from = pointer.metres;
    if (m_isPainting) take(pointer.at);
  }

  void move(const ToolPointer& pointer) override {
    if (m_isPainting) {
      const QPointF way = pointer.at - m_at;
      const int steps = std::max(1, static_cast<int>(std::hypot(way.x(), way.y()) / kStepPx));
      for (int step = 1; step <= steps; ++step) take(m_at + way * step / steps);
    }
    m_at = pointer.at;
    m_isOver = true;
    canvas().update();
  }

  void release(const ToolPointer& pointer) override {
    if (!m_isPainting) return;
    move(pointer);
    m_isPainting = false;
    const std::vector<site::OutletId> outlets = std::exchange(m_outlets, {});
    if (!outlets.empty()) assign(outlets);
    canvas().update();
  }

  bool key(QKeyEvent& event) override {
    if (event.key() != Qt::Key_Escape) return false;
    if (!cancel()) canvas().use(ToolKind::Select);
    return true;
  }

  bool cancel() override {
    const bool any = m_isPainting;
    m_isPainting = false;
    m_outlets.clear();
    canvas().update();
    return any;
  }

  [[nodiscard]] bool isStroke() const override { return true; }
  [[nodiscard]] std::optional<QLineF> drawing() const override {
    return m_isPainting ? std::optional(QLineF(m_from, m_at / canvas().scale())) : std::nullopt;
  }
  [[nodiscard]] QString progress() const override {
    if (!m_isPainting) return {};
    return say(canvas().session().book, "map.circuit.count", {{"n", static_cast<double>(m_outlets.size())}});
  }

  void paint(QPainter& painter) override {
    const double reach = look::scaled(kReachPx);
    painter.setPen(QPen(look::tokens().select, 1.5, Qt::DashLine));
    painter.setBrush(Qt::NoBrush);
    if (m_isOver) painter.drawEllipse(m_at, reach, reach);
    painter.setPen(QPen(look::tokens().select, 2.5));
    const auto& outlets = canvas().content().outlets;
    for (std::size_t i = 0; i < outlets.size(); ++i) {
      if (holds(outlets[i].id)) painter.drawEllipse(canvas().layout().outlets[i], reach, reach);
    }
  }

  [[nodiscard]] std::string_view hint() const override { return "map.hint.circuit"; }

 private:
  [[nodiscard]] bool holds(const site::OutletId& id) const {
    return std::find(m_outlets.begin(), m_outlets.end(), id) != m_outlets.end();
  }

  [[nodiscard]] bool canPaint() {
    const CircuitBrush& brush = canvas().brush();
    const site::Site& site = canvas().session().document.site();
    const bool isThere = !brush.circuit || site.find<site::Circuit>(*brush.circuit) != nullptr;
    if (brush.isChosen && isThere) return true;
    emit canvas().told(say(canvas().session().book, "map.circuit.choose"));
    return false;
  }

  void take(const QPointF& at) {
    const auto found = canvas().outletAt(at, look::scaled(kReachPx));
    if (!found) return;
    const site::OutletId& id = canvas().content().outlets[static_cast<std::size_t>(*found)].id;
    if (!holds(id)) m_outlets.push_back(id);
  }

  void assign(const std::vector<site::OutletId>& outlets) {
    const site::Site& site = canvas().session().document.site();
    const CircuitBrush& brush = canvas().brush();
    std::vector<site::OutletSocket> contacts;
    std::vector<rules::Subject> painted;
    for (const site::OutletId& id : outlets) {
      const site::Outlet* outlet = site.find<site::Outlet>(id);
      if (outlet == nullptr) continue;
      painted.push_back({rules::SubjectKind::Outlet, id.text()});
      for (const site::Contact& contact : outlet->contacts) contacts.push_back({id, contact.name});
    }
    const site::Edit edit = site::assignmentEdit(site, contacts, brush.circuit, brush.surveyor.found(), randomSource());
    const base::Arguments said{
        {"n", static_cast<double>(painted.size())},
        {"number", painted.size() == 1 ? "one" : "many"},
        {"circuit", brush.circuit ? circuitName(site, site.at<site::Circuit>(*brush.circuit)) : std::string()}};
    if (!edit.changes.empty() && !canvas().apply(edit)) return;
    canvas().session().selection.choose(std::move(painted));
    const char* code = edit.changes.empty() ? "map.circuit.same"
                       : brush.circuit      ? "map.circuit.done"
                                            : "map.circuit.unknown";
    emit canvas().told(say(canvas().session().book, code, said));
  }

  bool m_isPainting = false;
  bool m_isOver = false;  // the pointer has been seen
  QPointF m_at;
  QPointF m_from;  // in metres
  std::vector<site::OutletId> m_outlets;
};

}  // namespace

std::unique_ptr<MapTool> circuitTool(MapCanvas& canvas) { return std::make_unique<CircuitTool>(canvas); }

}  // namespace cordreach::app
