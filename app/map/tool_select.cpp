// SPDX-License-Identifier: GPL-3.0-or-later
// Choosing by click, by box and by a line drawn round (with Alt), moving things, and taking plugs in hand.
#include <QClipboard>
#include <QGuiApplication>
#include <QKeyEvent>
#include <QMimeData>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "map/map_canvas.h"
#include "map/place_edits.h"
#include "panels/new_things.h"

namespace cordreach::app {
namespace {

constexpr double kDragFrom = 5.0;  // px: less is a click
constexpr double kNudgeM = 0.1;
constexpr double kFarNudgeM = 1.0;

enum class Doing { Nothing, Pressed, Moving, Boxing, Roping, Plugging };

class SelectTool : public MapTool {
 public:
  using MapTool::MapTool;

  void press(const ToolPointer& pointer) override {
    if (canvas().plugs().isHolding()) return canvas().plugs().drop();
    m_from = pointer;
    m_to = pointer;
    m_item = canvas().itemAt(pointer.at);
    m_doing = Doing::Pressed;
    if (!m_item || m_item->kind == ItemKind::Plug) return;
    const auto subject = subjectOf(canvas().content(), *m_item);
    const bool add = pointer.modifiers.testFlag(Qt::ShiftModifier) || pointer.modifiers.testFlag(Qt::ControlModifier);
    if (add || !canvas().session().selection.holds(*subject)) canvas().choose(*m_item, add);
    m_item = itemOf(canvas().content(), *subject);
    canvas().focusItem(m_item);
  }

  void move(const ToolPointer& pointer) override {
    m_to = pointer;
    if (m_doing == Doing::Pressed && farEnough()) begin();
    if (m_doing == Doing::Plugging) canvas().plugs().moveTo(pointer.at);
    if (m_doing == Doing::Roping) m_rope << pointer.at;
    if (m_doing == Doing::Nothing) hover(pointer);
    canvas().update();
  }

  void release(const ToolPointer& pointer) override {
    m_to = pointer;
    const Doing did = m_doing;
    m_doing = Doing::Nothing;
    if (did == Doing::Plugging) canvas().plugs().drop();
    if (did == Doing::Moving) finishMove();
    if (did == Doing::Boxing) chooseIn(QRectF(m_from.at, m_to.at).normalized());
    if (did == Doing::Roping) chooseIn(m_rope);
    if (did == Doing::Pressed && !m_item) chooseRoom();
    if (did == Doing::Pressed && m_item && m_item->kind == ItemKind::Plug) chooseMachineOfPlug();
    canvas().update();
  }

  bool key(QKeyEvent& event) override {
    PlugDrag& plugs = canvas().plugs();
    if (event.key() == Qt::Key_Escape) return cancel();
    if (plugs.isHolding()) {
      if (event.key() == Qt::Key_Return || event.key() == Qt::Key_Enter) return plugs.drop(), true;
      if (event.key() == Qt::Key_C || event.key() == Qt::Key_Space) return plugs.nextContact(), true;
      return false;
    }
    if (event.key() == Qt::Key_P && event.modifiers() == Qt::NoModifier) return pickUpByKey();
    if (event.key() == Qt::Key_Delete || event.key() == Qt::Key_Backspace) return canvas().deleteChosen(), true;
    if (event.matches(QKeySequence::Copy)) return copy();
    if (event.matches(QKeySequence::Paste)) return paste();
    if (event.modifiers().testFlag(Qt::AltModifier)) return nudge(event);
    return false;
  }

  bool cancel() override {
    const bool any = m_doing != Doing::Nothing || canvas().plugs().isHolding();
    if (canvas().plugs().isHolding()) canvas().plugs().cancel();
    if (canvas().session().document.isSupposing()) canvas().session().document.dropSupposition();
    m_doing = Doing::Nothing;
    canvas().update();
    return any;
  }

  void paint(QPainter& painter) override {
    painter.setPen(QPen(look::tokens().select, 1.5, Qt::DashLine));
    painter.setBrush(Qt::NoBrush);
    if (m_doing == Doing::Roping) painter.drawPolygon(m_rope);
    if (m_doing == Doing::Boxing) painter.drawRect(QRectF(m_from.at, m_to.at).normalized());
    if (m_doing != Doing::Moving) return;
    for (const rules::Subject& subject : canvas().session().selection.chosen()) {
      const auto item = itemOf(canvas().content(), subject);
      if (item) painter.drawEllipse(canvas().layout().at(*item) + m_to.at - m_from.at, 16, 16);
    }
  }

  [[nodiscard]] std::string_view hint() const override { return canvas().plugs().isHolding() ? "map.hint.plug" : ""; }

 private:
  [[nodiscard]] bool farEnough() const {
    const QPointF way = m_to.at - m_from.at;
    return std::hypot(way.x(), way.y()) >= kDragFrom;
  }

  void begin() {
    if (!m_item) {
      m_doing = m_from.modifiers.testFlag(Qt::AltModifier) ? Doing::Roping : Doing::Boxing;
      m_rope = QPolygonF{m_from.at, m_to.at};
    } else if (m_item->kind == ItemKind::Plug) {
      const HeldPlug plug = canvas().layout().plugs[static_cast<std::size_t>(m_item->index)].plug;
      m_doing = canvas().plugs().pickUp(plug, m_to.at) ? Doing::Plugging : Doing::Nothing;
    } else {
      m_doing = Doing::Moving;
    }
  }

