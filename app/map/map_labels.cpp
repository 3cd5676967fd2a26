// SPDX-License-Identifier: GPL-3.0-or-later
#include "map/map_labels.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "map/label_placer.h"

namespace cordreach::app {
namespace {

using look::Type;

constexpr double kBoundsInset = 3;         // from the edge of the sheet to the nearest letter
constexpr double kHalo = 2;                // around letters
constexpr double kShortLeader = 6;         // a line shorter than that says nothing
constexpr double kSecondRing = 24;         // farther from the thing than the first
constexpr std::size_t kManyOutlets = 400;  // beyond that their numbers stay beside them or go

// A label that asks for room.
struct Asking {
  std::vector<LabelLine> full;
  std::vector<LabelLine> shortened;
  LabelWish wish;
  std::optional<ItemRef> owner;
  int rank = 0;  // the higher goes first
};

// First what is chosen, then the short numbers that mean nothing away from their outlet, then what is faulty.
enum Rank {
  kRankRoom,
  kRankHomeRun,
  kRankLoad,
  kRankCord,
  kRankMachine,
  kRankOutlet,
  kRankFaulty,
  kRankInUse,
  kRankChosen
};

class Writer {
 public:
  explicit Writer(const WordsWish& wish) : m_wish(wish), m_chosen(wish.chosen) { m_words.region = wish.region; }

  MapWords write() {
    const QRectF extent = m_wish.extent.isEmpty() ? m_wish.content.extent : m_wish.extent;
    const double margin = planMargin() - kBoundsInset;
    m_placer.confine(
        QRectF(extent.topLeft() * scale(), extent.size() * scale()).adjusted(-margin, -margin, margin, margin));
    discourageLines();
    blockSmall();
    markAll();
    blockMachines();
    if (m_wish.layout.withText) {
      askMachines();
      askPanels();
      askCords();
      askOutlets();
      askHomeRuns();
      askLoads();
      placeAll();
      writeRooms();
    }
    return std::move(m_words);
  }

 private:
  [[nodiscard]] double scale() const { return m_wish.layout.scale; }
  [[nodiscard]] bool inRegion(const QPointF& at) const { return m_wish.region.contains(at); }
  [[nodiscard]] bool isChosen(const ItemRef& item) const {
    if (m_chosen.empty()) return false;
    const auto subject = subjectOf(m_wish.content, item);
    return subject && std::find(m_chosen.begin(), m_chosen.end(), *subject) != m_chosen.end();
  }

  void discourageLines() {
    for (const MapWall& wall : m_wish.content.walls) {
      const QRectF line = QRectF(wall.from * scale(), wall.to * scale()).normalized().adjusted(-3, -3, 3, 3);
      if (m_wish.region.intersects(line)) m_placer.discourage(line);
    }
    for (const LaidCord& cord : m_wish.layout.cords) {
      for (const QPolygonF& part : cord.curve.parts) {
        for (const QPointF& point : part) m_placer.discourage(QRectF(point.x() - 6, point.y() - 6, 12, 12));
      }
    }
  }

  void blockAll(ItemKind kind, std::size_t count) {
    for (std::size_t i = 0; i < count; ++i) {
      const ItemRef item{kind, static_cast<int>(i)};
      if (inRegion(m_wish.layout.at(item))) m_placer.block(symbolBox(m_wish.layout, item));
    }
  }

  void blockSmall() {
    blockAll(ItemKind::Outlet, m_wish.layout.outlets.size());
    blockAll(ItemKind::Load, m_wish.layout.loads.size());
    blockAll(ItemKind::Panel, m_wish.layout.panels.size());
    blockAll(ItemKind::Plug, m_wish.layout.plugs.size());
  }

  void blockMachines() {
    blockAll(ItemKind::Machine, m_wish.layout.machines.size());
    for (std::size_t i = 0; i < m_wish.content.machines.size(); ++i) {
      if (!m_wish.content.machines[i].outOfService) continue;
      const QPointF tag = m_wish.layout.machines[i] - QPointF(1, 1) * look::scaled(kMachineRadius) * 0.8;
      const double half = look::scaled(10);
      m_placer.block(QRectF(tag.x() - half, tag.y() - half, 2 * half, 2 * half));
    }
  }

  // At the first of these places that is free, or at the first.
  void mark(const std::vector<QPointF>& places, double size, rules::Severity severity) {
    if (severity < rules::Severity::Caution) return;
    const double px = look::scaled(size);
    const auto boxAt = [&](const QPointF& middle) { return QRectF(middle - QPointF(px / 2, px / 2), QSizeF(px, px)); };
    const auto free =
        std::find_if(places.begin(), places.end(), [&](const QPointF& at) { return m_placer.isFree(boxAt(at)); });
    const QRectF box = boxAt(free == places.end() ? places.front() : *free);
    m_placer.block(box);
    m_words.marks.push_back({box, severity});
  }

