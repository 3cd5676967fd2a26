// SPDX-License-Identifier: GPL-3.0-or-later
#include "planning/cord_site.h"

#include <algorithm>

#include "site/queries.h"
#include "study/assumptions.h"
#include "study/source.h"

namespace cordreach::planning {

namespace {

const site::SupplyId kSupply("supply");
const site::PanelId kPanel("panel");
const site::CircuitId kCircuit("circuit");
const site::OutletId kOutlet("outlet");
const char* const kNext = "next";  // receptacle of the second machine

const units::Temperature kHotDay = units::Temperature::fromCelsius(40.0);
constexpr double kLowSupply = 0.95;
constexpr double kTurnsLeft = 10.0;

void addBuilding(const CordQuestion& question, units::Current breaker, site::Site& site) {
  site::Supply supply{.id = kSupply};
  supply.system = site::WiringSystem::SplitPhase120;
  site.all<site::Supply>().put(supply);

  site::Panel panel{.id = kPanel};
  panel.name = "P";
  panel.supply = kSupply;
  site.all<site::Panel>().put(panel);

  site::Circuit circuit{.id = kCircuit, .panel = kPanel};
  circuit.number = "1";
  circuit.phases = {0};
  circuit.rating = site::known(breaker);
  circuit.size = question.runSize;
  circuit.use = useOf(question.colour);
  site.all<site::Circuit>().put(circuit);

  // A duplex, as nearly every outlet is.
  site::Outlet outlet{.id = kOutlet};
  outlet.label = "1";
  outlet.groundFaultDevice = question.groundFaultDevice;
  for (const char* name : {"upper", "lower"}) {
    site::Contact contact;
    contact.name = name;
    contact.assignment = site::Assignment{kCircuit, site::HowKnown::Traced, {}, {}};
    const bool twenty = breaker > 15.0 * units::ampere;
    contact.receptacle = !question.receptacle.empty() ? question.receptacle : twenty ? "5-20" : "5-15";
    contact.colour = question.colour;
    contact.use = useOf(question.colour);
    outlet.contacts.push_back(contact);
  }
  site.all<site::Outlet>().put(outlet);

  if (!question.run) return;
  site::Run run{.id = site::RunId("run"), .circuit = kCircuit, .to = kOutlet};
  run.length = question.run;
  run.size = question.runSize;
  site.all<site::Run>().put(run);
}

site::Machine machineOf(const CordQuestion& question, const char* id) {
  site::Machine machine{.id = site::MachineId(id)};
  machine.name = question.name;
  machine.kind = question.kind;
  machine.inlets = {question.inlet};
  machine.doubleInsulated = question.doubleInsulated;
  machine.wet = question.wet;
  if (question.shaftPower) machine.shaftPower = site::known(*question.shaftPower);
  return machine;
}

// Nothing of what was planned, and nothing that was accepted for it.
site::Site emptied(const site::Site& described) {
  site::Site site = described;
  site.all<site::Hookup>() = {};
  site.all<site::ExtensionUse>() = {};
  site.all<site::Event>() = {};
  site.all<site::Acceptance>() = {};
  site.all<site::HistoryEntry>() = {};
  site.all<site::Machine>() = {};
  site.all<site::Cord>() = {};
  return site;
}

void heatUp(site::Site& site) {
  const auto atLeast = [](site::Known<units::Temperature>& air, units::Temperature assumed) {
    const units::Temperature now = air ? air->value : assumed;
    if (now < kHotDay) air = site::known(kHotDay);
  };
  const units::Temperature wall = study::wallOf(site);
  atLeast(site.ambient.panel, study::roomOf(site));
  atLeast(site.ambient.wall, wall);
  atLeast(site.ambient.room, study::roomOf(site));
}

void lowerSupplies(site::Site& site) {
  std::vector<site::Supply> supplies(site.all<site::Supply>().begin(), site.all<site::Supply>().end());
  for (site::Supply& supply : supplies) {
    const units::Voltage low = study::nominalLineToNeutral(supply.system) * kLowSupply;
    if (supply.openCircuit && supply.openCircuit->value < low) continue;
    supply.openCircuit = site::known(low);
    site.all<site::Supply>().put(supply);
  }
}

void tireBreaker(const site::OutletSocket& wall, site::Site& site) {
  const site::Circuit* circuit = site::circuitOf(site, wall);
  if (circuit == nullptr) return;
  site::Circuit tired = *circuit;
  tired.mayNotTrip = true;
  site.all<site::Circuit>().put(tired);
}

void addSecond(const CordQuestion& question, const site::OutletSocket& wall, site::Site& site) {
  site::Outlet outlet = site.at<site::Outlet>(wall.outlet);
  site::Contact next = *site::contactOf(site, wall);
  next.name = kNext;
  outlet.contacts.push_back(next);
  site.all<site::Outlet>().put(outlet);
  const site::Machine machine = machineOf(question, "machine-2");
  site.all<site::Machine>().put(machine);
  site.all<site::Hookup>().put({.id = site::HookupId("hookup-2"),
                                .machine = machine.id,
                                .inlet = question.inlet.name,
                                .socket = site::OutletSocket{wall.outlet, kNext}});
}

// The extension, or two of half its length; answers the socket that the machine is plugged into.
site::Socket layExtension(const CordQuestion& question, const site::Cord& extension, const site::OutletSocket& wall,
                          site::Site& site) {
  std::vector<site::Cord> chain{extension};
  if (question.whatIf.chained) {
    chain.front().make.length->value = extension.make.length->value / 2.0;
    chain.push_back(chain.front());
    chain.back().id = site::CordId(extension.id.text() + "-2");
  }
  site::LayingOfCord laying;
  if (question.whatIf.coiled) laying = {tables::Laying::Coiled, kTurnsLeft, {}};
  site::Socket socket = wall;
  for (const site::Cord& cord : chain) {
    site.all<site::Cord>().put(cord);
    site.all<site::ExtensionUse>().put(
        {site::ExtensionUseId("extension-" + cord.id.text()), cord.id, socket, {}, laying, {}});
    socket = site::CordSocket{cord.id, 0};
  }
  return socket;
}

}  // namespace

const site::HookupId& cordSiteHookup() {
  static const site::HookupId id("hookup");
  return id;
}

std::optional<site::PanelId> cordSitePanel(const site::Site& site) {
  const auto chain = site::chainOf(site, site.at<site::Hookup>(cordSiteHookup()));
  if (!chain) return std::nullopt;
  const site::Circuit* circuit = site::circuitOf(site, chain->outlet);
  return circuit == nullptr ? std::nullopt : std::optional(circuit->panel);
}

site::Site cordSite(const CordQuestion& question, units::Current breaker, const site::Cord* extension) {
  site::Site site{.id = site::SiteId("site")};
  site::OutletSocket wall{kOutlet, "upper"};
  if (question.at) {
    site = emptied(*question.at->site);
    wall = {question.at->outlet, question.at->contact};
  } else {
    addBuilding(question, breaker, site);
  }
  const site::Machine machine = machineOf(question, "machine");
  site.all<site::Machine>().put(machine);

  site::Hookup hookup{.id = cordSiteHookup(), .machine = machine.id, .inlet = question.inlet.name, .socket = wall};
  if (extension != nullptr) hookup.socket = layExtension(question, *extension, wall, site);
  if (extension == nullptr && question.whatIf.coiled) hookup.ownCord = {tables::Laying::Coiled, kTurnsLeft, {}};
  site.all<site::Hookup>().put(hookup);

  if (question.whatIf.hotDay) heatUp(site);
  if (question.whatIf.lowSupply) lowerSupplies(site);
  if (question.whatIf.tiredBreaker) tireBreaker(wall, site);
  if (question.whatIf.secondMachine) addSecond(question, wall, site);
  return site;
}

}  // namespace cordreach::planning
