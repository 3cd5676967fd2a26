// SPDX-License-Identifier: GPL-3.0-or-later
// The plug in the hand or on its way back: its cord hangs from the machine, or from where it ends on this floor when
// that is elsewhere.
#include <QPainter>
#include <algorithm>

#include "map/map_paint.h"

namespace cordreach::app {
namespace {

std::vector<QPolygonF> hangingLines(const HeldState& held, const std::vector<MapCordPart>& parts,
                                    const QPointF& machine, double clearance) {
  CurveWish wish{held.tip, {}, machine, clearance, {}, 0};
  for (const MapCordPart& part : parts) wish.lengthsM.push_back(std::max(part.lengthM, 0.1));
  return cordCurve(wish).parts;
}

// With the name of the floor that the machine is on.
void paintStub(QPainter& painter, const PaintScene& scene, const HeldState& held) {
  const QPointF end = held.tip + QPointF(-0.5, 1) * look::scaled(40);
  paintCordParts(painter, {held.ownCord}, hangingLines(held, {held.ownCord}, end, 0));
  const std::vector<LabelLine> lines{{held.machineFloor, look::Type::Small, LabelInk::Quiet}};
  const QSizeF size = sizeOf(lines);
  paintLabel(painter, scene, {lines, QRectF(end - QPointF(size.width() / 2, -4), size)});
}

void paintHanging(QPainter& painter, const PaintScene& scene, const HeldState& held) {
  const double clearance = look::scaled(kMachineRadius);
  bool isDrawn = false;
  for (const MapCord& cord : scene.content.cords) {
    const std::size_t first = firstPartBehind(cord, held.plug);
    if (first >= cord.parts.size() || cord.machine < 0) continue;
    const std::vector<MapCordPart> parts(cord.parts.begin() + static_cast<std::ptrdiff_t>(first), cord.parts.end());
    const QPointF machine = scene.layout.machines[static_cast<std::size_t>(cord.machine)];
    paintCordParts(painter, parts, hangingLines(held, parts, machine, clearance));
    isDrawn = true;
  }
  if (isDrawn) return;
  if (held.machine < 0) return paintStub(painter, scene, held);
  const QPointF machine = scene.layout.machines[static_cast<std::size_t>(held.machine)];
  paintCordParts(painter, {held.ownCord}, hangingLines(held, {held.ownCord}, machine, clearance));
}

void paintAnswer(QPainter& painter, const PaintScene& scene, const HeldState& held) {
  const look::Tokens& tokens = look::tokens();
  const QString words = held.refusal.isEmpty() ? held.contact : held.refusal;
  if (words.isEmpty()) return;
  const std::vector<LabelLine> lines{{words, look::Type::CaptionBold, LabelInk::Strong}};
  QRectF box(held.tip + QPointF(14, 16), sizeOf(lines));
  if (box.right() > scene.visible.right() - 8) box.moveRight(held.tip.x() - 14);
  if (box.bottom() > scene.visible.bottom() - 8) box.moveBottom(held.tip.y() - 16);
  box.moveLeft(std::max(box.left(), scene.visible.left() + 10));
  painter.setPen(QPen(held.refusal.isEmpty() ? tokens.select : tokens.line, 1.5));
  painter.setBrush(tokens.sheet);
  painter.drawRoundedRect(box.adjusted(-7, -4, 7, 4), 4, 4);
  paintLabel(painter, scene, {lines, box});
}

}  // namespace

void paintHeld(QPainter& painter, const PaintScene& scene) {
  const look::Tokens& tokens = look::tokens();
  if (const HeldState* loose = scene.state.loosePlug()) {
    paintHanging(painter, scene, *loose);
    painter.setPen(QPen(tokens.room, 1));
    painter.setBrush(tokens.ink);
    const QSizeF size(look::scaled(16), look::scaled(10));
    painter.drawRoundedRect(QRectF(loose->tip - QPointF(size.width() / 2, size.height() / 2), size), 2, 2);
  }
  if (!scene.state.held) return;
  const HeldState& held = *scene.state.held;
  if (held.over) {
    painter.setPen(QPen(tokens.select, 2.5));
    painter.setBrush(Qt::NoBrush);
    const QPointF& at = scene.layout.outlets[static_cast<std::size_t>(*held.over)];
    painter.drawEllipse(at, look::scaled(17), look::scaled(17));
  }
  paintAnswer(painter, scene, held);
}

}  // namespace cordreach::app
