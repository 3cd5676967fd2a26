// SPDX-License-Identifier: GPL-3.0-or-later
#include "planning/cord_site.h"

#include <algorithm>

#include "planning/cord_plan.h"
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

site::Machine machineOf(const CordQuestion& question, const site::Site& site) {
  site::Machine machine{.id = unusedId<site::Machine>(site, "machine")};
  machine.name = question.name;
  machine.kind = question.kind;
  machine.inlets = {question.inlet};
  machine.doubleInsulated = question.doubleInsulated;
  machine.wet = question.wet;
  if (question.shaftPower) machine.shaftPower = site::known(*question.shaftPower);
  return machine;
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
  const site::Machine machine = machineOf(question, site);
  site.all<site::Machine>().put(machine);
  site.all<site::Hookup>().put({.id = unusedId<site::Hookup>(site, "hookup-2"),
                                .machine = machine.id,
                                .inlet = question.inlet.name,
                                .socket = site::OutletSocket{wall.outlet, kNext},
                                .hours = question.hours});
}

// The hookup that is asked about, not yet plugged in.
site::Hookup askedIn(const CordQuestion& question, site::Site& site) {
  if (question.at && question.at->hookup) {
    site::Hookup hookup = question.at->site->at<site::Hookup>(*question.at->hookup);
    hookup.off = false;
    return hookup;
  }
  const site::Machine machine = machineOf(question, site);
  site.all<site::Machine>().put(machine);
  return {.id = askedHookup(question),
          .machine = machine.id,
          .inlet = question.inlet.name,
          .socket = site::OutletSocket{kOutlet, {}},
          .hours = question.hours};
}

// The extension, or two of half its length; answers the socket that the machine is plugged into.
site::Socket layExtension(const CordQuestion& question, const site::Cord& extension, const site::OutletSocket& wall,
                          site::Site& site) {
  std::vector<site::Cord> chain{extension};
  if (question.whatIf.chained) {
    chain.front().make.length->value = extension.make.length->value / 2.0;
    chain.push_back(chain.front());
  }
  site::LayingOfCord laying;
  if (question.whatIf.coiled) laying = {tables::Laying::Coiled, kTurnsLeft, {}};
  site::Socket socket = wall;
  for (site::Cord& cord : chain) {
    cord.id = unusedId<site::Cord>(site, cord.id.text());  // the plan may have it elsewhere
    site.all<site::Cord>().put(cord);
    site.all<site::ExtensionUse>().put(
        {unusedId<site::ExtensionUse>(site, "extension-" + cord.id.text()), cord.id, socket, {}, laying, {}});
    socket = site::CordSocket{cord.id, 0};
  }
  return socket;
}

}  // namespace

const site::HookupId& cordSiteHookup() {
  static const site::HookupId id("hookup");
  return id;
}

site::HookupId askedHookup(const CordQuestion& question) {
  if (!question.at) return cordSiteHookup();
  return question.at->hookup ? *question.at->hookup
                             : unusedId<site::Hookup>(*question.at->site, cordSiteHookup().text());
}

std::optional<site::PanelId> cordSitePanel(const site::Site& site, const site::HookupId& hookup) {
  const auto chain = site::chainOf(site, site.at<site::Hookup>(hookup));
  if (!chain) return std::nullopt;
  const site::Circuit* circuit = site::circuitOf(site, chain->outlet);
  return circuit == nullptr ? std::nullopt : std::optional(circuit->panel);
}

site::Site cordSite(const CordQuestion& question, units::Current breaker, const site::Cord* extension) {
  site::Site site{.id = site::SiteId("site")};
  site::OutletSocket wall{kOutlet, "upper"};
  if (question.at) {
    CordPlan plan = cordPlanOf(question);
    site = std::move(plan.site);
    wall = plan.wall;
  } else {
    addBuilding(question, breaker, site);
  }
  site::Hookup hookup = askedIn(question, site);
  hookup.socket = wall;
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