  void markAll() {
    const double corner = look::scaled(kMachineRadius) * 0.82;
    for (std::size_t i = 0; i < m_wish.content.machines.size(); ++i) {
      const QPointF at = m_wish.layout.machines[i];
      mark({at + QPointF(corner, -corner), at + QPointF(-corner, -corner), at + QPointF(corner, corner),
            at + QPointF(-corner, corner)},
           20, m_wish.content.machines[i].severity);
    }
    for (std::size_t i = 0; i < m_wish.content.panels.size(); ++i) {
      const QPointF aside(look::scaled(31), 0);
      mark({m_wish.layout.panels[i] + aside, m_wish.layout.panels[i] - aside}, 22, m_wish.content.panels[i].severity);
    }
    markCords();
    for (std::size_t i = 0; i < m_wish.content.outlets.size(); ++i) {
      const MapOutlet& outlet = m_wish.content.outlets[i];
      if (outlet.severity < rules::Severity::Caution || !inRegion(m_wish.layout.outlets[i])) continue;
      const QPointF in = (outlet.inward.isNull() ? QPointF(0, -1) : outlet.inward) * look::scaled(21);
      const QPointF across(-in.y(), in.x());
      const QPointF at = m_wish.layout.outlets[i];
      mark({at + in, at + across, at - across, at + (in + across) * 0.8, at + (in - across) * 0.8, at - in}, 16,
           outlet.severity);
    }
  }

  void markCords() {
    for (std::size_t i = 0; i < m_wish.content.cords.size(); ++i) {
      const auto& lines = m_wish.layout.cords[i].curve.parts;
      for (std::size_t k = 0; k < lines.size(); ++k) {
        const MapCordPart& part = m_wish.content.cords[i].parts[k];
        if (!part.cord || !inRegion(pointAlong(lines[k], 0.5))) continue;
        std::vector<QPointF> places;
        for (const double fraction : {0.62, 0.5, 0.72, 0.4, 0.82, 0.3})
          places.push_back(pointAlong(lines[k], fraction));
        mark(places, 20, part.severity);
      }
    }
  }

  void ask(std::vector<LabelLine> full, std::vector<LabelLine> shortened, LabelWish wish, int rank,
           std::optional<ItemRef> owner = {}) {
    if (full.empty()) return;
    const QSizeF halo(2 * kHalo, kHalo);
    wish.size = sizeOf(full) + halo;
    if (!shortened.empty()) wish.shorter = sizeOf(shortened) + halo;
    m_asking.push_back({std::move(full), std::move(shortened), wish, owner, rank});
  }

  void askItem(ItemKind kind, std::size_t i, double gap, bool keep, int rank) {
    const ItemRef item{kind, static_cast<int>(i)};
    const QPointF at = m_wish.layout.at(item);
    if (!inRegion(at)) return;
    const bool chosen = isChosen(item);
    const bool isFew = kind == ItemKind::Outlet && m_wish.layout.outlets.size() < kManyOutlets;
    LabelWish wish{at, {}, gap, keep || chosen || isFew ? Insist::Yes : Insist::No};
    if (kind != ItemKind::Outlet) wish.secondRing = gap + look::scaled(kSecondRing);
    if (kind == ItemKind::Outlet) wish.awayCost = 4000;  // a number says nothing away from its outlet
    if (kind == ItemKind::Outlet && wish.insist == Insist::Yes) wish.secondRing = gap + look::scaled(kSecondRing / 2);
    ask(linesOf(m_wish.content, item), shortLinesOf(m_wish.content, item), wish, chosen ? kRankChosen : rank, item);
  }

  void askMachines() {
    for (std::size_t i = 0; i < m_wish.content.machines.size(); ++i) {
      const bool faulty = m_wish.content.machines[i].severity >= rules::Severity::Caution;
      askItem(ItemKind::Machine, i, look::scaled(kMachineRadius + 4), faulty, faulty ? kRankFaulty : kRankMachine);
    }
  }

  void askPanels() {
    for (std::size_t i = 0; i < m_wish.content.panels.size(); ++i)
      askItem(ItemKind::Panel, i, look::scaled(12), true, kRankFaulty);
  }

  void askCords() {
    for (std::size_t i = 0; i < m_wish.content.cords.size(); ++i) {
      const LaidCord& laid = m_wish.layout.cords[i];
      for (std::size_t k = 0; k < laid.curve.parts.size(); ++k)
        askCord(m_wish.content.cords[i].parts[k], laid.curve.parts[k]);
      if (!laid.stubEnd || !inRegion(*laid.stubEnd)) continue;
      ask({{m_wish.content.cords[i].otherFloor, Type::Small, LabelInk::Quiet}}, {}, {*laid.stubEnd, {}, 4, Insist::Yes},
          kRankFaulty);
    }
  }