  void hover(const ToolPointer& pointer) {
    const auto item = canvas().itemAt(pointer.at);
    const bool isPlug = item && item->kind == ItemKind::Plug;
    canvas().setCursor(isPlug ? Qt::OpenHandCursor : item ? Qt::PointingHandCursor : Qt::ArrowCursor);
    canvas().state().hover = item;
    if (canvas().plugs().isHolding()) canvas().plugs().moveTo(pointer.at);
  }

  void finishMove() {
    const QPointF way = m_to.metres - m_from.metres;
    canvas().apply(moveThings(canvas().session().document.site(), canvas().session().selection.chosen(),
                              canvas().hookupsShown(), {way.x(), way.y()}));
  }

  // What lies under everything else: the room, or nothing.
  void chooseRoom() {
    const auto room = canvas().roomAt(m_to.at);
    if (!room) return canvas().session().selection.clear();
    canvas().choose(*room, m_to.modifiers.testFlag(Qt::ShiftModifier));
    canvas().state().focus = room;
  }

  // With Shift they join what is chosen.
  void chooseIn(const QPolygonF& area) {
    std::vector<rules::Subject> subjects;
    if (m_from.modifiers.testFlag(Qt::ShiftModifier)) subjects = canvas().session().selection.chosen();
    canvas().layout().index.forEachIn(area.boundingRect(), [&](const HitEntry& entry) {
      const auto subject = subjectOf(canvas().content(), entry.item);
      if (!subject || !area.containsPoint(entry.at, Qt::OddEvenFill)) return;
      if (std::find(subjects.begin(), subjects.end(), *subject) == subjects.end()) subjects.push_back(*subject);
    });
    canvas().session().selection.choose(std::move(subjects));
  }

  // One undo step for as long as the same things are nudged.
  bool nudge(const QKeyEvent& event) {
    Shift shift;
    if (event.key() == Qt::Key_Left) shift.rightM = -1;
    if (event.key() == Qt::Key_Right) shift.rightM = 1;
    if (event.key() == Qt::Key_Up) shift.downM = -1;
    if (event.key() == Qt::Key_Down) shift.downM = 1;
    const auto& chosen = canvas().session().selection.chosen();
    if (chosen.empty() || (shift.rightM == 0 && shift.downM == 0)) return false;
    const double step = event.modifiers().testFlag(Qt::ShiftModifier) ? kFarNudgeM : kNudgeM;
    shift = {shift.rightM * step, shift.downM * step};
    QString who = QStringLiteral("nudge");
    for (const rules::Subject& subject : chosen) who += QLatin1Char(' ') + QString::fromStdString(subject.id);
    canvas().apply(moveThings(canvas().session().document.site(), chosen, canvas().hookupsShown(), shift), who);
    return true;
  }

  // The names go to the clipboard, so that what is pasted is what was copied last, here or elsewhere.
  bool copy() {
    m_copied = canvas().session().selection.chosen();
    QStringList names;
    for (const rules::Subject& subject : m_copied) {
      if (const auto item = itemOf(canvas().content(), subject)) names << canvas().nameOf(*item);
    }
    QGuiApplication::clipboard()->setText(names.join(QLatin1Char('\n')));
    return true;
  }

  void chooseMachineOfPlug() {
    const int machine = canvas().layout().plugs[static_cast<std::size_t>(m_item->index)].machine;
    if (machine >= 0) canvas().choose({ItemKind::Machine, machine}, false);
  }

  // Of the machine that is focused or chosen, the plug that goes into the wall or cord.
  bool pickUpByKey() {
    auto item = canvas().state().focus;
    if (!item || item->kind != ItemKind::Machine) {
      const auto single = canvas().session().selection.single();
      item = single ? itemOf(canvas().content(), *single) : std::nullopt;
    }
    if (!item || item->kind != ItemKind::Machine) return false;
    for (const MapPlug& plug : canvas().layout().plugs) {
      if (plug.machine != item->index || !std::holds_alternative<MachinePlug>(plug.plug)) continue;
      if (canvas().plugs().pickUp(plug.plug, plug.at)) canvas().state().showFocus = true;
      return true;
    }
    return false;
  }

  bool paste() {
    const QMimeData* elsewhere = QGuiApplication::clipboard()->mimeData();
    if (elsewhere != nullptr && (elsewhere->hasImage() || elsewhere->hasUrls())) {
      emit canvas().pictureWanted();
      return true;
    }
    const site::Edit edit = copyOf(canvas().session().document.site(), m_copied);
    if (edit.changes.empty()) return false;
    if (!canvas().apply(edit)) return true;
    if (const auto added = addedBy(edit)) canvas().session().selection.choose({*added});
    return true;
  }

  Doing m_doing = Doing::Nothing;
  ToolPointer m_from{};
  ToolPointer m_to{};
  QPolygonF m_rope;  // drawn round things, in pixels
  std::optional<ItemRef> m_item;
  std::vector<rules::Subject> m_copied;
};

}  // namespace

std::unique_ptr<MapTool> selectTool(MapCanvas& canvas) { return std::make_unique<SelectTool>(canvas); }

}  // namespace cordreach::app
