// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/hot_places.h"

#include <algorithm>

#include "physics/wire.h"
#include "rules/case.h"
#include "rules/rule_table.h"
#include "study/assumptions.h"

namespace cordreach::rules {

namespace {

constexpr units::Temperature kWallInsulation = units::Temperature::fromCelsius(60.0);  // own: the least there is

units::TemperatureRise plugLimit() { return ruleOf("plug.over_rise").limitValue() * units::kelvin; }

units::Power lostIn(const site::CordMake& make, units::Current rms, units::Temperature at) {
  const units::Resistance bothWays =
      physics::cordResistance(study::sizeOf(make), at) * study::lengthOf(make).value * 2.0;
  return rms * rms * bothWays;
}

Subject socketOf(const CordCase& cord) {
  if (const auto* wall = std::get_if<site::OutletSocket>(cord.link.socket)) {
    return {SubjectKind::Outlet, wall->outlet.text()};
  }
  if (const auto* other = std::get_if<site::CordSocket>(cord.link.socket))
    return {SubjectKind::Cord, other->cord.text()};
  return {SubjectKind::Machine, std::get<site::MachineSocket>(*cord.link.socket).machine.text()};
}

HotPlace cordPlace(const CordCase& cord) {
  const study::CordAnswer& answer = *cord.answer;
  const bool own = cord.link.own();
  HotPlace place{.kind = own ? HotKind::OwnCord : HotKind::Extension,
                 .subject = own ? Subject{SubjectKind::Machine, cord.link.machine->id.text()}
                                : Subject{SubjectKind::Cord, cord.link.cord->id.text()},
                 .hookup = cord.at->hookup->id,
                 .limit = answer.limit};
  if (!answer.conductor) return place;
  place.temperature = answer.conductor->likely;
  place.high = answer.conductor->high;
  place.lost = lostIn(cord.link.make(), answer.current.likely, answer.conductor->likely);
  return place;
}

HotPlace plugPlace(const CordCase& cord, units::Temperature room) {
  HotPlace place{
      .kind = HotKind::Plug, .subject = socketOf(cord), .hookup = cord.at->hookup->id, .limit = room + plugLimit()};
  if (place.subject.kind == SubjectKind::Outlet) place.outlet = site::OutletId(place.subject.id);
  place.temperature = room + cord.answer->plugRise.likely;
  place.high = room + cord.answer->plugRise.high;
  return place;
}

HotPlace wallPlace(const study::CircuitAnswer& answer, const Case& in) {
  const auto& circuit = in.site().at<site::Circuit>(answer.id);
  HotPlace place{.kind = HotKind::WallWire,
                 .subject = {SubjectKind::Circuit, answer.id.text()},
                 .limit = circuit.insulation ? circuit.insulation->value : kWallInsulation,
                 .limitGuessed = !circuit.insulation};
  place.temperature = answer.wireTemperature;
  for (const study::Share& share : answer.shares) {
    if (share.load && share.current > units::Current{}) place.lacksLoads = true;
    const study::HookupAnswer* hookup = share.hookup ? in.answer().find(*share.hookup) : nullptr;
    if (hookup == nullptr) continue;
    place.lost = place.lost.value_or(units::Power{}) + share.current * hookup->branchDrop;
  }
  return place;
}

}  // namespace

std::vector<HotPlace> hotPlaces(const site::Site& site, const study::Answer& answer) {
  const Case in(site, answer);
  const units::Temperature room = study::roomOf(site);
  std::vector<HotPlace> places;
  for (const CordCase& cord : in.cords()) {
    if (cord.answer->current.likely <= units::Current{}) continue;
    places.push_back(cordPlace(cord));
    places.push_back(plugPlace(cord, room));
  }
  for (const study::CircuitAnswer& circuit : answer.circuits) {
    if (circuit.current.likely > units::Current{}) places.push_back(wallPlace(circuit, in));
  }
  std::stable_sort(places.begin(), places.end(), [](const HotPlace& a, const HotPlace& b) {
    if (!a.temperature || !b.temperature) return !a.temperature && b.temperature.has_value();
    return *b.temperature < *a.temperature;
  });
  return places;
}

std::string_view nameOf(HotKind kind) {
  switch (kind) {
    case HotKind::Extension:
      return "extension";
    case HotKind::OwnCord:
      return "own_cord";
    case HotKind::Plug:
      return "plug";
    case HotKind::WallWire:
      break;
  }
  return "wall_wire";
}

}  // namespace cordreach::rules
