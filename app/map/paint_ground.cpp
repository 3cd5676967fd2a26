// SPDX-License-Identifier: GPL-3.0-or-later
// Picture, rooms, walls and wiring.
#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>
#include <map>

#include "look/temperature_ramp.h"
#include "map/map_paint.h"

namespace cordreach::app {
namespace {

constexpr std::size_t kMostArcs = 500;  // with more than these in view a run is a straight line

QLineF scaledLine(const MapWall& wall, double scale) { return {wall.from * scale, wall.to * scale}; }

void paintPicture(QPainter& painter, const PaintScene& scene) {
  if (scene.picture == nullptr || scene.picture->isNull()) return;
  const QRectF frame(scene.pictureFrame.topLeft() * scene.layout.scale, scene.pictureFrame.size() * scene.layout.scale);
  painter.save();
  painter.translate(frame.topLeft());
  painter.rotate(scene.pictureTurn);
  painter.setOpacity(1.0 - scene.pictureDim);
  painter.setRenderHint(QPainter::SmoothPixmapTransform);
  painter.drawPixmap(QRectF(QPointF(), frame.size()), *scene.picture, QRectF(scene.picture->rect()));
  painter.restore();
}

void paintRooms(QPainter& painter, const PaintScene& scene) {
  const look::Tokens& tokens = look::tokens();
  const double scale = scene.layout.scale;
  painter.setPen(Qt::NoPen);
  for (std::size_t i = 0; i < scene.content.rooms.size(); ++i) {
    const MapRoom& room = scene.content.rooms[i];
    const QRectF box = room.outline.boundingRect();
    if (!scene.visible.intersects(QRectF(box.topLeft() * scale, box.size() * scale))) continue;
    const bool isChosen = scene.isChosen({ItemKind::Room, static_cast<int>(i)});
    painter.setBrush(isChosen ? tokens.selbg : room.corridor ? tokens.well : tokens.room);
    QPolygonF outline = room.outline;
    for (QPointF& point : outline) point *= scale;
    painter.drawPolygon(outline);
  }
}

// Where people walk: a light line of dashes and dots.
void paintCorridorLines(QPainter& painter, const PaintScene& scene) {
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(look::tokens().line, 2.0, Qt::DashDotLine));
  for (const QPolygonF& line : scene.content.corridorLines) {
    QPolygonF drawn = line;
    for (QPointF& point : drawn) point *= scene.layout.scale;
    if (scene.visible.intersects(drawn.boundingRect().adjusted(-3, -3, 3, 3))) painter.drawPolyline(drawn);
  }
}

void paintWalls(QPainter& painter, const PaintScene& scene) {
  for (const bool outer : {false, true}) {
    QVector<QLineF> lines;
    for (const MapWall& wall : scene.content.walls) {
      if (wall.outer != outer) continue;
      const QLineF line = scaledLine(wall, scene.layout.scale);
      if (scene.visible.intersects(QRectF(line.p1(), line.p2()).normalized().adjusted(-5, -5, 5, 5))) lines << line;
    }
    const double width = std::clamp(scene.layout.scale * 0.25, 1.5, outer ? 5.0 : 3.5);
    painter.setPen(QPen(look::tokens().wall, width, Qt::SolidLine, Qt::SquareCap));
    painter.drawLines(lines);
  }
}

// A shallow arc, as drawings show wiring between outlets.
void addArc(QPainterPath& path, const QPointF& from, const QPointF& to) {
  const QPointF across = to - from;
  const double length = std::hypot(across.x(), across.y());
  if (length < 1.0) return;
  const QPointF side = QPointF(-across.y(), across.x()) * std::min(0.12, 22.0 / length);
  path.moveTo(from);
  path.quadTo((from + to) / 2 + side, to);
}

QPointF startOf(const PaintScene& scene, const MapRun& run) {
  return scene.layout.outlets[static_cast<std::size_t>(run.from)];
}

void addRun(QPainterPath& path, QVector<QLineF>& lines, bool arcs, const PaintScene& scene, const MapRun& run) {
  const QPointF to = scene.layout.outlets[static_cast<std::size_t>(run.to)];
  if (!run.path.isEmpty()) {
    QPolygonF drawn = run.path;
    for (QPointF& point : drawn) point *= scene.layout.scale;
    path.addPolygon(drawn);
  } else if (arcs) {
    addArc(path, startOf(scene, run), to);
  } else {
    lines << QLineF(startOf(scene, run), to);
  }
}

bool runIsVisible(const PaintScene& scene, const MapRun& run) {
  if (run.from < 0) return scene.visible.contains(scene.layout.outlets[static_cast<std::size_t>(run.to)]);
  const QRectF box = QRectF(startOf(scene, run), scene.layout.outlets[static_cast<std::size_t>(run.to)]).normalized();
  return scene.visible.intersects(box.adjusted(-24, -24, 24, 24));
}

void paintArrow(QPainter& painter, const QPointF& from, const QPointF& tip, double size) {
  const double angle = std::atan2(tip.y() - from.y(), tip.x() - from.x());
  const auto back = [&](double turn) { return tip - QPointF(std::cos(angle + turn), std::sin(angle + turn)) * size; };
  painter.drawLine(from, tip);
  painter.setBrush(painter.pen().color());
  painter.drawPolygon(QPolygonF() << tip << back(0.42) << back(-0.42));
  painter.setBrush(Qt::NoBrush);
}

void paintHomeRun(QPainter& painter, const PaintScene& scene, const MapRun& run, bool chosen) {
  const QPointF from = scene.layout.outlets[static_cast<std::size_t>(run.to)];
  if (!run.path.isEmpty()) {
    QPolygonF drawn = run.path;
    for (QPointF& point : drawn) point *= scene.layout.scale;
    painter.drawPolyline(drawn);
  } else if (chosen && run.panel) {
    QPainterPath path;
    addArc(path, *run.panel * scene.layout.scale, from);
    painter.drawPath(path);
    return;
  }
  paintArrow(painter, from, homeRunTip(scene.content, scene.layout, run), 7);
}

constexpr double kWarmWidth = 3.5;

// Warm wire in its temperature, else the ink of its rank.
QPen penOf(const MapRun& run, bool chosen) {
  const look::Tokens& tokens = look::tokens();
  if (run.heat) {
    return {look::temperatureColor(*run.heat, tokens.dark), kWarmWidth, Qt::SolidLine, Qt::RoundCap};
  }
  return {chosen ? tokens.ink : tokens.line, chosen ? 2.0 : 1.2, Qt::SolidLine, Qt::RoundCap};
}

// All of one rank and, of warm ones, of one circuit.
void paintRuns(QPainter& painter, const PaintScene& scene, const std::vector<const MapRun*>& runs, bool chosen) {
  if (runs.empty()) return;
  const look::Tokens& tokens = look::tokens();
  const bool arcs = chosen || runs.size() <= kMostArcs;
  for (const bool guessed : {false, true}) {
    QPainterPath path;
    QVector<QLineF> lines;
    for (const MapRun* run : runs) {
      if (run->from >= 0 && run->guessed == guessed) addRun(path, lines, arcs, scene, *run);
    }
    QPen pen = penOf(*runs.front(), chosen);
    if (guessed) pen.setDashPattern({7 / pen.widthF(), 4 / pen.widthF()});
    painter.setPen(pen);
    painter.setBrush(Qt::NoBrush);
    painter.drawPath(path);
    if (lines.isEmpty()) continue;
    painter.setRenderHint(QPainter::Antialiasing, false);  // thousands of short lines: their edges are not seen
    painter.setPen(QPen(tokens.line, 0));
    painter.drawLines(lines);
    painter.setRenderHint(QPainter::Antialiasing, true);
  }
  if (!scene.layout.withText) return;
  painter.setPen(penOf(*runs.front(), chosen));
  for (const MapRun* run : runs) {
    if (run->from < 0) paintHomeRun(painter, scene, *run, chosen);
  }
}

}  // namespace

