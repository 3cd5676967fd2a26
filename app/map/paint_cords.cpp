// SPDX-License-Identifier: GPL-3.0-or-later
// Cords: width is copper, colour is the conductor's temperature; couplings as blocks, what lies coiled as loops.
#include <QPainter>
#include <QPainterPath>
#include <algorithm>

#include "look/temperature_ramp.h"
#include "map/map_paint.h"
#include "rules/finding.h"

namespace cordreach::app {
namespace {

QColor colourOf(const MapCordPart& part) {
  const look::Tokens& tokens = look::tokens();
  if (part.beyondModel) return look::temperatureColor(units::Temperature::fromCelsius(100.0), tokens.dark);
  return part.conductor ? look::temperatureColor(*part.conductor, tokens.dark) : tokens.line;
}

bool isCoiled(tables::Laying laying) { return laying == tables::Laying::Coiled || laying == tables::Laying::Reel; }

QPainterPath pathOf(const QPolygonF& line) {
  QPainterPath path;
  path.addPolygon(line);
  return path;
}

// Three turns beside the cord, near the end that the machine is on.
QPainterPath coilOf(const QPolygonF& line) {
  QPainterPath path;
  const QPointF middle = pointAlong(line, 0.72);
  for (int turn = 0; turn < 3; ++turn) {
    path.addEllipse(middle + QPointF(5.0 * (turn - 1), 0), look::scaled(10), look::scaled(10));
  }
  return path;
}

void strokePart(QPainter& painter, const QPolygonF& line, const QPen& pen) {
  painter.setPen(pen);
  painter.setBrush(Qt::NoBrush);
  painter.drawPath(pathOf(line));
}

void strokeCoil(QPainter& painter, const QPolygonF& line, const MapCordPart& part) {
  if (!isCoiled(part.laying)) return;
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(look::tokens().room, 4));
  painter.drawPath(coilOf(line));
  painter.setPen(QPen(colourOf(part), 2));
  painter.drawPath(coilOf(line));
}

// What hangs on a loose plug is drawn with it.
void paintCord(QPainter& painter, const PaintScene& scene, std::size_t i) {
  const MapCord& cord = scene.content.cords[i];
  const auto& lines = scene.layout.cords[i].curve.parts;
  if (lines.empty()) return;
  const HeldState* loose = scene.state.loosePlug();
  const std::size_t count = loose != nullptr ? firstPartBehind(cord, loose->plug) : lines.size();
  if (count >= lines.size()) return paintCordParts(painter, cord.parts, lines);
  const auto end = static_cast<std::ptrdiff_t>(count);
  paintCordParts(painter, {cord.parts.begin(), cord.parts.begin() + end}, {lines.begin(), lines.begin() + end});
}

// The block of a plug or coupling, 16 × 9.
void paintBlock(QPainter& painter, const QPointF& at, double angle, bool prongs) {
  const double wide = look::scaled(prongs ? 11 : 16);
  const double high = look::scaled(9);
  painter.save();
  painter.translate(at);
  painter.rotate(angle);
  painter.setPen(QPen(look::tokens().room, 1));
  painter.setBrush(look::tokens().ink);
  painter.drawRoundedRect(QRectF(-wide / 2, -high / 2, wide, high), 2, 2);
  if (prongs) {
    painter.setPen(QPen(look::tokens().ink, 1.5, Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(QPointF(-wide / 2, -2.2), QPointF(-wide / 2 - 4, -2.2));
    painter.drawLine(QPointF(-wide / 2, 2.2), QPointF(-wide / 2 - 4, 2.2));
  }
  painter.restore();
}

void paintPlug(QPainter& painter, const PaintScene& scene, const MapPlug& plug) {
  const bool hangs = plug.cord < 0;
  if (hangs) {
    painter.setPen(QPen(look::tokens().line, 3, Qt::SolidLine, Qt::RoundCap));
    const QPointF machine = scene.layout.machines[static_cast<std::size_t>(plug.machine)];
    painter.drawLine(machine + QPointF(plug.at.x() - machine.x(), look::scaled(kMachineRadius - 4)), plug.at);
  }
  const bool inExtension = !hangs && std::holds_alternative<MachinePlug>(plug.plug) &&
                           scene.content.cords[static_cast<std::size_t>(plug.cord)].parts.size() > 1;
  paintBlock(painter, plug.at, hangs ? -90 : plug.angleDegrees, !inExtension);
}

}  // namespace

void paintCordParts(QPainter& painter, const std::vector<MapCordPart>& parts, const std::vector<QPolygonF>& lines) {
  const std::size_t count = std::min(parts.size(), lines.size());
  for (std::size_t k = 0; k < count; ++k) {
    const double width = cordWidth(parts[k].copperMm2) + 4;
    strokePart(painter, lines[k], QPen(look::tokens().room, width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  }
  for (std::size_t k = 0; k < count; ++k) {
    QPen pen(colourOf(parts[k]), cordWidth(parts[k].copperMm2), Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
    if (parts[k].laying == tables::Laying::Covered) pen.setDashPattern({3, 1});
    if (parts[k].laying == tables::Laying::Covered) pen.setCapStyle(Qt::FlatCap);
    strokePart(painter, lines[k], pen);
    strokeCoil(painter, lines[k], parts[k]);
  }
}

std::size_t firstPartBehind(const MapCord& cord, const HeldPlug& plug) {
  const std::size_t none = cord.parts.size();
  if (const auto* own = std::get_if<MachinePlug>(&plug)) return cord.plug == *own && none > 0 ? none - 1 : none;
  const site::ExtensionUseId& use = std::get<ExtensionPlug>(plug).use;
  for (std::size_t k = 0; k < none; ++k) {
    if (cord.parts[k].use == use) return k;
  }
  return none;
}

void paintCords(QPainter& painter, const PaintScene& scene) {
  for (std::size_t i = 0; i < scene.content.cords.size(); ++i) paintCord(painter, scene, i);
  if (scene.layout.symbolPx < kDotBelow) return;
  const HeldState* loose = scene.state.loosePlug();
  for (const MapPlug& plug : scene.layout.plugs) {
    const bool isLoose = loose != nullptr && loose->plug == plug.plug;
    const bool isBehind = loose != nullptr && plug.cord >= 0 && std::holds_alternative<ExtensionPlug>(loose->plug) &&
                          firstPartBehind(scene.content.cords[static_cast<std::size_t>(plug.cord)], loose->plug) == 0;
    if (!isLoose && !isBehind) paintPlug(painter, scene, plug);
  }
}

}  // namespace cordreach::app
