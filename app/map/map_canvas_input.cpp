// SPDX-License-Identifier: GPL-3.0-or-later
// Pointer, wheel, touchpad and keys of the plan.
#include <QContextMenuEvent>
#include <QGestureEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QNativeGestureEvent>
#include <QPinchGesture>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

#include "map/arrow_keys.h"
#include "map/map_canvas.h"

namespace cordreach::app {
namespace {

constexpr double kZoomStep = 1.25;
constexpr double kPanStep = 80;

}  // namespace

ToolPointer MapCanvas::pointerFrom(const QPointF& widget, Qt::KeyboardModifiers modifiers) const {
  const QPointF plan = toPlan(widget);
  return {plan, plan / m_layout.scale, modifiers};
}

std::optional<ItemRef> MapCanvas::roomAt(const QPointF& plan) const {
  const QPointF metres = plan / m_layout.scale;
  std::optional<ItemRef> best;
  double smallest = 0;
  for (std::size_t i = 0; i < m_content.rooms.size(); ++i) {
    const QRectF box = m_content.rooms[i].outline.boundingRect();
    const double area = box.width() * box.height();
    if (!box.contains(metres) || (best && area >= smallest)) continue;
    if (!m_content.rooms[i].outline.containsPoint(metres, Qt::OddEvenFill)) continue;
    best = ItemRef{ItemKind::Room, static_cast<int>(i)};
    smallest = area;
  }
  return best;
}

std::optional<ItemRef> MapCanvas::thingOrRoomAt(const QPointF& plan) const {
  const auto thing = itemAt(plan);
  return thing ? thing : roomAt(plan);
}

bool MapCanvas::isPanning(const QMouseEvent& event) const {
  return event.button() == Qt::MiddleButton || (event.button() == Qt::LeftButton && m_spaceHeld);
}

void MapCanvas::mousePressEvent(QMouseEvent* event) {
  setFocus(Qt::MouseFocusReason);
  m_state.showFocus = false;
  m_pen.hide();
  if (isPanning(*event)) {
    m_panFrom = event->position();
    setCursor(Qt::ClosedHandCursor);
    return;
  }
  if (event->button() == Qt::LeftButton) m_tool->press(pointerFrom(event->position(), event->modifiers()));
}

void MapCanvas::mouseMoveEvent(QMouseEvent* event) {
  if (m_panFrom) {
    panBy(*m_panFrom - event->position());
    m_panFrom = event->position();
    return;
  }
  if (m_pen.isShown()) return;  // a pointer that only lies there does not draw
  m_tool->move(pointerFrom(event->position(), event->modifiers()));
  if (m_plugs->isHolding()) emit heldMoved(event->globalPosition().toPoint());
}

void MapCanvas::mouseReleaseEvent(QMouseEvent* event) {
  if (m_panFrom) {
    m_panFrom.reset();
    setCursor(m_toolKind == ToolKind::Select ? Qt::ArrowCursor : Qt::CrossCursor);
    return;
  }
  if (event->button() == Qt::LeftButton) m_tool->release(pointerFrom(event->position(), event->modifiers()));
}

void MapCanvas::mouseDoubleClickEvent(QMouseEvent* event) {
  const auto item = thingOrRoomAt(toPlan(event->position()));
  const auto subject = item ? subjectOf(m_content, *item) : std::nullopt;
  if (subject && m_toolKind == ToolKind::Select) emit opened(*subject);
}

void MapCanvas::wheelEvent(QWheelEvent* event) {
  const bool isTouchpad = !event->pixelDelta().isNull() && event->phase() != Qt::NoScrollPhase;
  if (isTouchpad && !event->modifiers().testFlag(Qt::ControlModifier)) {
    panBy(-QPointF(event->pixelDelta()));
  } else {
    zoomBy(std::pow(kZoomStep, event->angleDelta().y() / 120.0), event->position());
  }
  event->accept();
}

bool MapCanvas::event(QEvent* event) {
  if (event->type() == QEvent::NativeGesture) {
    auto* gesture = static_cast<QNativeGestureEvent*>(event);
    if (gesture->gestureType() == Qt::ZoomNativeGesture) {
      zoomBy(1.0 + gesture->value(), gesture->position());
      return true;
    }
  }
  if (event->type() == QEvent::Gesture) {
    auto* gestures = static_cast<QGestureEvent*>(event);
    if (auto* pinch = static_cast<QPinchGesture*>(gestures->gesture(Qt::PinchGesture))) {
      zoomBy(pinch->scaleFactor(), mapFromGlobal(pinch->centerPoint()));
      return true;
    }
  }
  // Tab walks the plan by number; at either end it leaves.
  if (event->type() == QEvent::KeyPress) {
    auto* key = static_cast<QKeyEvent*>(event);
    const bool isTab = key->key() == Qt::Key_Tab || key->key() == Qt::Key_Backtab;
    if (isTab && !key->modifiers().testFlag(Qt::ControlModifier)) {
      const auto all = itemsInOrder();
      const bool back = key->key() == Qt::Key_Backtab;
      const auto edge =
          all.empty() ? std::optional<ItemRef>() : std::optional<ItemRef>(back ? all.front() : all.back());
      if (!all.empty() && m_state.focus != edge) {
        walkByNumber(back ? -1 : 1);
        if (m_toolKind != ToolKind::Select && m_state.focus) m_pen.goTo(m_layout.at(*m_state.focus) / scale(), *m_tool);
        return true;
      }
    }
  }
  return QWidget::event(event);
}

void MapCanvas::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Space && !m_plugs->isHolding()) {
    if (!event->isAutoRepeat()) m_spaceHeld = true;
    return;
  }
  if (m_toolKind != ToolKind::Select && m_pen.key(*event, *m_tool)) return;
  if (m_tool->key(*event)) return m_pen.follow(*m_tool);
  if (walkKey(*event) || viewKey(*event)) return;
  QWidget::keyPressEvent(event);
}

