// SPDX-License-Identifier: GPL-3.0-or-later
// A large office building as a site: five floors, twelve panels, 600 circuits, 5,000 outlets with drawn runs, 250 rooms
// between walls, and thirty machines plugged in.
#pragma once

#include <string>

#include "site/site.h"

namespace cordreach::bench {

inline constexpr int kFloors = 5;
inline constexpr int kPanels = 12;
inline constexpr int kCircuits = 600;
inline constexpr int kOutlets = 5000;
inline constexpr int kMachines = 30;

class LargeSite {
 public:
  LargeSite() {
    site.all<site::Supply>().put({.id = site::SupplyId("S"), .name = "Service"});
    for (int floor = 0; floor < kFloors; ++floor) addFloor(floor);
    for (int panel = 0; panel < kPanels; ++panel) addPanel(panel);
    for (int circuit = 0; circuit < kCircuits; ++circuit) addCircuit(circuit);
    for (int machine = 0; machine < kMachines; ++machine) addMachine(machine);
  }

  static site::OutletId outletId(int outlet) { return site::OutletId("O" + std::to_string(outlet)); }

  site::Site site{site::SiteId("large"), "Large", {}, {}, {}};

 private:
  static constexpr int kPerFloor = kOutlets / kFloors;
  static constexpr int kAcross = 100;
  static constexpr double kApartM = 2.4;

  static site::FloorId floorId(int floor) { return site::FloorId("F" + std::to_string(floor)); }
  static site::PanelId panelId(int panel) { return site::PanelId("P" + std::to_string(panel)); }

  static site::Place placeOf(int outlet) {
    const int onFloor = outlet % kPerFloor;
    return {floorId(outlet / kPerFloor), {(onFloor % kAcross) * kApartM, (onFloor / kAcross) * 2 * kApartM}};
  }

  void addFloor(int number) {
    site::Floor floor{floorId(number), "Floor " + std::to_string(number + 1), number};
    for (int room = 0; room < 50; ++room) {
      const double x = (room % 10) * 24.0 - 1.0;
      const double y = (room / 10) * 9.6 - 1.0;
      floor.walls.push_back({{x, y}, {x + 23, y}});
      floor.walls.push_back({{x, y}, {x, y + 8.6}});
      site::Room one{site::RoomId("R" + std::to_string(number * 100 + room)), floor.id, "Office",
                     std::to_string(number * 100 + room)};
      one.outline = {{x, y}, {x + 23, y}, {x + 23, y + 8.6}, {x, y + 8.6}};
      site.all<site::Room>().put(one);
    }
    site.all<site::Floor>().put(floor);
  }

  void addPanel(int number) {
    site::Panel panel{panelId(number), std::to_string(number + 1) + "A", site::SupplyId("S")};
    panel.place = site::Place{floorId(number % kFloors), {2.0 + number, 1.0}};
    site.all<site::Panel>().put(panel);
  }

  // Its outlets one behind the other.
  void addCircuit(int number) {
    site::Circuit circuit{site::CircuitId("C" + std::to_string(number)),
                          panelId(number % kPanels),
                          std::to_string(number / kPanels + 1),
                          {static_cast<std::size_t>(number % 2)}};
    circuit.rating = site::known(20.0 * units::ampere);
    circuit.size = site::known(units::WireSize::awg(12));
    site.all<site::Circuit>().put(circuit);
    std::optional<site::OutletId> before;
    for (int i = kOutlets * number / kCircuits; i < kOutlets * (number + 1) / kCircuits; ++i) {
      site::Outlet outlet{outletId(i), std::to_string(i / kPerFloor + 1) + "-" + std::to_string(i % kPerFloor + 1)};
      outlet.place = placeOf(i);
      for (const char* name : {"upper", "lower"}) {
        site::Contact contact{name, site::Assignment{circuit.id, site::HowKnown::Traced, "Ana", "2026-01-30"}};
        contact.receptacle = "5-15";
        outlet.contacts.push_back(contact);
      }
      site.all<site::Outlet>().put(outlet);
      site::Run run{site::RunId("O" + std::to_string(i)), circuit.id, before, outlet.id};
      run.length = site::known((before ? 3.0 : 25.0) * units::metre);
      site.all<site::Run>().put(run);
      before = outlet.id;
    }
  }

  void addMachine(int number) {
    site::Inlet inlet;
    inlet.name = "A";
    inlet.loadClass = tables::LoadClass::Universal;
    inlet.plateVoltage = site::known(120.0 * units::volt);
    inlet.plate = site::known(9.0 * units::ampere);
    inlet.cord.type = "SJTW";
    inlet.cord.size = site::known(units::WireSize::awg(14));
    inlet.cord.length = site::known(50.0 * units::foot);
    const std::string name = "M" + std::to_string(number);
    site::Machine machine{.id = site::MachineId(name), .name = name, .kind = "vacuum", .inlets = {inlet}};
    const int outlet = number * (kOutlets / kMachines);
    machine.place = placeOf(outlet);
    machine.place->at.yM += 2.0;
    site.all<site::Machine>().put(machine);
    site.all<site::Hookup>().put({.id = site::HookupId("H" + name),
                                  .machine = machine.id,
                                  .inlet = "A",
                                  .socket = site::OutletSocket{outletId(outlet), "upper"}});
  }
};

}  // namespace cordreach::bench
