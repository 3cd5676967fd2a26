// SPDX-License-Identifier: GPL-3.0-or-later
#include "site/walking_order.h"

#include <algorithm>
#include <set>
#include <string>
#include <tuple>

#include "site/floor_order.h"
#include "site/natural_order.h"

namespace cordreach::site {
namespace {

using Outlets = std::vector<const Outlet*>;

bool isLower(const Outlet* a, const Outlet* b) {
  if (a->label != b->label) return comesBefore(a->label, b->label);
  return a->id < b->id;
}

// What an outlet may call a room of this floor that machines are walked along.
std::set<std::string> corridorNames(const Site& site, const FloorId& floor) {
  std::set<std::string> names;
  for (const Room& room : site.all<Room>()) {
    if (!room.corridor || room.floor != floor) continue;
    for (const std::string& name : {room.name, room.number, room.id.text()}) {
      if (!name.empty()) names.insert(name);
    }
  }
  return names;
}

const Panel* firstPanel(const Site& site, const FloorId& floor) {
  const Panel* first = nullptr;
  for (const Panel& panel : site.all<Panel>()) {
    if (!panel.place || panel.place->floor != floor) continue;
    if (first == nullptr || comesBefore(panel.name, first->name)) first = &panel;
  }
  return first;
}

// In `left`, which is sorted by number, so that the first of those as near is the lower one.
Outlets::const_iterator nearest(const Outlets& left, geometry::Point from, const std::string* onlyRoom) {
  auto best = left.end();
  units::Length least{};
  for (auto at = left.begin(); at != left.end(); ++at) {
    if (onlyRoom != nullptr && (*at)->room != *onlyRoom) continue;
    const units::Length far = geometry::rightAngleDistance((*at)->place->at, from);
    if (best != left.end() && !(far < least)) continue;
    best = at;
    least = far;
  }
  return best;
}

void walkFloor(const Site& site, const FloorId& floor, Outlets left, std::vector<OutletId>& order) {
  const std::set<std::string> corridors = corridorNames(site, floor);
  const Panel* panel = firstPanel(site, floor);
  auto next = panel != nullptr ? nearest(left, panel->place->at, nullptr) : left.cbegin();
  while (next != left.end()) {
    const Outlet* here = *next;
    order.push_back(here->id);
    left.erase(next);
    const bool stays = !here->room.empty() && corridors.count(here->room) == 0;
    next = stays ? nearest(left, here->place->at, &here->room) : left.cend();
    if (next == left.end()) next = nearest(left, here->place->at, nullptr);
  }
}

}  // namespace

std::vector<OutletId> walkingOrder(const Site& site) {
  Outlets sorted;
  for (const Outlet& outlet : site.all<Outlet>()) sorted.push_back(&outlet);
  std::sort(sorted.begin(), sorted.end(), isLower);
  std::vector<OutletId> order;
  for (const Floor* floor : floorsByLevel(site)) {
    Outlets here;
    std::copy_if(sorted.begin(), sorted.end(), std::back_inserter(here),
                 [&](const Outlet* outlet) { return outlet->place && outlet->place->floor == floor->id; });
    walkFloor(site, floor->id, std::move(here), order);
  }
  Outlets nowhere;
  std::copy_if(sorted.begin(), sorted.end(), std::back_inserter(nowhere),
               [](const Outlet* outlet) { return !outlet->place; });
  std::stable_sort(nowhere.begin(), nowhere.end(),
                   [](const Outlet* a, const Outlet* b) { return comesBefore(a->room, b->room); });
  for (const Outlet* outlet : nowhere) order.push_back(outlet->id);
  return order;
}

}  // namespace cordreach::site
