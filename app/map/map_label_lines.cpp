// SPDX-License-Identifier: GPL-3.0-or-later
// What the label of each thing says, in full and shortened, and how findings name the thing.
#include <QFontMetricsF>
#include <QHash>
#include <algorithm>
#include <cmath>

#include "map/map_labels.h"

namespace cordreach::app {
namespace {

using look::Type;

// Widths are asked for again at every zoom; shaping them each time would cost more than drawing.
double widthOf(const QString& text, Type type) {
  static QHash<QString, double> widths;
  static double textScale = 0;
  if (textScale != look::present().textScale || widths.size() > 20000) {
    widths.clear();
    textScale = look::present().textScale;
  }
  const QString key = QChar(static_cast<char16_t>(u'a' + static_cast<int>(type))) + text;
  const auto found = widths.constFind(key);
  if (found != widths.constEnd()) return *found;
  return *widths.insert(key, QFontMetricsF(look::font(type)).horizontalAdvance(text));
}

}  // namespace

QSizeF sizeOf(const std::vector<LabelLine>& lines) {
  double width = 0;
  double height = 0;
  for (const LabelLine& line : lines) {
    width = std::max(width, widthOf(line.text, line.type));
    height += look::scaled(line.type == Type::Small ? 13 : 14.5);
  }
  return {std::ceil(width) + 2, height};
}

std::vector<LabelLine> linesOf(const MapContent& content, const ItemRef& item) {
  const auto i = static_cast<std::size_t>(item.index);
  std::vector<LabelLine> lines;
  const auto add = [&](const QString& text, Type type, LabelInk ink) {
    if (!text.isEmpty()) lines.push_back({text, type, ink});
  };
  if (item.kind == ItemKind::Outlet) {
    const MapOutlet& outlet = content.outlets[i];
    const QString marks = outlet.marks.isEmpty() ? QString() : QStringLiteral(" ") + outlet.marks;
    add(outlet.label + marks, outlet.traced ? Type::CaptionBold : Type::Caption,
        outlet.look == OutletLook::Unknown ? LabelInk::Quiet : LabelInk::Strong);
    add(outlet.figure, Type::Small, LabelInk::Figure);
  } else if (item.kind == ItemKind::Panel) {
    add(content.panels[i].name, Type::CaptionBold, LabelInk::Strong);
    add(content.panels[i].system, Type::Small, LabelInk::Quiet);
    add(content.panels[i].circuitFigure, Type::CaptionBold, LabelInk::Figure);
    add(content.panels[i].circuitName, Type::Small, LabelInk::Quiet);
  } else if (item.kind == ItemKind::Load) {
    add(content.loads[i].name, Type::Small, LabelInk::Quiet);
    add(content.loads[i].figure, Type::Small, LabelInk::Quiet);
  } else if (item.kind == ItemKind::Machine) {
    add(content.machines[i].name, Type::CaptionBold,
        content.machines[i].outOfService ? LabelInk::Quiet : LabelInk::Strong);
    add(content.machines[i].figure, Type::Caption, LabelInk::Figure);
  } else if (item.kind == ItemKind::Room) {
    add(content.rooms[i].name, Type::RoomName, LabelInk::Faint);
  }
  return lines;
}

// The figure alone; of an outlet its number, which is the last to go.
std::vector<LabelLine> shortLinesOf(const MapContent& content, const ItemRef& item) {
  std::vector<LabelLine> lines = linesOf(content, item);
  if (lines.size() < 2) return {};
  if (item.kind == ItemKind::Outlet) return {lines.front()};
  if (item.kind == ItemKind::Load) return {lines.back()};
  if (item.kind == ItemKind::Panel)
    return lines.size() > 2 ? std::vector<LabelLine>{lines[0], lines[2]} : std::vector<LabelLine>{lines[0]};
  return {lines.back()};
}

std::optional<rules::Subject> subjectOf(const MapContent& content, const ItemRef& item) {
  using rules::SubjectKind;
  const auto i = static_cast<std::size_t>(item.index);
  switch (item.kind) {
    case ItemKind::Outlet:
      return rules::Subject{SubjectKind::Outlet, content.outlets[i].id.text()};
    case ItemKind::Panel:
      return rules::Subject{SubjectKind::Panel, content.panels[i].id.text()};
    case ItemKind::Load:
      return rules::Subject{SubjectKind::FixedLoad, content.loads[i].id.text()};
    case ItemKind::Machine:
      return rules::Subject{SubjectKind::Machine, content.machines[i].id.text()};
    case ItemKind::Room:
      return rules::Subject{SubjectKind::Room, content.rooms[i].id.text()};
    case ItemKind::Plug:
      return std::nullopt;
  }
  return std::nullopt;
}

std::optional<ItemRef> itemOf(const MapContent& content, const rules::Subject& subject) {
  using rules::SubjectKind;
  const auto find = [&](const auto& things, ItemKind kind) -> std::optional<ItemRef> {
    for (std::size_t i = 0; i < things.size(); ++i) {
      if (things[i].id.text() == subject.id) return ItemRef{kind, static_cast<int>(i)};
    }
    return std::nullopt;
  };
  if (subject.kind == SubjectKind::Outlet) return find(content.outlets, ItemKind::Outlet);
  if (subject.kind == SubjectKind::Panel) return find(content.panels, ItemKind::Panel);
  if (subject.kind == SubjectKind::FixedLoad) return find(content.loads, ItemKind::Load);
  if (subject.kind == SubjectKind::Machine) return find(content.machines, ItemKind::Machine);
  if (subject.kind == SubjectKind::Room) return find(content.rooms, ItemKind::Room);
  for (const MapCord& cord : content.cords) {
    if (cord.machine < 0) continue;
    const auto isCord = [&](const MapCordPart& part) { return part.cord && part.cord->text() == subject.id; };
    const bool isIt = (subject.kind == SubjectKind::Hookup && cord.hookup.text() == subject.id) ||
                      (subject.kind == SubjectKind::Cord && std::any_of(cord.parts.begin(), cord.parts.end(), isCord));
    if (isIt) return ItemRef{ItemKind::Machine, cord.machine};
  }
  return std::nullopt;
}

}  // namespace cordreach::app