bool PaintScene::isChosen(const site::CircuitId& circuit) const {
  return std::find(state.circuits.begin(), state.circuits.end(), circuit) != state.circuits.end();
}

bool PaintScene::isChosen(const ItemRef& item) const {
  const auto subject = subjectOf(content, item);
  return subject && std::find(state.chosen.begin(), state.chosen.end(), *subject) != state.chosen.end();
}

void paintGround(QPainter& painter, const PaintScene& scene) {
  painter.setRenderHint(QPainter::Antialiasing, false);
  paintRooms(painter, scene);
  paintPicture(painter, scene);
  painter.setRenderHint(QPainter::Antialiasing, true);
  paintReachArea(painter, scene);
  paintCorridorLines(painter, scene);
  paintWalls(painter, scene);
}

void paintWiring(QPainter& painter, const PaintScene& scene) {
  std::vector<const MapRun*> quiet;
  std::vector<const MapRun*> chosen;
  std::map<site::CircuitId, std::vector<const MapRun*>> warm;
  for (const MapRun& run : scene.content.runs) {
    if (!runIsVisible(scene, run)) continue;
    auto& cold = scene.isChosen(run.circuit) ? chosen : quiet;
    (run.heat ? warm[run.circuit] : cold).push_back(&run);
  }
  paintRuns(painter, scene, quiet, false);
  paintRuns(painter, scene, chosen, true);
  for (const auto& [circuit, runs] : warm) paintRuns(painter, scene, runs, scene.isChosen(circuit));
}

}  // namespace cordreach::app