void MapCanvas::keyReleaseEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Space && !event->isAutoRepeat()) m_spaceHeld = false;
  QWidget::keyReleaseEvent(event);
}

bool MapCanvas::viewKey(QKeyEvent& event) {
  const QPointF middle(width() / 2.0, height() / 2.0);
  const int key = event.key();
  if (event.modifiers().testFlag(Qt::ControlModifier) && isArrow(key)) {
    panBy(directionOf(key) * kPanStep);
  } else if (key == Qt::Key_Plus || key == Qt::Key_Equal) {
    zoomBy(kZoomStep, middle);
  } else if (key == Qt::Key_Minus) {
    zoomBy(1 / kZoomStep, middle);
  } else if (key == Qt::Key_0) {
    fit();
  } else if (key == Qt::Key_PageUp || key == Qt::Key_PageDown) {
    emit floorStepWanted(key == Qt::Key_PageUp ? 1 : -1);
  } else {
    return false;
  }
  return true;
}

bool MapCanvas::walkKey(QKeyEvent& event) {
  if (event.modifiers().testFlag(Qt::ControlModifier)) return false;
  m_state.showFocus = true;
  if (isArrow(event.key())) {
    walkTo(directionOf(event.key()));
    return true;
  }
  if (event.key() != Qt::Key_Return && event.key() != Qt::Key_Enter) return false;
  if (!m_state.focus) return false;
  const auto subject = subjectOf(m_content, *m_state.focus);
  if (!subject) return false;
  const bool was = m_session.selection.holds(*subject);
  choose(*m_state.focus, event.modifiers().testFlag(Qt::ShiftModifier));
  if (was) emit opened(*subject);
  return true;
}

// The nearest thing in that direction, rooms left out: they lie under all others. With a plug in hand only outlets.
void MapCanvas::walkTo(const QPointF& direction) {
  const bool holding = m_plugs->isHolding();
  const QPointF from = m_state.focus ? m_layout.at(*m_state.focus) : m_origin + QPointF(width() / 2.0, height() / 2.0);
  std::optional<ItemRef> best;
  double bestCost = 1e18;
  for (const ItemRef& item : itemsInOrder()) {
    if (item.kind == ItemKind::Room || (holding && item.kind != ItemKind::Outlet)) continue;
    const auto cost = costOfWay(m_layout.at(item) - from, direction);
    if (!cost || *cost >= bestCost) continue;
    best = item;
    bestCost = *cost;
  }
  if (!best) return;
  focusItem(best);
  if (holding) m_plugs->overOutlet(best->index);
}

void MapCanvas::walkByNumber(int step) {
  m_state.showFocus = true;
  const bool holding = m_plugs->isHolding();
  const auto all = itemsInOrder();
  auto at = m_state.focus ? std::find(all.begin(), all.end(), *m_state.focus) : all.end();
  auto index = at == all.end() ? (step > 0 ? -1 : static_cast<std::ptrdiff_t>(all.size())) : at - all.begin();
  do {
    index += step;
  } while (index >= 0 && index < static_cast<std::ptrdiff_t>(all.size()) && holding &&
           all[static_cast<std::size_t>(index)].kind != ItemKind::Outlet);
  if (index < 0 || index >= static_cast<std::ptrdiff_t>(all.size())) return;
  focusItem(all[static_cast<std::size_t>(index)]);
  if (holding) m_plugs->overOutlet(all[static_cast<std::size_t>(index)].index);
}

std::vector<ItemRef> MapCanvas::itemsInOrder() const {
  std::vector<ItemRef> all;
  const auto add = [&](ItemKind kind, std::size_t count) {
    for (std::size_t i = 0; i < count; ++i) all.push_back({kind, static_cast<int>(i)});
  };
  add(ItemKind::Outlet, m_content.outlets.size());
  std::stable_sort(all.begin(), all.end(), [this](const ItemRef& a, const ItemRef& b) {
    return m_content.outlets[static_cast<std::size_t>(a.index)].label <
           m_content.outlets[static_cast<std::size_t>(b.index)].label;
  });
  add(ItemKind::Machine, m_content.machines.size());
  add(ItemKind::Load, m_content.loads.size());
  add(ItemKind::Panel, m_content.panels.size());
  add(ItemKind::Room, m_content.rooms.size());
  return all;
}

void MapCanvas::contextMenuEvent(QContextMenuEvent* event) {
  if (event->reason() == QContextMenuEvent::Mouse) {
    const auto item = thingOrRoomAt(toPlan(event->pos()));
    const auto subject = item ? subjectOf(m_content, *item) : std::nullopt;
    if (subject && !m_session.selection.holds(*subject)) choose(*item, false);
    emit menuWanted(event->globalPos());
    return;
  }
  if (m_state.focus) choose(*m_state.focus, false);
  const QPointF at = m_state.focus ? toWidget(m_layout.at(*m_state.focus)) : QPointF(width() / 2.0, height() / 2.0);
  emit menuWanted(mapToGlobal(at.toPoint()));
}

void MapCanvas::focusInEvent(QFocusEvent* event) {
  QWidget::focusInEvent(event);
  const bool byKeys = event->reason() == Qt::TabFocusReason || event->reason() == Qt::BacktabFocusReason ||
                      event->reason() == Qt::ShortcutFocusReason;
  if (byKeys) m_state.showFocus = true;
  update();
}

void MapCanvas::focusOutEvent(QFocusEvent* event) {
  QWidget::focusOutEvent(event);
  m_spaceHeld = false;
  m_state.showFocus = false;
  update();
}

}  // namespace cordreach::app
