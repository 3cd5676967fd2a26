// SPDX-License-Identifier: GPL-3.0-or-later
#include "map/map_labels.h"

#include <QFontMetricsF>
#include <QHash>
#include <algorithm>
#include <cmath>

#include "map/label_placer.h"

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

class Writer {
 public:
  explicit Writer(const WordsWish& wish) : m_wish(wish), m_chosen(wish.chosen) { m_words.region = wish.region; }

  MapWords write() {
    blockSymbols();
    markMachines();
    if (m_wish.layout.withText) {
      writeMachines();
      writePanels();
      writeCords();
      writeOutlets();
      writeHomeRuns();
      writeLoads();
      writeRooms();
    }
    return std::move(m_words);
  }

 private:
  [[nodiscard]] bool inRegion(const QPointF& at) const { return m_wish.region.contains(at); }
  [[nodiscard]] bool isChosen(const ItemRef& item) const {
    const auto subject = subjectOf(m_wish.content, item);
    return subject && std::find(m_chosen.begin(), m_chosen.end(), *subject) != m_chosen.end();
  }

  void blockSymbols() {
    const QRectF extent = m_wish.content.extent;
    const double scale = m_wish.layout.scale;
    m_placer.confine(QRectF(extent.topLeft() * scale, extent.size() * scale).adjusted(-24, -24, 24, 24));
    for (const MapWall& wall : m_wish.content.walls) {
      const QRectF line = QRectF(wall.from * scale, wall.to * scale).normalized();
      if (m_wish.region.intersects(line.adjusted(-3, -3, 3, 3))) m_placer.discourage(line.adjusted(-3, -3, 3, 3));
    }
    const double half = m_wish.layout.symbolPx * 0.46;
    for (const QPointF& at : m_wish.layout.outlets) {
      if (inRegion(at)) m_placer.block(QRectF(at.x() - half, at.y() - half, 2 * half, 2 * half));
    }
    const double radius = look::scaled(kMachineRadius);
    for (const QPointF& at : m_wish.layout.machines) {
      m_placer.block(QRectF(at.x() - radius, at.y() - radius, 2 * radius, 2 * radius));
    }
    for (const QPointF& at : m_wish.layout.loads) m_placer.block(QRectF(at.x() - 12, at.y() - 12, 24, 24));
    for (const QPointF& at : m_wish.layout.panels) m_placer.block(QRectF(at.x() - 18, at.y() - 8, 36, 16));
    for (const MapPlug& plug : m_wish.layout.plugs) {
      m_placer.block(QRectF(plug.at.x() - 7, plug.at.y() - 7, 14, 14));
    }
    for (const LaidCord& cord : m_wish.layout.cords) {
      for (const QPolygonF& part : cord.curve.parts) {
        for (const QPointF& point : part) m_placer.discourage(QRectF(point.x() - 6, point.y() - 6, 12, 12));
      }
    }
  }

  void mark(const QPointF& middle, double size, rules::Severity severity) {
    if (severity < rules::Severity::Caution) return;
    const double px = look::scaled(size);
    const QRectF box(middle.x() - px / 2, middle.y() - px / 2, px, px);
    m_placer.block(box);
    m_words.marks.push_back({box, severity});
  }

  void markMachines() {
    const double radius = look::scaled(kMachineRadius);
    for (std::size_t i = 0; i < m_wish.content.machines.size(); ++i) {
      mark(m_wish.layout.machines[i] + QPointF(radius, -radius) * 0.82, 20, m_wish.content.machines[i].severity);
    }
    for (std::size_t i = 0; i < m_wish.content.panels.size(); ++i) {
      mark(m_wish.layout.panels[i] + QPointF(look::scaled(31), 0), 22, m_wish.content.panels[i].severity);
    }
  }

  void put(std::vector<LabelLine> lines, LabelWish wish, std::optional<ItemRef> owner) {
    if (lines.empty()) return;
    wish.size = sizeOf(lines);
    if (const auto box = m_placer.place(wish)) {
      m_words.labels.push_back({std::move(lines), *box, owner, box->center().x() < wish.anchor.x() - wish.gap});
    }
  }

  void putItem(ItemKind kind, std::size_t i, double gap, bool insist) {
    const ItemRef item{kind, static_cast<int>(i)};
    const QPointF at = m_wish.layout.at(item);
    if (!inRegion(at)) return;
    const bool must = insist || isChosen(item);
    put(linesOf(m_wish.content, item), {at, {}, gap, must ? Insist::Yes : Insist::No}, item);
  }

