// SPDX-License-Identifier: GPL-3.0-or-later
// Labels, severity marks, and everything that shows what is chosen, focused, possible or held.
#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <array>

#include "look/severity_mark.h"
#include "look/temperature_ramp.h"
#include "map/map_paint.h"

namespace cordreach::app {
namespace {

QColor colourOf(LabelInk ink, bool fresh) {
  const look::Tokens& tokens = look::tokens();
  switch (ink) {
    case LabelInk::Strong:
      return tokens.ink;
    case LabelInk::Quiet:
      return tokens.ink2;
    case LabelInk::Faint:
      return tokens.ink3;
    case LabelInk::Figure:
      return fresh ? tokens.ink : tokens.ink3;
  }
  return tokens.ink;
}

double widthOf(const LabelLine& line) { return sizeOf({line}).width(); }

// Round the letters, at half and whole distance; cheaper than stroking their outlines at every repaint.
constexpr std::array<QPointF, 12> kRim{{{-2, 0},
                                        {2, 0},
                                        {0, -2},
                                        {0, 2},
                                        {-1.5, -1.5},
                                        {1.5, -1.5},
                                        {-1.5, 1.5},
                                        {1.5, 1.5},
                                        {-1, 0},
                                        {1, 0},
                                        {0, -1},
                                        {0, 1}}};
constexpr std::size_t kMostHalos = 300;  // labels; with more of them nobody reads for beauty

bool hasLabel(const PaintScene& scene, const ItemRef& item) {
  for (const MapLabel& label : scene.words.labels) {
    if (label.owner == item) return true;
  }
  return false;
}

// What found no room shows its words while it is pointed at or focused.
void paintTip(QPainter& painter, const PaintScene& scene, const ItemRef& item) {
  if (hasLabel(scene, item)) return;
  const auto lines = linesOf(scene.content, item);
  if (lines.empty()) return;
  QRectF box(scene.layout.at(item) + QPointF(16, -8), sizeOf(lines));
  if (box.right() > scene.visible.right() - 8) box.moveRight(scene.layout.at(item).x() - 16);
  box.moveTop(std::clamp(box.top(), scene.visible.top() + 6, scene.visible.bottom() - box.height() - 6));
  box.moveLeft(std::max(box.left(), scene.visible.left() + 8));
  painter.setPen(QPen(look::tokens().line, 1));
  painter.setBrush(look::tokens().sheet);
  painter.drawRoundedRect(box.adjusted(-5, -3, 5, 3), 3, 3);
  paintLabel(painter, scene, {lines, box, item});
}

void outlineRoom(QPainter& painter, const PaintScene& scene, const ItemRef& item) {
  QPolygonF outline = scene.content.rooms[static_cast<std::size_t>(item.index)].outline;
  for (QPointF& corner : outline) corner *= scene.layout.scale;
  painter.setBrush(Qt::NoBrush);
  painter.drawPolygon(outline);
}

double ringRadius(const PaintScene& scene, const ItemRef& item, double radius) {
  if (item.kind == ItemKind::Machine) return look::scaled(kMachineRadius + 4);
  return scene.layout.symbolPx < kDotBelow ? radius * 0.6 : look::scaled(radius);
}

void paintPossible(QPainter& painter, const PaintScene& scene, const HeldState& held) {
  const look::Tokens& tokens = look::tokens();
  const double radius = ringRadius(scene, {ItemKind::Outlet, 0}, 14);
  for (std::size_t i = 0; i < held.possible.size() && i < scene.layout.outlets.size(); ++i) {
    if (held.possible[i] == 0 || !scene.visible.contains(scene.layout.outlets[i])) continue;
    const bool isOver = held.over == static_cast<int>(i);
    painter.setPen(QPen(tokens.select, isOver ? 2.5 : 1.5));
    painter.setBrush(tokens.selbg);
    painter.drawEllipse(scene.layout.outlets[i], radius, radius);
  }
}

void paintReach(QPainter& painter, const PaintScene& scene) {
  const double radius = ringRadius(scene, {ItemKind::Outlet, 0}, 14);
  painter.setPen(QPen(look::tokens().select, 1.5));
  painter.setBrush(look::tokens().selbg);
  for (std::size_t i = 0; i < scene.state.reach.size() && i < scene.layout.outlets.size(); ++i) {
    if (scene.state.reach[i] != 0) painter.drawEllipse(scene.layout.outlets[i], radius, radius);
  }
}

// What the chosen breakers feed.
void paintFed(QPainter& painter, const PaintScene& scene) {
  const auto isFed = [&](const site::CircuitId& circuit) {
    const rules::Subject it{rules::SubjectKind::Circuit, circuit.text()};
    return std::find(scene.state.chosen.begin(), scene.state.chosen.end(), it) != scene.state.chosen.end();
  };
  const auto ring = [&](const ItemRef& item) {
    const double radius = ringRadius(scene, item, 14);
    painter.drawEllipse(scene.layout.at(item), radius, radius);
  };
  painter.setPen(QPen(look::tokens().select, 1.5));
  painter.setBrush(look::tokens().selbg);
  for (std::size_t i = 0; i < scene.content.outlets.size(); ++i) {
    const auto& circuits = scene.content.outlets[i].circuits;
    if (std::any_of(circuits.begin(), circuits.end(), isFed)) ring({ItemKind::Outlet, static_cast<int>(i)});
  }
  for (std::size_t i = 0; i < scene.content.loads.size(); ++i) {
    if (isFed(scene.content.loads[i].circuit)) ring({ItemKind::Load, static_cast<int>(i)});
  }
  for (std::size_t i = 0; i < scene.content.machines.size(); ++i) {
    const auto& circuit = scene.content.machines[i].circuit;
    if (circuit && isFed(*circuit)) ring({ItemKind::Machine, static_cast<int>(i)});
  }
}

// Plugs that are warm in their outlets.
void paintPlugHeat(QPainter& painter, const PaintScene& scene) {
  const double radius = ringRadius(scene, {ItemKind::Outlet, 0}, 15);
  for (std::size_t i = 0; i < scene.content.outlets.size(); ++i) {
    const auto& heat = scene.content.outlets[i].heat;
    if (!heat) continue;
    painter.setPen(QPen(look::temperatureColor(*heat, look::tokens().dark), 4));
    painter.setBrush(look::tokens().sheet);
    painter.drawEllipse(scene.layout.outlets[i], radius, radius);
  }
}

void paintRing(QPainter& painter, const PaintScene& scene, const ShowRing& ring) {
  const auto item = itemOf(scene.content, ring.subject);
  if (!item) return;
  const double radius = ringRadius(scene, *item, 18) + look::scaled(26) * (1 - ring.progress);
  QColor ink = look::tokens().select;
  ink.setAlphaF(static_cast<float>(1 - ring.progress * ring.progress));
  painter.setPen(QPen(ink, 3.5));
  painter.setBrush(Qt::NoBrush);
  painter.drawEllipse(scene.layout.at(*item), radius, radius);
}

void paintProposal(QPainter& painter, const PaintScene& scene, const ProposedMove& move) {
  const auto outlet = static_cast<std::size_t>(move.outlet);
  const auto machine = static_cast<std::size_t>(move.machine);
  QPen pen(look::tokens().select, 2);
  pen.setDashPattern({2.5, 2});
  painter.setPen(pen);
  painter.setBrush(Qt::NoBrush);
  const double radius = look::scaled(14);
  painter.drawEllipse(scene.layout.outlets[outlet], radius, radius);
  const CordCurve curve = cordCurve({scene.layout.outlets[outlet],
                                     scene.content.outlets[outlet].inward,
                                     scene.layout.machines[machine],
                                     static_cast<double>(look::scaled(kMachineRadius)),
                                     {1.0},
                                     1});
  QPainterPath path;
  path.addPolygon(curve.parts.front());
  painter.drawPath(path);
}

}  // namespace

void paintLabel(QPainter& painter, const PaintScene& scene, const MapLabel& label) {
  const bool hovered = label.owner && scene.state.hover == label.owner;
  const bool halo = scene.words.labels.size() <= kMostHalos;
  if (label.leader) {
    painter.setPen(QPen(look::tokens().line, 1));
    painter.drawLine(*label.leader);
  }
  double y = label.box.top();
  for (const LabelLine& line : label.lines) {
    const double x = label.leftOfAnchor ? label.box.right() - widthOf(line) : label.box.left();
    const bool bolder = hovered && line.type == look::Type::Caption;
    const look::Type type = bolder ? look::Type::CaptionBold : line.type;
    painter.setPen(colourOf(line.ink, scene.content.fresh));
    if (halo) {
      scene.texts.drawWithHalo(painter, {x, y}, line.text, type, look::tokens().sheet);
    } else {
      scene.texts.draw(painter, {x, y}, line.text, type);
    }
    y += look::scaled(line.type == look::Type::Small ? 13 : 14.5);
  }
}

void TextStamps::drawWithHalo(QPainter& painter, const QPointF& topLeft, const QString& text, look::Type type,
                              const QColor& halo) {
  const QPen ink = painter.pen();
  painter.setPen(halo);
  for (const QPointF& off : kRim) draw(painter, topLeft + off, text, type);
  painter.setPen(ink);
  draw(painter, topLeft, text, type);
}

void TextStamps::draw(QPainter& painter, const QPointF& topLeft, const QString& text, look::Type type) {
  const QString key = QChar(static_cast<char16_t>(u'a' + static_cast<int>(type))) + text;
  painter.setFont(look::font(type));
  auto found = m_texts.find(key);
  if (found == m_texts.end()) {
    if (m_texts.size() > 20000) m_texts.clear();
    QStaticText made(text);
    made.setTextFormat(Qt::PlainText);
    made.prepare(QTransform(), painter.font());
    found = m_texts.insert(key, made);
  }
  painter.drawStaticText(topLeft, *found);
}

void paintWords(QPainter& painter, const PaintScene& scene) {
  for (const MapLabel& label : scene.words.labels) {
    if (scene.visible.intersects(label.box)) paintLabel(painter, scene, label);
  }
  for (const MapMark& mark : scene.words.marks) {
    if (scene.visible.intersects(mark.box)) {
      look::paintSeverityMark(painter, mark.box, mark.severity, look::tokens().dark);
    }
  }
}

void paintUnder(QPainter& painter, const PaintScene& scene) {
  const look::Tokens& tokens = look::tokens();
  if (scene.state.held) return paintPossible(painter, scene, *scene.state.held);
  paintReach(painter, scene);
  paintPlugHeat(painter, scene);
  paintFed(painter, scene);
  if (scene.state.hover && scene.state.hover->kind != ItemKind::Plug) {
    painter.setPen(Qt::NoPen);
    painter.setBrush(tokens.selbg);
    const double radius = ringRadius(scene, *scene.state.hover, 14);
    painter.drawEllipse(scene.layout.at(*scene.state.hover), radius, radius);
  }
  painter.setPen(QPen(tokens.select, 2.5));
  painter.setBrush(tokens.selbg);
  for (const rules::Subject& subject : scene.state.chosen) {
    const auto item = itemOf(scene.content, subject);
    if (!item || item->kind == ItemKind::Machine) continue;
    if (item->kind == ItemKind::Room) {
      outlineRoom(painter, scene, *item);
      painter.setBrush(tokens.selbg);
      continue;
    }
    const double radius = ringRadius(scene, *item, 15);
    painter.drawEllipse(scene.layout.at(*item), radius, radius);
  }
}

void paintOver(QPainter& painter, const PaintScene& scene) {
  if (scene.state.proposed && !scene.state.held) paintProposal(painter, scene, *scene.state.proposed);
  if (scene.state.hover) paintTip(painter, scene, *scene.state.hover);
  if (scene.state.focus && scene.state.showFocus) {
    if (!scene.state.held) paintTip(painter, scene, *scene.state.focus);
    painter.setPen(QPen(look::tokens().select, 2));
    painter.setBrush(Qt::NoBrush);
    if (scene.state.focus->kind == ItemKind::Room) {
      outlineRoom(painter, scene, *scene.state.focus);
    } else {
      const double radius =
          ringRadius(scene, *scene.state.focus, 18) + (scene.state.focus->kind == ItemKind::Machine ? 2 : 0);
      painter.drawEllipse(scene.layout.at(*scene.state.focus), radius, radius);
    }
  }
  if (scene.state.ring) paintRing(painter, scene, *scene.state.ring);
  paintHeld(painter, scene);
}

}  // namespace cordreach::app
