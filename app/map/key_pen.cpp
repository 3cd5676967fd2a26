// SPDX-License-Identifier: GPL-3.0-or-later
#include "map/key_pen.h"

#include <QKeyEvent>
#include <QLineF>
#include <QPainter>
#include <array>

#include "map/arrow_keys.h"
#include "map/map_canvas.h"
#include "map/polyline.h"
#include "panels/field_text.h"
#include "panels/names.h"
#include "shell/say.h"

namespace cordreach::app {
namespace {

constexpr std::array kStepsM{0.1, 0.5, 1.0, 5.0};  // the tools keep to tenths of a metre
constexpr double kShortestStepPx = 8;
constexpr double kFarSteps = 5;
constexpr double kArmPx = 22;
constexpr double kGapPx = 4;

QPointF onGrid(const QPointF& metres, double step) {
  return {std::round(metres.x() / step) * step, std::round(metres.y() / step) * step};
}

std::string lengthText(const text::Phrasebook& book, double metres) {
  return exactText(book, std::round(metres * 10) / 10 * units::metre);
}

// The thing that is nearest, else the room.
std::string whatIsAt(const MapCanvas& canvas, const QPointF& plan) {
  const site::Site& site = canvas.session().document.site();
  const auto thing = canvas.itemAt(plan);
  const auto subject = thing ? subjectOf(canvas.content(), *thing) : std::nullopt;
  if (subject) return subjectName(canvas.session().book, site, *subject);
  const auto at = canvas.roomAt(plan);
  const site::Room* room =
      at ? site.find<site::Room>(canvas.content().rooms[static_cast<std::size_t>(at->index)].id) : nullptr;
  if (room == nullptr) return {};
  return canvas.session().book.say("panel.name.room", {{"name", roomName(*room)}});
}

}  // namespace

double KeyPen::stepM() const {
  for (const double step : kStepsM) {
    if (step * m_canvas.scale() >= kShortestStepPx) return step;
  }
  return kStepsM.back();
}

// At what the focus is on, else in the middle of what is seen.
QPointF KeyPen::start() const {
  const auto& focus = m_canvas.state().focus;
  if (focus && m_canvas.state().showFocus) return m_canvas.layout().at(*focus) / m_canvas.scale();
  return onGrid(m_canvas.toPlan(QPointF(m_canvas.width(), m_canvas.height()) / 2) / m_canvas.scale(), stepM());
}

ToolPointer KeyPen::pointer(Qt::KeyboardModifiers modifiers) const {
  return {*m_at * m_canvas.scale(), *m_at, modifiers};
}

bool KeyPen::key(QKeyEvent& event, MapTool& tool) {
  const int key = event.key();
  if (isArrow(key)) {
    moveBy(directionOf(key), tool, event.modifiers());
    return true;
  }
  if (key == Qt::Key_Return || key == Qt::Key_Enter) return setPoint(tool, event.modifiers());
  if (key != Qt::Key_Backspace || !isShown() || !tool.isStroke() || !tool.drawing()) return false;
  tool.cancel();
  follow(tool);
  return true;
}

void KeyPen::moveBy(const QPointF& direction, MapTool& tool, Qt::KeyboardModifiers modifiers) {
  if (!isShown()) m_at = start();
  if (modifiers.testFlag(Qt::ControlModifier)) return goTo(nextSnap(direction).value_or(*m_at), tool, modifiers);
  const double step = stepM() * (modifiers.testFlag(Qt::ShiftModifier) ? kFarSteps : 1.0);
  goTo(toTenths(*m_at + direction * step), tool, modifiers);
}

void KeyPen::goTo(const QPointF& metres, MapTool& tool, Qt::KeyboardModifiers modifiers) {
  m_at = metres;
  m_canvas.keepInSight(*m_at * m_canvas.scale());
  tool.move(pointer(modifiers));
  m_canvas.sayWhere(words(tool));
  m_canvas.update();
}

void KeyPen::follow(MapTool& tool) {
  if (isShown()) goTo(*m_at, tool);
}

// Who draws with the pointer ends by Return, as long as no arrow was used.
bool KeyPen::setPoint(MapTool& tool, Qt::KeyboardModifiers modifiers) {
  if (!isShown() && tool.drawing()) return false;
  if (!isShown()) return goTo(start(), tool, modifiers), true;
  const ToolPointer at = pointer(modifiers);
  if (!tool.isStroke()) {
    tool.press(at);
    tool.release(at);
  } else if (tool.drawing()) {
    tool.release(at);
  } else {
    tool.press(at);
  }
  // A dialog may have come and gone, and the tool with it.
  if (isShown()) goTo(*m_at, tool, modifiers);
  return true;
}

std::optional<QPointF> KeyPen::nextSnap(const QPointF& direction) const {
  const MapContent& content = m_canvas.content();
  const double scale = m_canvas.scale();
  std::optional<QPointF> best;
  double least = 0;
  const auto consider = [&](const QPointF& metres) {
    const auto cost = costOfWay((metres - *m_at) * scale, direction);
    if (!cost || (best && *cost >= least)) return;
    best = metres;
    least = *cost;
  };
  for (const MapWall& wall : content.walls) {
    consider(wall.from);
    consider(wall.to);
  }
  for (const MapRoom& room : content.rooms) {
    for (const QPointF& corner : room.outline) consider(corner);
  }
  for (const QPolygonF& line : content.corridorLines) {
    for (const QPointF& bend : line) consider(bend);
  }
  // Where they are drawn, so that a tool finds them there.
  for (const QPointF& outlet : m_canvas.layout().outlets) consider(outlet / scale);
  for (const QPointF& panel : m_canvas.layout().panels) consider(panel / scale);
  return best;
}

QString KeyPen::words(const MapTool& tool) const {
  const text::Phrasebook& book = m_canvas.session().book;
  base::Arguments said{{"across", lengthText(book, m_at->x())}, {"down", lengthText(book, m_at->y())}};
  const std::string on = whatIsAt(m_canvas, *m_at * m_canvas.scale());
  if (!on.empty()) said.push_back({"on", on});
  const auto drawing = tool.drawing();
  if (drawing) said.push_back({"way", lengthText(book, drawing->length())});
  const QString progress = tool.progress();
  if (!progress.isEmpty()) said.push_back({"progress", progress.toStdString()});
  said.push_back({"next", !tool.isStroke() ? (drawing ? "line" : "point") : drawing ? "end" : "begin"});
  return say(book, "map.pen", said);
}

void KeyPen::paint(QPainter& painter) const {
  if (!isShown()) return;
  const QPointF at = *m_at * m_canvas.scale();
  const double arm = look::scaled(kArmPx);
  const double gap = look::scaled(kGapPx);
  // With a rim of the sheet, so that it is seen over walls and plan pictures too.
  for (const QPen& pen : {QPen(look::tokens().sheet, 5), QPen(look::tokens().select, 2)}) {
    painter.setPen(pen);
    for (const QPointF& way : {QPointF(1, 0), QPointF(-1, 0), QPointF(0, 1), QPointF(0, -1)}) {
      painter.drawLine(at + way * gap, at + way * arm);
    }
  }
}

}  // namespace cordreach::app