  void writeMachines() {
    for (std::size_t i = 0; i < m_wish.content.machines.size(); ++i) {
      putItem(ItemKind::Machine, i, look::scaled(kMachineRadius + 6),
              m_wish.content.machines[i].severity >= rules::Severity::Caution);
    }
  }

  void writePanels() {
    for (std::size_t i = 0; i < m_wish.content.panels.size(); ++i) {
      putItem(ItemKind::Panel, i, look::scaled(12), true);
    }
  }

  void writeCords() {
    for (std::size_t i = 0; i < m_wish.content.cords.size(); ++i) {
      const auto& parts = m_wish.layout.cords[i].curve.parts;
      for (std::size_t k = 0; k < parts.size(); ++k) writeCord(m_wish.content.cords[i].parts[k], parts[k]);
    }
  }

  void writeCord(const MapCordPart& part, const QPolygonF& line) {
    if (part.figure.isEmpty() && !part.cord) return;
    const QPointF middle = pointAlong(line, 0.5);
    if (!inRegion(middle)) return;
    const bool faulty = part.severity >= rules::Severity::Caution || part.beyondModel;
    LabelLine text{part.figure, Type::Caption, LabelInk::Figure};
    if (part.cord) {
      text.text = part.figure.isEmpty() ? part.text : part.text + QStringLiteral(", ") + part.figure;
      text.type = Type::CaptionBold;
    }
    if (part.cord && faulty) mark(pointAlong(line, 0.62), 20, part.severity);
    put({text}, {middle, {}, 9, faulty ? Insist::Yes : Insist::No}, std::nullopt);
  }

  void writeOutlets() {
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < m_wish.content.outlets.size(); ++i) {
      if (inRegion(m_wish.layout.outlets[i])) order.push_back(i);
    }
    const auto rank = [this](std::size_t i) {
      const MapOutlet& outlet = m_wish.content.outlets[i];
      return (isChosen({ItemKind::Outlet, static_cast<int>(i)}) ? 8 : 0) + (outlet.inUse ? 4 : 0) +
             static_cast<int>(outlet.severity >= rules::Severity::Caution) * 2;
    };
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return rank(a) > rank(b); });
    for (const std::size_t i : order) {
      const MapOutlet& outlet = m_wish.content.outlets[i];
      mark(m_wish.layout.outlets[i] + outlet.inward * look::scaled(19), 16, outlet.severity);
      putItem(ItemKind::Outlet, i, m_wish.layout.symbolPx * 0.5,
              outlet.inUse || outlet.severity >= rules::Severity::Caution);
    }
  }

  void writeHomeRuns() {
    for (const MapRun& run : m_wish.content.runs) {
      if (run.from >= 0 || run.name.isEmpty()) continue;
      const QPointF tip = homeRunTip(m_wish.content, m_wish.layout, run);
      if (inRegion(tip)) put({{run.name, Type::Small, LabelInk::Quiet}}, {tip, {}, 3}, std::nullopt);
    }
  }

  void writeLoads() {
    for (std::size_t i = 0; i < m_wish.content.loads.size(); ++i) putItem(ItemKind::Load, i, look::scaled(14), false);
  }

  void writeRooms() {
    for (const MapRoom& room : m_wish.content.rooms) {
      const QPointF middle = room.outline.boundingRect().center() * m_wish.layout.scale;
      if (!inRegion(middle) || room.name.isEmpty()) continue;
      const double wide = room.outline.boundingRect().width() * m_wish.layout.scale;
      const std::vector<LabelLine> lines{{room.name, Type::RoomName, LabelInk::Faint}};
      if (sizeOf(lines).width() > wide - 8) continue;
      for (const double off : {0.0, -0.22, 0.22, -0.36, 0.36}) {
        LabelWish wish{middle + QPointF(0, off * room.outline.boundingRect().height() * m_wish.layout.scale),
                       sizeOf(lines)};
        wish.centred = true;
        const auto box = m_placer.place(wish);
        if (!box) continue;
        m_words.labels.push_back({lines, *box, std::nullopt, false});
        break;
      }
    }
  }

  const WordsWish& m_wish;
  const std::vector<rules::Subject>& m_chosen;
  LabelPlacer m_placer;
  MapWords m_words;
};

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

MapWords wordsOf(const WordsWish& wish) { return Writer(wish).write(); }

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
  }
  return lines;
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
