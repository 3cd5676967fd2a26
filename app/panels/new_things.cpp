// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/new_things.h"

#include <algorithm>

#include "panels/cord_make_fields.h"
#include "panels/fresh_id.h"
#include "panels/label_numbers.h"
#include "panels/machine_types.h"
#include "site/phases.h"

namespace cordreach::app {

namespace {

template <class T>
site::Edit adding(std::string code, T thing) {
  return {std::move(code), {site::Change<T>{std::nullopt, std::move(thing)}}};
}

// After the label with the highest number, in its spelling.
template <class T, class LabelOf>
std::string nextLabel(const site::Site& site, LabelOf labelOf, const std::string& first) {
  const T* highest = nullptr;
  for (const T& thing : site.all<T>()) {
    if (highest == nullptr || lastNumber(labelOf(thing)) >= lastNumber(labelOf(*highest))) highest = &thing;
  }
  if (highest == nullptr || lastNumber(labelOf(*highest)) == 0) return first;
  const std::string label = labelOf(*highest);
  const NumberedLabel parts = numberedLabel(label);
  return withNumber(parts.stem, lastNumber(label) + 1, parts.digits);
}

site::CordMake machineCord(const MachineType& type) {
  site::CordMake make;
  if (type.cordSize) make.size = site::known(*type.cordSize);
  make.conductors = site::known(type.conductors);
  make.length = type.cordLength;
  make.plug = "5-15";
  return make;
}

site::Inlet inletOf(const MachineType& type, const std::string& name, tables::LoadClass loadClass,
                    const site::Known<units::Current>& plate) {
  site::Inlet inlet;
  inlet.name = name;
  inlet.loadClass = loadClass;
  inlet.plateVoltage = site::known(120.0 * units::volt);
  inlet.plate = plate ? plate : site::Known<units::Current>(type.plate);
  inlet.cord = machineCord(type);
  return inlet;
}

}  // namespace

site::Site newSite(const NewSite& wanted) {
  site::Site site{site::SiteId(site::randomIdText(randomSource())), wanted.name};
  site::Supply supply{freshId<site::Supply>(site), wanted.supplyName};
  supply.system = wanted.system;
  site.all<site::Supply>().put(supply);
  site.all<site::Floor>().put(site::Floor{freshId<site::Floor>(site), wanted.floorName});
  return site;
}

NewEdit addPanel(const site::Site& site, const NewPanel& wanted) {
  site::Panel panel{freshId<site::Panel>(site), wanted.name};
  if (site.all<site::Supply>().empty()) return base::Error{"new.no_supply", {}, {}};
  panel.supply = wanted.supply ? *wanted.supply : site.all<site::Supply>().begin()->id;
  panel.place = wanted.place;
  return adding("panel.add", std::move(panel));
}

NewEdit addBreakers(const site::Site& site, const NewBreakers& wanted) {
  const site::Panel* panel = site.find<site::Panel>(wanted.panel);
  if (panel == nullptr) return base::Error{"new.no_panel", wanted.panel.text(), {}};
  int last = 0;
  for (const site::Circuit& circuit : site.all<site::Circuit>()) {
    if (circuit.panel == panel->id) last = std::max(last, lastNumber(circuit.number));
  }
  if (wanted.count < 1 || last + wanted.count > kMostBreakers) {
    return base::Error{
        "new.bad_count", std::to_string(wanted.count), {{"most", static_cast<double>(kMostBreakers - last)}}};
  }
  const std::size_t phases = site::phaseCount(site::supplyOf(site, *panel).system);
  site::Site copy = site;
  site::Edit edit{"circuit.add", {}};
  for (int number = last + 1; number <= last + wanted.count; ++number) {
    site::Circuit circuit{freshId<site::Circuit>(copy), panel->id, std::to_string(number)};
    circuit.phases = {static_cast<std::size_t>((number - 1) / 2) % phases};
    circuit.rating = wanted.rating;
    copy.all<site::Circuit>().put(circuit);
    edit.changes.emplace_back(site::Change<site::Circuit>{std::nullopt, std::move(circuit)});
  }
  return edit;
}

NewEdit addOutlet(const site::Site& site, const NewOutlet& wanted) {
  if (wanted.circuit && site.find<site::Circuit>(*wanted.circuit) == nullptr) {
    return base::Error{"new.no_circuit", wanted.circuit->text(), {}};
  }
  site::Outlet outlet{freshId<site::Outlet>(site), wanted.label, wanted.place};
  for (const char* name : {"upper", "lower"}) {
    site::Contact contact;
    contact.name = wanted.single ? "single" : name;
    contact.receptacle = wanted.receptacle;
    if (wanted.circuit) contact.assignment = site::Assignment{*wanted.circuit, site::HowKnown::Assumed, {}, {}};
    outlet.contacts.push_back(std::move(contact));
    if (wanted.single) break;
  }
  return adding("outlet.add", std::move(outlet));
}

NewEdit addLoad(const site::Site& site, const NewLoad& wanted) {
  if (site.find<site::Circuit>(wanted.circuit) == nullptr) {
    return base::Error{"new.no_circuit", wanted.circuit.text(), {}};
  }
  site::FixedLoad load{freshId<site::FixedLoad>(site), wanted.name, wanted.circuit};
  load.loadClass = wanted.loadClass;
  load.plate = wanted.plate;
  load.place = wanted.place;
  return adding("load.add", std::move(load));
}

NewEdit addMachine(const site::Site& site, const NewMachine& wanted) {
  const MachineType* type = machineType(wanted.type);
  if (type == nullptr) return base::Error{"new.no_type", wanted.type, {}};
  site::Machine machine{freshId<site::Machine>(site), wanted.name, type->kind};
  machine.inlets.push_back(inletOf(*type, "A", type->loadClass, wanted.plate));
  if (type->secondClass) machine.inlets.push_back(inletOf(*type, "B", *type->secondClass, {}));
  if (type->speed) machine.speed = site::known(*type->speed);
  machine.wet = type->wet;
  machine.place = wanted.place;
  return adding("machine.add", std::move(machine));
}

NewEdit addCord(const site::Site& site, const NewCord& wanted) {
  site::Cord cord{freshId<site::Cord>(site), wanted.label};
  cord.make.legend = tidied(wanted.legend);
  fillFromLegend(cord.make);
  cord.make.length = wanted.length;
  cord.make.plug = wanted.plug;
  cord.make.printReadable = !cord.make.legend.empty();
  cord.tag = wanted.tag;
  cord.sockets.assign(static_cast<std::size_t>(std::clamp(wanted.sockets, 1, 12)), wanted.plug);
  return adding("cord.add", std::move(cord));
}

NewEdit addPad(const site::Site& site, const NewPad& wanted) {
  site::Pad pad{freshId<site::Pad>(site), wanted.name};
  pad.ratedSpeed = wanted.ratedSpeed;
  return adding("pad.add", std::move(pad));
}

std::string nextOutletLabel(const site::Site& site) {
  return nextLabel<site::Outlet>(
      site, [](const site::Outlet& outlet) { return outlet.label; }, "1");
}

std::string nextCordLabel(const site::Site& site) {
  return nextLabel<site::Cord>(
      site, [](const site::Cord& cord) { return cord.label; }, "C1");
}

}  // namespace cordreach::app
