// SPDX-License-Identifier: GPL-3.0-or-later
#include "map/map_layout.h"

#include <algorithm>
#include <cmath>

#include "look/look.h"

namespace cordreach::app {
namespace {

constexpr double kTextFrom = 9.0;  // px a metre: under that the numbers would be a grey mass
constexpr double kInset = 9.0;     // an outlet's symbol stands that far inside its wall
constexpr double kPlugFromOutlet = 15.0;
constexpr double kStubPx = 40.0;
constexpr double kLoadStubPx = 27.0;
constexpr double kFeature = 1.35;  // metres that a symbol takes up when the plan is small

template <class Things>
std::vector<QPointF> scaledPlaces(const Things& things, double scale) {
  std::vector<QPointF> places;
  places.reserve(things.size());
  for (const auto& thing : things) places.push_back(thing.at * scale);
  return places;
}

// The short piece that is seen of a cord whose other end is on another floor.
LaidCord stubOf(const MapCord& cord, const MapContent& content, const MapLayout& layout) {
  const double length = look::scaled(kStubPx);
  CurveWish wish;
  for (const MapCordPart& part : cord.parts) wish.lengthsM.push_back(std::max(part.lengthM, 0.1));
  LaidCord laid;
  if (cord.outlet >= 0) {
    const MapOutlet& outlet = content.outlets[static_cast<std::size_t>(cord.outlet)];
    const QPointF way = outlet.inward.isNull() ? QPointF(0, 1) : outlet.inward;
    wish.from = layout.outlets[static_cast<std::size_t>(cord.outlet)];
    wish.leaving = way;
    wish.to = wish.from + way * length + QPointF(way.y(), way.x()) * length * 0.4;
    laid.stubEnd = wish.to;
  } else {
    wish.to = layout.machines[static_cast<std::size_t>(cord.machine)];
    wish.clearance = look::scaled(kMachineRadius);
    wish.from = wish.to + QPointF(0.45, 1) * (length + wish.clearance);
    laid.stubEnd = wish.from;
  }
  laid.curve = cordCurve(wish);
  return laid;
}

LaidCord laidCord(const MapCord& cord, const MapContent& content, const MapLayout& layout) {
  if (cord.outlet < 0 || cord.machine < 0) return stubOf(cord, content, layout);
  const auto outlet = static_cast<std::size_t>(cord.outlet);
  CurveWish wish{layout.outlets[outlet],
                 content.outlets[outlet].inward,
                 layout.machines[static_cast<std::size_t>(cord.machine)],
                 static_cast<double>(look::scaled(kMachineRadius)),
                 {},
                 0};
  for (const MapCordPart& part : cord.parts) wish.lengthsM.push_back(std::max(part.lengthM, 0.1));
  for (const char letter : cord.hookup.text()) wish.seed = wish.seed * 31 + static_cast<unsigned char>(letter);
  LaidCord laid{cordCurve(wish), 0};
  for (const MapCordPart& part : cord.parts) laid.widestPx = std::max(laid.widestPx, cordWidth(part.copperMm2));
  return laid;
}

// The machine's own plug is where its own cord begins; an extension's is at the outlet.
void addPlugs(MapLayout& layout, const MapCord& cord, int index) {
  const CordCurve& curve = layout.cords[static_cast<std::size_t>(index)].curve;
  if (curve.parts.empty()) return;
  const QPolygonF& first = curve.parts.front();
  const double fraction = std::min(0.9, look::scaled(kPlugFromOutlet) / std::max(1.0, lengthOf(first)));
  if (cord.outlet < 0) {  // its plug is on another floor; here the end that is drawn is taken in hand
    const QPolygonF& own = curve.parts.back();
    layout.plugs.push_back({cord.plug, own.first(), angleAlong(own, 0.0), index, cord.machine});
    return;
  }
  const MapPlug atOutlet{cord.plug, pointAlong(first, fraction), angleAlong(first, fraction), index, cord.machine};
  if (cord.parts.size() < 2 || !cord.parts.front().use) {
    layout.plugs.push_back(atOutlet);
    return;
  }
  layout.plugs.push_back(atOutlet);
  layout.plugs.back().plug = ExtensionPlug{*cord.parts.front().use};
  const QPolygonF& own = curve.parts.back();
  layout.plugs.push_back({cord.plug, own.first(), angleAlong(own, 0.0), index, cord.machine});
}

void addIdlePlugs(MapLayout& layout, const MapContent& content) {
  std::vector<int> before(content.machines.size(), 0);
  for (const MachinePlug& plug : content.idlePlugs) {
    const auto found = std::find_if(content.machines.begin(), content.machines.end(),
                                    [&](const MapMachine& machine) { return machine.id == plug.machine; });
    if (found == content.machines.end()) continue;
    const auto machine = static_cast<std::size_t>(found - content.machines.begin());
    const double down = look::scaled(kMachineRadius + 7);
    const QPointF at = layout.machines[machine] + QPointF(look::scaled(15) * before[machine]++ - 8, down);
    layout.plugs.push_back({plug, at, 90, -1, static_cast<int>(machine)});
  }
}

void buildIndex(MapLayout& layout) {
  std::vector<HitEntry> entries;
  const auto add = [&](ItemKind kind, const std::vector<QPointF>& places) {
    for (std::size_t i = 0; i < places.size(); ++i) entries.push_back({places[i], {kind, static_cast<int>(i)}});
  };
  entries.reserve(layout.outlets.size() + 64);
  add(ItemKind::Outlet, layout.outlets);
  add(ItemKind::Panel, layout.panels);
  add(ItemKind::Load, layout.loads);
  add(ItemKind::Machine, layout.machines);
  for (std::size_t i = 0; i < layout.plugs.size(); ++i) {
    entries.push_back({layout.plugs[i].at, {ItemKind::Plug, static_cast<int>(i)}});
  }
  layout.index.build(std::move(entries));
}

bool touches(const std::vector<QPointF>& places, const QPointF& at, double distance) {
  return std::any_of(places.begin(), places.end(), [&](const QPointF& one) {
    return std::max(std::abs(one.x() - at.x()), std::abs(one.y() - at.y())) < distance;
  });
}

// A fixed load that stands on its outlet is drawn beside it, at the first free place round it.
void moveLoadsAside(MapLayout& layout, const MapContent& content) {
  const double step = kLoadStubPx * layout.symbolPx / 24.0;
  const double apart = layout.symbolPx * 0.88;
  std::vector<QPointF> placed;
  for (std::size_t i = 0; i < layout.loads.size(); ++i) {
    QPointF& at = layout.loads[i];
    std::vector<QPointF> near;
    for (const QPointF& outlet : layout.outlets) {
      if ((outlet - at).manhattanLength() < 5 * step) near.push_back(outlet);
    }
    const int own = content.loads[i].outlet;
    if (touches(near, at, apart) || touches(placed, at, apart)) {
      const QPointF from = own >= 0 ? layout.outlets[static_cast<std::size_t>(own)] : at;
      QPointF in = own >= 0 ? content.outlets[static_cast<std::size_t>(own)].inward : QPointF();
      if (in.isNull()) in = QPointF(0, 1);
      const QPointF across(-in.y(), in.x());
      const double machine = look::scaled(kMachineRadius) + layout.symbolPx * 0.4;
      const auto isFree = [&](const QPointF& place) {
        return !touches(near, place, apart) && !touches(placed, place, apart) &&
               !touches(layout.machines, place, machine) && !touches(layout.panels, place, layout.symbolPx);
      };
      at = from + in * step;
      for (const QPointF& way : {in, across, -across, (in + across) * 0.75, (in - across) * 0.75, in * 1.8,
                                 across * 1.8, -across * 1.8, -in, in * 2.6, across * 2.6, -across * 2.6}) {
        if (!isFree(from + way * step)) continue;
        at = from + way * step;
        break;
      }
    }
    placed.push_back(at);
  }
}

}  // namespace

QPointF MapLayout::at(const ItemRef& item) const {
  const auto i = static_cast<std::size_t>(item.index);
  switch (item.kind) {
    case ItemKind::Outlet:
      return outlets[i];
    case ItemKind::Panel:
      return panels[i];
    case ItemKind::Load:
      return loads[i];
    case ItemKind::Machine:
      return machines[i];
    case ItemKind::Room:
      return rooms[i];
    case ItemKind::Plug:
      return plugs[i].at;
  }
  return {};
}

QRectF symbolBox(const MapLayout& layout, const ItemRef& item) {
  const QPointF at = layout.at(item);
  const auto box = [&](double wide, double high) { return QRectF(at.x() - wide / 2, at.y() - high / 2, wide, high); };
  switch (item.kind) {
    case ItemKind::Outlet:
      return box(layout.symbolPx * 0.92, layout.symbolPx * 0.92);
    case ItemKind::Room:
    case ItemKind::Panel:
      return box(look::scaled(36), look::scaled(14));
    case ItemKind::Load:
      return box(layout.symbolPx * 0.75, layout.symbolPx * 0.8);
    case ItemKind::Machine:
      return box(look::scaled(2 * kMachineRadius), look::scaled(2 * kMachineRadius));
    case ItemKind::Plug:
      return box(look::scaled(13), look::scaled(13));
  }
  return {};
}

QPointF homeRunTip(const MapContent& content, const MapLayout& layout, const MapRun& run) {
  const auto to = static_cast<std::size_t>(run.to);
  const QPointF from = layout.outlets[to];
  QPointF way = run.panel ? *run.panel * layout.scale - from : content.outlets[to].inward * 100.0;
  const double length = std::hypot(way.x(), way.y());
  way = length < 1e-6 ? QPointF(1, 0) : way / length;
  way += content.outlets[to].inward * 0.7;  // into the room rather than along the wall
  const double bent = std::hypot(way.x(), way.y());
  if (bent < 1e-6) way = QPointF(0, 1);
  return from + way / std::max(bent, 1e-6) * std::min(look::scaled(34) * 1.0, std::max(length * 0.6, 12.0));
}

MapLayout layoutOf(const MapContent& content, double scale) {
  MapLayout layout;
  layout.scale = scale;
  layout.withText = scale >= kTextFrom;
  layout.symbolPx = std::clamp(scale * kFeature, 5.0, static_cast<double>(look::scaled(24)));
  layout.outlets = scaledPlaces(content.outlets, scale);
  const double inset = layout.symbolPx / 24.0 * kInset;
  for (std::size_t i = 0; i < layout.outlets.size(); ++i) layout.outlets[i] += content.outlets[i].inward * inset;
  layout.panels = scaledPlaces(content.panels, scale);
  layout.loads = scaledPlaces(content.loads, scale);
  layout.machines = scaledPlaces(content.machines, scale);
  layout.rooms = scaledPlaces(content.rooms, scale);
  moveLoadsAside(layout, content);
  layout.cords.resize(content.cords.size());
  for (std::size_t i = 0; i < content.cords.size(); ++i) {
    const MapCord& cord = content.cords[i];
    if (cord.outlet < 0 && (cord.machine < 0 || cord.otherFloor.isEmpty())) continue;
    layout.cords[i] = laidCord(cord, content, layout);
    addPlugs(layout, cord, static_cast<int>(i));
  }
  addIdlePlugs(layout, content);
  buildIndex(layout);
  return layout;
}

}  // namespace cordreach::app
