// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/cord_inputs.h"

#include <algorithm>

#include "panels/machine_types.h"
#include "panels/new_things.h"
#include "planning/cord_plan.h"
#include "site/queries.h"

namespace cordreach::app {

namespace {

const site::Inlet* inletNamed(const site::Machine& machine, const std::string& name) {
  const auto at = std::ranges::find(machine.inlets, name, &site::Inlet::name);
  return at == machine.inlets.end() ? nullptr : &*at;
}

std::optional<site::OutletSocket> firstOutlet(const site::Site& site) {
  for (const site::Outlet& outlet : site.all<site::Outlet>()) {
    for (const site::Contact& contact : outlet.contacts) {
      const site::OutletSocket socket{outlet.id, contact.name};
      const site::Circuit* circuit = site::circuitOf(site, socket);
      const bool ordinary = circuit != nullptr && circuit->use == site::UseClass::Ordinary;
      if (ordinary && contact.use == site::UseClass::Ordinary && !contact.dead) return socket;
    }
  }
  return std::nullopt;
}

void startMachine(CordInputs& inputs, const site::Site& site) {
  for (const site::Hookup& hookup : site.all<site::Hookup>()) {
    inputs.machineBy = MachineBy::Site;
    inputs.machine = hookup.machine;
    inputs.inletName = hookup.inlet;
    return;
  }
  for (const site::Machine& machine : site.all<site::Machine>()) {
    if (machine.inlets.empty() || machine.outOfService) continue;
    inputs.machineBy = MachineBy::Site;
    inputs.machine = machine.id;
    inputs.inletName = machine.inlets.front().name;
    return;
  }
  inputs.machineBy = MachineBy::Type;
}

void startOutlet(CordInputs& inputs, const site::Site& site) {
  inputs.outlet.reset();
  if (const site::Hookup* hookup = plannedHookup(inputs, site)) {
    if (const auto chain = site::chainOf(site, *hookup)) inputs.outlet = chain->outlet;
  }
  if (!inputs.outlet) inputs.outlet = firstOutlet(site);
  inputs.outletBy = inputs.outlet ? OutletBy::Site : OutletBy::Hand;
}

// The machine that an edit adds for a built-in type.
site::Machine machineOfType(const std::string& type, const text::Phrasebook& book) {
  site::Site blank{site::SiteId("blank")};
  NewMachine wanted;
  wanted.type = type;
  wanted.name = book.say("machine_type." + type);
  const NewEdit edit = addMachine(blank, wanted);
  CORDREACH_EXPECTS(edit.ok());
  const auto done = site::apply(edit.value(), blank);
  CORDREACH_EXPECTS(done.ok());
  return *blank.all<site::Machine>().begin();
}

}  // namespace

const site::Hookup* plannedHookup(const CordInputs& inputs, const site::Site& site) {
  if (inputs.machineBy != MachineBy::Site || !inputs.machine) return nullptr;
  const site::Hookup* first = nullptr;
  for (const site::Hookup& hookup : site.all<site::Hookup>()) {
    if (hookup.machine != *inputs.machine || hookup.inlet != inputs.inletName) continue;
    if (first == nullptr) first = &hookup;
    const auto chain = site::chainOf(site, hookup);
    if (chain && inputs.outletBy == OutletBy::Site && inputs.outlet == chain->outlet) return &hookup;
  }
  return first;
}

units::Length stepOf(Measure measure) {
  switch (measure) {
    case Measure::Paces:
      return 2.5 * units::foot;
    case Measure::FloorTiles:
      return 1.0 * units::foot;
    case Measure::CeilingTiles:
      return 2.0 * units::foot;
    case Measure::Length:
    case Measure::Plan:
      break;
  }
  return 1.0 * units::metre;
}

CordInputs startInputs(const site::Site& site) {
  CordInputs inputs;
  inputs.plate.name.assign(1, 'A');  // from a literal, g++ 12 at -O2 warns of its own library's copy
  inputs.plate.plate = site::known(12.0 * units::ampere);
  inputs.plate.cord.size = site::known(units::WireSize::awg(14));
  inputs.plate.cord.length = site::known(50.0 * units::foot);
  startMachine(inputs, site);
  startOutlet(inputs, site);
  inputs.cordsBy = site.all<site::Cord>().empty() ? CordsBy::Stock : CordsBy::Cart;
  if (planEnds(inputs, site)) inputs.measure = Measure::Plan;
  return inputs;
}

CordInputs stillThere(const CordInputs& inputs, const site::Site& site) {
  CordInputs kept = inputs;
  const site::Machine* machine = inputs.machine ? site.find<site::Machine>(*inputs.machine) : nullptr;
  if (machine == nullptr || inletNamed(*machine, inputs.inletName) == nullptr) {
    kept.machine.reset();
    if (kept.machineBy == MachineBy::Site) startMachine(kept, site);
  }
  const bool outletThere = inputs.outlet && site.find<site::Outlet>(inputs.outlet->outlet) != nullptr &&
                           site::contactOf(site, *inputs.outlet) != nullptr;
  if (!outletThere) {
    kept.outlet.reset();
    if (kept.outletBy == OutletBy::Site) startOutlet(kept, site);
  }
  if (kept.cordsBy == CordsBy::Cart && site.all<site::Cord>().empty()) kept.cordsBy = CordsBy::Stock;
  return kept;
}

std::optional<site::Place> workOf(const CordInputs& inputs, const site::Site& site) {
  if (const site::Hookup* hookup = plannedHookup(inputs, site); hookup != nullptr && hookup->place)
    return hookup->place;
  if (inputs.machineBy != MachineBy::Site || !inputs.machine) return std::nullopt;
  const site::Machine* machine = site.find<site::Machine>(*inputs.machine);
  return machine == nullptr ? std::nullopt : machine->place;
}

std::optional<PlanEnds> planEnds(const CordInputs& inputs, const site::Site& site) {
  const auto work = workOf(inputs, site);
  if (!work || inputs.outletBy != OutletBy::Site || !inputs.outlet) return std::nullopt;
  const site::Outlet* outlet = site.find<site::Outlet>(inputs.outlet->outlet);
  if (outlet == nullptr || !outlet->place || outlet->place->floor != work->floor) return std::nullopt;
  return PlanEnds{*outlet->place, *work};
}

planning::CordQuestion machineOf(const CordInputs& inputs, const site::Site& site, const text::Phrasebook& book) {
  planning::CordQuestion question;
  if (inputs.machineBy == MachineBy::Site && inputs.machine) {
    const site::Machine& machine = site.at<site::Machine>(*inputs.machine);
    planning::askAbout(machine, *inletNamed(machine, inputs.inletName), question);
  } else if (inputs.machineBy == MachineBy::Plate) {
    question.name = book.say("word.the_machine");
    question.inlet = inputs.plate;
    question.wet = inputs.plateWet;
  } else {
    const site::Machine machine = machineOfType(inputs.type, book);
    planning::askAbout(machine, machine.inlets.front(), question);
  }
  return question;
}

CordAsked askedOf(const CordInputs& inputs, const std::shared_ptr<const site::Site>& site,
                  const text::Phrasebook& book) {
  CordAsked asked{machineOf(inputs, *site, book), site, workOf(inputs, *site)};
  planning::CordQuestion& question = asked.question;
  const site::Hookup* planned = plannedHookup(inputs, *site);
  if (planned != nullptr) question.hours = planned->hours;
  question.distance = inputs.distance;
  if (inputs.outletBy == OutletBy::Site && inputs.outlet) {
    question.at = planning::SiteContact{site.get(), inputs.outlet->outlet, inputs.outlet->contact};
    if (planned != nullptr) planning::askAbout(*planned, question);
  } else {
    question.breaker = inputs.breaker;
    question.run = inputs.run;
    question.runSize = inputs.runSize;
    question.receptacle = inputs.receptacle;
    question.colour = inputs.colour;
    question.groundFaultDevice = inputs.groundFaultDevice;
  }
  if (inputs.cordsBy == CordsBy::Cart) question.cart = site.get();
  if (inputs.cordsBy == CordsBy::Jacket) question.jacket = inputs.jacket;
  question.whatIf = inputs.whatIf;
  return asked;
}

}  // namespace cordreach::app
