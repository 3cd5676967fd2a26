// SPDX-License-Identifier: GPL-3.0-or-later
// A corridor with outlets every few metres on several circuits, a machine and a cart of cords, to plan in.
#pragma once

#include <algorithm>
#include <string>
#include <vector>

#include "planning/remedy.h"
#include "rules/judge.h"
#include "site/invariants.h"
#include "study/assess.h"

namespace cordreach::planning {

using units::ampere;
using units::foot;
using units::hour;

struct SmallBuilding {
  site::Site site{.id = site::SiteId("s")};

  SmallBuilding() {
    put(site::Floor{.id = site::FloorId("f"), .name = "Ground"});
    put(site::Supply{.id = site::SupplyId("u"), .name = "Utility"});
    put(site::Panel{.id = site::PanelId("p"),
                    .name = "1A",
                    .supply = site::SupplyId("u"),
                    .place = site::Place{site::FloorId("f"), {0.0, 0.0}}});
  }

  template <class T>
  void put(T thing) {
    site.all<T>().put(std::move(thing));
  }

  void circuit(const std::string& id, double rating, site::UseClass use = site::UseClass::Ordinary) {
    site::Circuit one{.id = site::CircuitId(id), .panel = site::PanelId("p"), .number = id, .phases = {0}};
    one.rating = site::known(rating * ampere);
    one.size = site::known(units::WireSize::awg(rating > 15.0 ? 12 : 14));
    one.use = use;
    put(one);
  }

  // A duplex at that many metres along the corridor.
  void outlet(const std::string& label, const std::string& circuit, double atM,
              const std::string& receptacle = "5-20") {
    site::Outlet one{.id = site::OutletId(label), .label = label, .place = site::Place{site::FloorId("f"), {atM, 0.0}}};
    for (const char* name : {"upper", "lower"}) {
      site::Contact contact;
      contact.name = name;
      contact.assignment = site::Assignment{site::CircuitId(circuit), site::HowKnown::Traced, {}, {}};
      contact.receptacle = receptacle;
      one.contacts.push_back(contact);
    }
    put(one);
    site::Run run{.id = site::RunId("r" + label), .circuit = site::CircuitId(circuit), .to = one.id};
    run.length = site::known(60.0 * foot);
    put(run);
  }

  static site::CordMake make(int gauge, double feet) {
    site::CordMake made;
    made.type = "SJTW";
    made.size = site::known(units::WireSize::awg(gauge));
    made.conductors = site::known(3);
    made.length = site::known(feet * foot);
    made.plug = "5-15";
    return made;
  }

  void cord(const std::string& label, int gauge, double feet) {
    site::Cord one{.id = site::CordId(label), .label = label, .make = make(gauge, feet)};
    one.sockets = {"5-15"};
    put(one);
  }

  void machine(const std::string& id, double plate, int gauge, double feet, double workM) {
    site::Machine one{.id = site::MachineId(id), .name = id};
    site::Inlet inlet;
    inlet.name = "A";
    inlet.loadClass = tables::LoadClass::RectifiedDc;
    inlet.plate = site::known(plate * ampere);
    inlet.cord = make(gauge, feet);
    one.inlets = {inlet};
    one.place = site::Place{site::FloorId("f"), {workM, 0.0}};
    put(one);
  }

  void plug(const std::string& machine, const std::string& outlet, const std::string& cord = {}) {
    const site::OutletSocket wall{site::OutletId(outlet), "upper"};
    site::Hookup one{
        .id = site::HookupId("h" + machine), .machine = site::MachineId(machine), .inlet = "A", .socket = wall};
    one.hours = site::Hours{18.0 * hour, 20.0 * hour};
    if (!cord.empty()) {
      one.socket = site::CordSocket{site::CordId(cord), 0};
      put(site::ExtensionUse{.id = site::ExtensionUseId("x" + cord), .cord = site::CordId(cord), .socket = wall});
    }
    put(one);
  }

  [[nodiscard]] std::vector<rules::Finding> findings() const { return rules::judge(site, study::assess(site)); }

  // Of the first finding with that code; empty also when there is no such finding.
  [[nodiscard]] std::vector<Remedy> remedies(const std::string& code) const {
    const auto present = findings();
    const auto at = std::find_if(present.begin(), present.end(),
                                 [&](const rules::Finding& finding) { return finding.code == code; });
    if (at == present.end()) return {};
    return remediesFor(*at, site, present);
  }
  [[nodiscard]] bool has(const std::string& code) const {
    const auto present = findings();
    return std::any_of(present.begin(), present.end(),
                       [&](const rules::Finding& finding) { return finding.code == code; });
  }
};

[[nodiscard]] inline std::string textOf(const base::Arguments& arguments, const std::string& name) {
  for (const base::Argument& argument : arguments) {
    if (argument.name == name && std::holds_alternative<std::string>(argument.value)) {
      return std::get<std::string>(argument.value);
    }
  }
  return {};
}

}  // namespace cordreach::planning
