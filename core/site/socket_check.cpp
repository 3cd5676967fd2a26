// SPDX-License-Identifier: GPL-3.0-or-later
// Contacts, inlets and sockets are told apart by their names, and those that something names are there.
#include <algorithm>
#include <set>

#include "site/checks.h"

namespace cordreach::site {
namespace {

using base::Error;

template <class Named>
Fault nameFault(const std::vector<Named>& items, const std::string& pointer) {
  std::set<std::string_view> names;
  for (std::size_t i = 0; i < items.size(); ++i) {
    const std::string place = pointer + "/" + std::to_string(i);
    if (items[i].name.empty()) return Error{"site.no_name", place, {}};
    if (names.insert(items[i].name).second) continue;
    return Error{"site.duplicate_name", place + "/name", {{"name", items[i].name}}};
  }
  return std::nullopt;
}

template <class Named>
bool hasName(const std::vector<Named>& items, const std::string& name) {
  return std::any_of(items.begin(), items.end(), [&](const Named& item) { return item.name == name; });
}

Fault outletFault(const Site& site, const Outlet& outlet) {
  const std::string pointer = pointerTo(site, outlet) + "/contacts";
  if (auto fault = nameFault(outlet.contacts, pointer)) return fault;
  for (std::size_t i = 0; i < outlet.contacts.size(); ++i) {
    const Contact& contact = outlet.contacts[i];
    for (std::size_t pole = 0; pole < contact.poles.size(); ++pole) {
      const auto* phases = contact.assignment ? &site.at<Circuit>(contact.assignment->circuit).phases : nullptr;
      if (phases != nullptr && std::find(phases->begin(), phases->end(), contact.poles[pole]) != phases->end())
        continue;
      return Error{"site.bad_phase",
                   pointer + "/" + std::to_string(i) + "/poles/" + std::to_string(pole),
                   {{"id", outlet.id.text()}}};
    }
  }
  return std::nullopt;
}

Fault machineFault(const Site& site, const Machine& machine) {
  const std::string pointer = pointerTo(site, machine) + "/inlets";
  if (auto fault = nameFault(machine.inlets, pointer)) return fault;
  for (std::size_t i = 0; i < machine.inlets.size(); ++i) {
    const auto& volts = machine.inlets[i].plateVoltage;
    if (!volts || volts->value.si() > 0.0) continue;
    return Error{"site.out_of_range",
                 pointer + "/" + std::to_string(i) + "/plate_v",
                 {{"value_v", volts->value.si()}, {"id", machine.id.text()}}};
  }
  return std::nullopt;
}

Fault missingSocket(const Site& site, const OutletSocket& socket, const std::string& pointer) {
  if (hasName(site.at<Outlet>(socket.outlet).contacts, socket.contact)) return std::nullopt;
  return Error{
      "site.no_contact", pointer + "/contact", {{"outlet", socket.outlet.text()}, {"contact", socket.contact}}};
}

Fault missingSocket(const Site& site, const CordSocket& socket, const std::string& pointer) {
  if (socket.socket < site.at<Cord>(socket.cord).sockets.size()) return std::nullopt;
  return Error{"site.no_socket", pointer + "/socket", {{"id", socket.cord.text()}}};
}

Fault missingSocket(const Site& site, const MachineSocket& socket, const std::string& pointer) {
  if (socket.socket < site.at<Machine>(socket.machine).sockets.size()) return std::nullopt;
  return Error{"site.no_socket", pointer + "/socket", {{"id", socket.machine.text()}}};
}

template <class Use>
Fault useFault(const Site& site, const Use& use) {
  const std::string pointer = pointerTo(site, use) + "/socket";
  return std::visit([&](const auto& socket) { return missingSocket(site, socket, pointer); }, use.socket);
}

Fault loadFault(const Site& site, const FixedLoad& load) {
  if (load.contact.empty()) return std::nullopt;
  if (load.outlet && hasName(site.at<Outlet>(*load.outlet).contacts, load.contact)) return std::nullopt;
  return Error{"site.no_contact",
               pointerTo(site, load) + "/contact",
               {{"outlet", load.outlet ? load.outlet->text() : std::string()}, {"contact", load.contact}}};
}

Fault cycleFault(const Site& site, const FixedLoad& load) {
  if (!load.cycle || (load.cycle->on + load.cycle->off).si() > 0.0) return std::nullopt;
  return Error{"site.out_of_range", pointerTo(site, load) + "/cycle/on_s", {{"value_s", load.cycle->on.si()}}};
}

template <class T, class Check>
Fault firstFault(const Site& site, Check check) {
  for (const T& thing : site.all<T>()) {
    if (auto fault = check(site, thing)) return fault;
  }
  return std::nullopt;
}

Fault hookupFault(const Site& site, const Hookup& hookup) {
  if (!hasName(site.at<Machine>(hookup.machine).inlets, hookup.inlet)) {
    return Error{"site.no_inlet",
                 pointerTo(site, hookup) + "/inlet",
                 {{"machine", hookup.machine.text()}, {"inlet", hookup.inlet}}};
  }
  return useFault(site, hookup);
}

}  // namespace

Fault socketFault(const Site& site) {
  Fault fault = firstFault<Outlet>(site, outletFault);
  if (!fault) fault = firstFault<FixedLoad>(site, loadFault);
  if (!fault) fault = firstFault<FixedLoad>(site, cycleFault);
  if (!fault) fault = firstFault<Machine>(site, machineFault);
  if (!fault) fault = firstFault<Hookup>(site, hookupFault);
  if (!fault) fault = firstFault<ExtensionUse>(site, useFault<ExtensionUse>);
  return fault;
}

}  // namespace cordreach::site
