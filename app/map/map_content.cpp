// SPDX-License-Identifier: GPL-3.0-or-later
#include "map/map_content.h"

#include <algorithm>

#include "map/content_parts.h"
#include "site/queries.h"

namespace cordreach::app {
namespace {

void addUnique(std::vector<site::CircuitId>& all, const site::CircuitId& one) {
  if (std::find(all.begin(), all.end(), one) == all.end()) all.push_back(one);
}

void addCircuitOf(std::vector<site::CircuitId>& all, const site::Site& site, const site::Hookup& hookup) {
  const auto chain = site::chainOf(site, hookup);
  if (!chain) return;
  if (const site::Circuit* circuit = site::circuitOf(site, chain->outlet)) addUnique(all, circuit->id);
}

void addCircuitsOfOutlet(std::vector<site::CircuitId>& all, const site::Site& site, const std::string& id) {
  const site::Outlet* outlet = site.find<site::Outlet>(site::OutletId(id));
  if (outlet == nullptr) return;
  for (const site::Contact& contact : outlet->contacts) {
    if (contact.assignment) addUnique(all, contact.assignment->circuit);
  }
}

void addExtent(MapContent& content) {
  QRectF extent;
  bool any = false;
  const auto add = [&](const QPointF& point) {
    const QRectF box(point - QPointF(0.01, 0.01), point + QPointF(0.01, 0.01));
    extent = any ? extent.united(box) : box;
    any = true;
  };
  for (const MapRoom& room : content.rooms) {
    for (const QPointF& point : room.outline) add(point);
  }
  for (const MapWall& wall : content.walls) {
    add(wall.from);
    add(wall.to);
  }
  for (const QPolygonF& line : content.corridorLines) {
    for (const QPointF& point : line) add(point);
  }
  for (const MapOutlet& outlet : content.outlets) add(outlet.at);
  for (const MapPanel& panel : content.panels) add(panel.at);
  for (const MapLoad& load : content.loads) add(load.at);
  for (const MapMachine& machine : content.machines) add(machine.at);
  content.isBare = !any;
  content.extent = any ? extent : QRectF(0, 0, 30, 16);
}

}  // namespace

MapContent contentOf(const ContentWish& wish) {
  MapContent content;
  content.floor = wish.floor;
  content.fresh = wish.fresh;
  if (wish.floor) {
    addGround(content, wish);
    addOutlets(content, wish);
    addWiring(content, wish);
    addMachines(content, wish);
  }
  addExtent(content);
  return content;
}

std::optional<QPointF> placeIn(const MapContent& content, const ItemRef& item) {
  const auto index = static_cast<std::size_t>(item.index);
  switch (item.kind) {
    case ItemKind::Outlet:
      return content.outlets[index].at;
    case ItemKind::Panel:
      return content.panels[index].at;
    case ItemKind::Load:
      return content.loads[index].at;
    case ItemKind::Machine:
      return content.machines[index].at;
    case ItemKind::Room:
      return content.rooms[index].at;
    case ItemKind::Plug:
      break;
  }
  return std::nullopt;
}

int indexOfOutlet(const MapContent& content, const site::OutletId& id) {
  const auto& all = content.outlets;  // in the site's order, which is by id
  const auto at = std::lower_bound(all.begin(), all.end(), id,
                                   [](const MapOutlet& outlet, const site::OutletId& key) { return outlet.id < key; });
  return at != all.end() && at->id == id ? static_cast<int>(at - all.begin()) : -1;
}

std::vector<site::CircuitId> chosenCircuits(const site::Site& site, const std::vector<rules::Subject>& chosen) {
  using rules::SubjectKind;
  std::vector<site::CircuitId> all;
  for (const rules::Subject& subject : chosen) {
    if (subject.kind == SubjectKind::Circuit && site.find<site::Circuit>(site::CircuitId(subject.id)) != nullptr) {
      addUnique(all, site::CircuitId(subject.id));
    }
    if (subject.kind == SubjectKind::Outlet) addCircuitsOfOutlet(all, site, subject.id);
    if (subject.kind == SubjectKind::FixedLoad) {
      if (const auto* load = site.find<site::FixedLoad>(site::FixedLoadId(subject.id))) addUnique(all, load->circuit);
    }
    for (const site::Hookup& hookup : site.all<site::Hookup>()) {
      const bool isIt = subject.kind == SubjectKind::Hookup && hookup.id.text() == subject.id;
      const bool isOfIt = subject.kind == SubjectKind::Machine && hookup.machine.text() == subject.id;
      if (isIt || isOfIt) addCircuitOf(all, site, hookup);
    }
  }
  return all;
}

}  // namespace cordreach::app