  void askCord(const MapCordPart& part, const QPolygonF& line) {
    if (part.figure.isEmpty() && !part.cord) return;
    const QPointF middle = pointAlong(line, 0.5);
    if (!inRegion(middle)) return;
    const bool faulty = part.severity >= rules::Severity::Caution || part.beyondModel;
    LabelWish wish{middle, {}, 9, faulty ? Insist::Yes : Insist::No};
    wish.secondRing = 9 + look::scaled(kSecondRing);
    if (!part.cord) return ask({{part.figure, Type::Caption, LabelInk::Figure}}, {}, wish, kRankCord);
    const QString full = part.figure.isEmpty() ? part.text : part.text + QStringLiteral(", ") + part.figure;
    std::vector<LabelLine> shortened;
    if (!part.figure.isEmpty()) shortened.push_back({part.figure, Type::CaptionBold, LabelInk::Figure});
    ask({{full, Type::CaptionBold, LabelInk::Figure}}, std::move(shortened), wish, faulty ? kRankFaulty : kRankCord);
  }

  void askOutlets() {
    for (std::size_t i = 0; i < m_wish.content.outlets.size(); ++i) {
      if (!inRegion(m_wish.layout.outlets[i])) continue;
      const MapOutlet& outlet = m_wish.content.outlets[i];
      const bool keep = outlet.inUse || outlet.severity >= rules::Severity::Caution;
      askItem(ItemKind::Outlet, i, m_wish.layout.symbolPx * 0.5, keep, keep ? kRankInUse : kRankOutlet);
    }
  }

  void askHomeRuns() {
    for (const MapRun& run : m_wish.content.runs) {
      if (run.from >= 0 || run.name.isEmpty()) continue;
      const QPointF tip = homeRunTip(m_wish.content, m_wish.layout, run);
      if (inRegion(tip)) ask({{run.name, Type::Small, LabelInk::Quiet}}, {}, {tip, {}, 3}, kRankHomeRun);
    }
  }

  void askLoads() {
    for (std::size_t i = 0; i < m_wish.content.loads.size(); ++i)
      askItem(ItemKind::Load, i, look::scaled(12), false, kRankLoad);
  }

  void placeAll() {
    std::stable_sort(m_asking.begin(), m_asking.end(),
                     [](const Asking& a, const Asking& b) { return a.rank > b.rank; });
    for (Asking& asking : m_asking) {
      const auto placed = m_placer.place(asking.wish);
      if (!placed) continue;
      const QRectF box = placed->box.adjusted(kHalo, kHalo / 2, -kHalo, -kHalo / 2);
      MapLabel label{placed->isShort ? std::move(asking.shortened) : std::move(asking.full), box, asking.owner};
      label.leftOfAnchor = box.center().x() < asking.wish.anchor.x() - asking.wish.gap;
      if (placed->isAway) label.leader = leaderTo(box, asking.wish);
      m_words.labels.push_back(std::move(label));
    }
  }

  static std::optional<QLineF> leaderTo(const QRectF& box, const LabelWish& wish) {
    const QPointF end(std::clamp(wish.anchor.x(), box.left(), box.right()),
                      std::clamp(wish.anchor.y(), box.top(), box.bottom()));
    const QPointF way = end - wish.anchor;
    const double length = std::hypot(way.x(), way.y());
    const double start = wish.gap * 0.9;
    if (length - start < kShortLeader) return std::nullopt;
    return QLineF(wish.anchor + way * (start / length), end - way * (kHalo / length));
  }

  void writeRooms() {
    for (std::size_t i = 0; i < m_wish.content.rooms.size(); ++i) {
      const MapRoom& room = m_wish.content.rooms[i];
      const QRectF frame = room.outline.boundingRect();
      const QPointF middle = frame.center() * scale();
      if (!inRegion(middle) || room.name.isEmpty()) continue;
      const std::vector<LabelLine> lines = linesOf(m_wish.content, {ItemKind::Room, static_cast<int>(i)});
      const QSizeF size = sizeOf(lines);
      if (size.width() > frame.width() * scale() - 8) continue;
      for (const double off : {0.0, -0.22, 0.22, -0.36, 0.36}) {
        LabelWish wish{middle + QPointF(0, off * frame.height() * scale()), size};
        wish.centred = true;
        const auto placed = m_placer.place(wish);
        if (!placed) continue;
        m_words.labels.push_back({lines, placed->box, ItemRef{ItemKind::Room, static_cast<int>(i)}});
        break;
      }
    }
  }

  const WordsWish& m_wish;
  const std::vector<rules::Subject>& m_chosen;
  LabelPlacer m_placer;
  std::vector<Asking> m_asking;
  MapWords m_words;
};

}  // namespace

MapWords wordsOf(const WordsWish& wish) { return Writer(wish).write(); }

}  // namespace cordreach::app
