// SPDX-License-Identifier: GPL-3.0-or-later
// Rooms, walls and outlets of a floor.
#include <algorithm>
#include <cmath>
#include <set>

#include "map/content_parts.h"
#include "map/map_figures.h"
#include "site/outlet_side.h"
#include "tables/receptacles.h"

namespace cordreach::app {
namespace {

// The turn that puts the symbol's bottom, where its wall is, against the way inward.
int turnOf(const QPointF& inward) {
  if (std::abs(inward.x()) > std::abs(inward.y())) return inward.x() > 0 ? 90 : 270;
  return inward.y() > 0 ? 180 : 0;
}

OutletLook lookOf(const site::Outlet& outlet) {
  const auto unknown = [](const site::Contact& contact) { return !contact.assignment.has_value(); };
  if (outlet.contacts.empty() || std::all_of(outlet.contacts.begin(), outlet.contacts.end(), unknown)) {
    return OutletLook::Unknown;
  }
  std::set<std::string> circuits;
  for (const site::Contact& contact : outlet.contacts) {
    if (contact.assignment) circuits.insert(contact.assignment->circuit.text());
    const tables::ReceptacleType* type = tables::receptacleType(contact.receptacle);
    if (type != nullptr && (type->locking || type->hotPoles > 1)) return OutletLook::Special;
  }
  if (outlet.contacts.size() == 1) return OutletLook::Single;
  if (outlet.contacts.size() >= 4) return OutletLook::Quad;
  return circuits.size() > 1 ? OutletLook::Split : OutletLook::Duplex;
}

bool isDark(const site::Outlet& outlet) {
  return !outlet.contacts.empty() && std::all_of(outlet.contacts.begin(), outlet.contacts.end(),
                                                 [](const site::Contact& contact) { return contact.dead; });
}

MapOutlet outletOf(const site::Outlet& outlet, const std::vector<site::Wall>& walls, const ContentWish& wish) {
  MapOutlet item{outlet.id, QString::fromStdString(outlet.label)};
  item.at = toPoint(outlet.place->at);
  if (const auto inward = site::inwardOf(outlet, walls)) item.inward = toPoint(*inward);
  item.turnDegrees = item.inward.isNull() ? 0 : turnOf(item.inward);
  item.look = lookOf(outlet);
  item.dark = isDark(outlet);
  for (const site::Contact& contact : outlet.contacts) {
    if (!contact.assignment) continue;
    item.traced = item.traced || contact.assignment->how == site::HowKnown::Traced;
    const auto& all = item.circuits;
    if (std::find(all.begin(), all.end(), contact.assignment->circuit) == all.end()) {
      item.circuits.push_back(contact.assignment->circuit);
    }
  }
  if (outlet.groundFaultDevice) item.marks = say(wish.book, "map.mark.ground_fault");
  item.figure = overlayFigure(wish, outlet);
  item.severity = severityOf(wish.verdict, {rules::SubjectKind::Outlet, outlet.id.text()});
  return item;
}

void applyFigure(const OverlayFigures& figures, MapOutlet& item) {
  item.figure.clear();
  if (figures.ownMarks) item.severity = rules::Severity::Ok;
  const auto at = figures.outlets.find(item.id);
  if (at == figures.outlets.end()) return;
  item.figure = at->second.figure;
  item.heat = at->second.heat;
  item.severity = std::max(item.severity, at->second.atLeast);
}

bool isOuter(const MapWall& wall, const QRectF& box) {
  const auto on = [](double a, double b, double edge) {
    return std::abs(a - edge) < 0.05 && std::abs(b - edge) < 0.05;
  };
  return on(wall.from.x(), wall.to.x(), box.left()) || on(wall.from.x(), wall.to.x(), box.right()) ||
         on(wall.from.y(), wall.to.y(), box.top()) || on(wall.from.y(), wall.to.y(), box.bottom());
}

}  // namespace

void addGround(MapContent& content, const ContentWish& wish) {
  for (const site::Room& room : wish.site.all<site::Room>()) {
    if (room.floor != *wish.floor || room.outline.size() < 3) continue;
    MapRoom item{room.id};
    item.name = QString::fromStdString(room.name.empty() ? room.number : room.name);
    item.corridor = room.corridor;
    for (const geometry::Point& point : room.outline) item.outline << toPoint(point);
    item.at = item.outline.boundingRect().center();
    content.rooms.push_back(std::move(item));
  }
  const site::Floor* floor = wish.site.find<site::Floor>(*wish.floor);
  if (floor == nullptr) return;
  QPolygonF ends;
  for (const site::Wall& wall : floor->walls) ends << toPoint(wall.from) << toPoint(wall.to);
  const QRectF box = ends.boundingRect();
  for (const site::Wall& wall : floor->walls) {
    MapWall item{toPoint(wall.from), toPoint(wall.to)};
    item.outer = isOuter(item, box);
    content.walls.push_back(item);
  }
  for (const site::CorridorLine& line : floor->corridorLines) {
    QPolygonF item;
    for (const geometry::Point& point : line.points) item << toPoint(point);
    content.corridorLines.push_back(std::move(item));
  }
}

void addOutlets(MapContent& content, const ContentWish& wish) {
  const auto allVolts = voltsByOutlet(wish);
  const site::Floor* floor = wish.site.find<site::Floor>(*wish.floor);
  const std::vector<site::Wall> walls = floor != nullptr ? floor->walls : std::vector<site::Wall>();
  for (const site::Outlet& outlet : wish.site.all<site::Outlet>()) {
    if (!outlet.place || outlet.place->floor != *wish.floor) continue;
    content.outlets.push_back(outletOf(outlet, walls, wish));
    if (wish.figures != nullptr) {
      applyFigure(*wish.figures, content.outlets.back());
      continue;
    }
    const auto volts = allVolts.find(outlet.id);
    if (volts != allVolts.end()) content.outlets.back().figure = voltsText(wish.book, volts->second);
  }
}

}  // namespace cordreach::app
