// SPDX-License-Identifier: GPL-3.0-or-later
// A fixed load on the circuit of the nearest outlet.
#include "map/tool_place.h"
#include "panels/new_things.h"

namespace cordreach::app {
namespace {

std::optional<site::CircuitId> nearestCircuit(const site::Site& site, const site::Place& place) {
  std::optional<site::CircuitId> best;
  auto nearest = 1e9 * units::metre;
  for (const site::Outlet& outlet : site.all<site::Outlet>()) {
    if (!outlet.place || outlet.place->floor != place.floor) continue;
    const auto distance = geometry::straightDistance(outlet.place->at, place.at);
    for (const site::Contact& contact : outlet.contacts) {
      if (!contact.assignment || !(distance < nearest)) continue;
      best = contact.assignment->circuit;
      nearest = distance;
    }
  }
  if (!best && !site.all<site::Circuit>().empty()) best = site.all<site::Circuit>().begin()->id;
  return best;
}

}  // namespace

std::unique_ptr<MapTool> loadTool(MapCanvas& canvas) {
  const auto make = [&book = canvas.session().book](const site::Site& site, const site::Place& place) -> EditResult {
    const auto circuit = nearestCircuit(site, place);
    if (!circuit) return base::Error{"run.no_circuit", {}, {}};
    NewLoad wanted{book.say("map.new_load"), *circuit};
    wanted.place = place;
    return addLoad(site, wanted);
  };
  return std::make_unique<PlaceTool>(canvas, "map.hint.load", make);
}

}  // namespace cordreach::app
