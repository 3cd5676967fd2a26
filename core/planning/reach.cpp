// SPDX-License-Identifier: GPL-3.0-or-later
#include "planning/reach.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "base/contract.h"
#include "planning/outlet_choice.h"
#include "rules/copper.h"
#include "site/outlet_side.h"
#include "site/walk.h"
#include "study/assumptions.h"

namespace cordreach::planning {

namespace {

constexpr double kOffWallM = 0.3;  // own: out of the cells that the outlet's wall closes
constexpr double kTileM = 200.0;   // own: outlets nearer than that are walked from together

const site::Machine& machineOf(const ReachWish& wish) { return wish.site.at<site::Machine>(wish.machine); }

const site::Inlet& shortestInlet(const site::Machine& machine) {
  CORDREACH_EXPECTS(!machine.inlets.empty());
  const auto lengthOf = [](const site::Inlet& inlet) { return study::lengthOf(inlet.cord).value; };
  return *std::min_element(machine.inlets.begin(), machine.inlets.end(),
                           [&](const site::Inlet& a, const site::Inlet& b) { return lengthOf(a) < lengthOf(b); });
}

units::Length lowEnd(const site::Stated<units::Length>& length) { return length.low.value_or(length.value); }

// That would go into the wall.
const std::string& plugOf(const ReachWish& wish) {
  return wish.extension ? wish.extension->plug : shortestInlet(machineOf(wish)).cord.plug;
}

geometry::Point beside(const site::Outlet& outlet, const std::vector<site::Wall>& walls) {
  const geometry::Point at = outlet.place->at;
  const auto inward = site::inwardOf(outlet, walls);
  if (!inward) return at;
  return {at.xM + kOffWallM * inward->xM, at.yM + kOffWallM * inward->yM};
}

using Tiles = std::map<std::pair<double, double>, std::vector<geometry::Point>>;

Tiles startsOf(const ReachWish& wish, const site::Floor& floor, Reach& reach) {
  Tiles tiles;
  for (const site::Outlet& outlet : wish.site.all<site::Outlet>()) {
    if (wish.outlet && outlet.id != *wish.outlet) continue;
    if (!outlet.place || outlet.place->floor != wish.floor) continue;
    const auto [start, contact] = bestPlugStart(wish.site, plugOf(wish), outlet);
    if (start != PlugStart::Free && !(wish.outlet && start == PlugStart::AskFirst)) continue;
    const geometry::Point at = beside(outlet, floor.walls);
    tiles[{std::floor(at.xM / kTileM), std::floor(at.yM / kTileM)}].push_back(at);
    ++reach.outlets;
    if (!contact->assignment) ++reach.unknownBreakers;
  }
  return tiles;
}

void append(std::vector<geometry::Outline>& all, std::vector<geometry::Outline> more) {
  for (geometry::Outline& one : more) all.push_back(std::move(one));
}

}  // namespace

units::Length ReachLengths::along() const { return std::max(cord() - kSlack, units::Length{}); }

ReachLengths reachLengthsOf(const ReachWish& wish) {
  const site::CordMake& own = shortestInlet(machineOf(wish)).cord;
  const site::Stated<units::Length> ownLength = study::lengthOf(own);
  ReachLengths lengths{lowEnd(ownLength), {}, !own.length || ownLength.isGuess(), false};
  if (!wish.extension) return lengths;
  const site::Stated<units::Length> length = study::lengthOf(*wish.extension);
  lengths.extension = lowEnd(length);
  lengths.guessed = lengths.guessed || !wish.extension->length || length.isGuess();
  if (wish.extension->size) {
    lengths.lighter = std::any_of(machineOf(wish).inlets.begin(), machineOf(wish).inlets.end(), [&](const auto& inlet) {
      return rules::isLighter(wish.extension->size->value, study::sizeOf(inlet.cord));
    });
  }
  return lengths;
}

PlugStart reachStartOf(const ReachWish& wish, const site::Outlet& outlet) {
  return bestPlugStart(wish.site, plugOf(wish), outlet).first;
}

Reach reachOf(const ReachWish& wish, const base::Progress& progress) {
  Reach reach;
  reach.lengths = reachLengthsOf(wish);
  const site::Floor& floor = wish.site.at<site::Floor>(wish.floor);
  reach.isDrawn = !floor.walls.empty() || !floor.corridorLines.empty();
  const geometry::Ground ground = site::groundOf(floor);
  // A little farther than the cord, so that its end falls between cells that were reached.
  const units::Length farthest = reach.lengths.cord() + 2.0 * geometry::kWalkCell;
  for (auto& [tile, starts] : startsOf(wish, floor, reach)) {
    if (progress.stopRequested()) break;
    const geometry::WalkField field(ground, starts, farthest);
    append(reach.withSlack, geometry::outlinesOf(field, reach.lengths.along()));
    append(reach.stretched, geometry::outlinesOf(field, reach.lengths.cord()));
  }
  return reach;
}

}  // namespace cordreach::planning
