// SPDX-License-Identifier: GPL-3.0-or-later
// A small building for tests, made piece by piece: one split-phase panel, circuits, outlets, machines and cords.
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "site/site.h"

namespace cordreach::testing {

using units::ampere;
using units::foot;
using units::volt;

class SmallSite {
 public:
  SmallSite() {
    site::Supply supply{.id = site::SupplyId("S"), .name = "Service"};
    supply.loopImpedance = site::known(0.06 * units::ohm);
    supply.openCircuit = site::known(120.0 * volt);
    site.all<site::Supply>().put(supply);
    site.all<site::Panel>().put({.id = site::PanelId("P"), .name = "P", .supply = site::SupplyId("S")});
  }

  // A breaker with one run of 12 AWG to an outlet of the same name, a duplex of that receptacle.
  SmallSite& circuit(const std::string& id, double ratingA, double runFt, std::size_t phase = 0,
                     const std::string& receptacle = "5-20") {
    site::Circuit circuit{.id = site::CircuitId(id), .panel = site::PanelId("P"), .number = id, .phases = {phase}};
    circuit.rating = site::known(ratingA * ampere);
    circuit.size = site::known(units::WireSize::awg(12));
    site.all<site::Circuit>().put(circuit);
    site::Outlet outlet{.id = site::OutletId(id), .label = id};
    for (const char* name : {"upper", "lower"}) {
      site::Contact contact;
      contact.name = name;
      contact.receptacle = receptacle;
      contact.assignment = site::Assignment{circuit.id, site::HowKnown::Traced, {}, {}};
      outlet.contacts.push_back(contact);
    }
    site.all<site::Outlet>().put(outlet);
    site.all<site::Run>().put(
        {.id = site::RunId(id), .circuit = circuit.id, .to = outlet.id, .length = site::known(runFt * foot)});
    return *this;
  }

  SmallSite& machine(const std::string& id, tables::LoadClass loadClass, double plateA, int awg = 14,
                     double cordFt = 50.0) {
    site::Inlet inlet;
    inlet.name = "A";
    inlet.loadClass = loadClass;
    inlet.plateVoltage = site::known(120.0 * volt);
    inlet.plate = site::known(plateA * ampere);
    inlet.cord = cordMake(awg, cordFt);
    site.all<site::Machine>().put({.id = site::MachineId(id), .name = id, .kind = "burnisher", .inlets = {inlet}});
    return *this;
  }

  SmallSite& cord(const std::string& id, int awg, double lengthFt, std::size_t sockets = 1) {
    site::Cord cord{.id = site::CordId(id), .label = id, .make = cordMake(awg, lengthFt)};
    cord.sockets.assign(sockets, "5-15");
    site.all<site::Cord>().put(cord);
    return *this;
  }

  SmallSite& load(const std::string& id, const std::string& circuit, double currentA,
                  std::optional<site::Cycle> cycle = std::nullopt) {
    site::FixedLoad load{.id = site::FixedLoadId(id), .name = id, .circuit = site::CircuitId(circuit)};
    load.running = site::known(currentA * ampere);
    load.cycle = cycle;
    site.all<site::FixedLoad>().put(load);
    return *this;
  }

  SmallSite& extension(const std::string& cord, const std::string& outlet, site::LayingOfCord laying = {}) {
    site.all<site::ExtensionUse>().put({.id = site::ExtensionUseId("X" + cord),
                                        .cord = site::CordId(cord),
                                        .socket = site::OutletSocket{site::OutletId(outlet), "upper"},
                                        .laying = laying});
    return *this;
  }

  SmallSite& plug(const std::string& machine, site::Socket socket,
                  std::optional<std::pair<double, double>> hours = {}) {
    site::Hookup hookup{.id = site::HookupId("H" + machine),
                        .machine = site::MachineId(machine),
                        .inlet = "A",
                        .socket = std::move(socket)};
    if (hours) hookup.hours = site::Hours{hours->first * units::hour, hours->second * units::hour};
    site.all<site::Hookup>().put(hookup);
    return *this;
  }

  static site::Socket at(const std::string& outlet, const std::string& contact = "upper") {
    return site::OutletSocket{site::OutletId(outlet), contact};
  }
  static site::Socket in(const std::string& cord, std::size_t socket = 0) {
    return site::CordSocket{site::CordId(cord), socket};
  }

  site::Site site{site::SiteId("small"), "Small", {}, {}, {}};

 private:
  static site::CordMake cordMake(int awg, double lengthFt) {
    site::CordMake make;
    make.type = "SJTW";
    make.size = site::known(units::WireSize::awg(awg));
    make.conductors = site::known(3);
    make.length = site::known(lengthFt * foot);
    make.plug = "5-15";
    return make;
  }
};

}  // namespace cordreach::testing
