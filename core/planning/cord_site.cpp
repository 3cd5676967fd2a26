// SPDX-License-Identifier: GPL-3.0-or-later
#include "planning/cord_site.h"

namespace cordreach::planning {

namespace {

const site::SupplyId kSupply("supply");
const site::PanelId kPanel("panel");
const site::CircuitId kCircuit("circuit");
const site::OutletId kOutlet("outlet");
const site::MachineId kMachine("machine");

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
  site.all<site::Circuit>().put(circuit);

  // A duplex, as nearly every outlet is.
  site::Outlet outlet{.id = kOutlet};
  outlet.label = "1";
  for (const char* name : {"upper", "lower"}) {
    site::Contact contact;
    contact.name = name;
    contact.assignment = site::Assignment{kCircuit, site::HowKnown::Traced, {}, {}};
    const bool twenty = breaker > 15.0 * units::ampere;
    contact.receptacle = !question.receptacle.empty() ? question.receptacle : twenty ? "5-20" : "5-15";
    outlet.contacts.push_back(contact);
  }
  site.all<site::Outlet>().put(outlet);

  if (!question.run) return;
  site::Run run{.id = site::RunId("run"), .circuit = kCircuit, .to = kOutlet};
  run.length = question.run;
  run.size = question.runSize;
  site.all<site::Run>().put(run);
}

}  // namespace

const site::HookupId& cordSiteHookup() {
  static const site::HookupId id("hookup");
  return id;
}

site::Site cordSite(const CordQuestion& question, units::Current breaker, const site::Cord* extension) {
  site::Site site{.id = site::SiteId("site")};
  addBuilding(question, breaker, site);

  site::Machine machine{.id = kMachine};
  machine.name = question.name;
  machine.inlets = {question.inlet};
  if (question.shaftPower) machine.shaftPower = site::known(*question.shaftPower);
  site.all<site::Machine>().put(machine);

  const site::OutletSocket wall{kOutlet, "upper"};
  site::Hookup hookup{.id = cordSiteHookup(), .machine = kMachine, .inlet = question.inlet.name, .socket = wall};
  if (extension != nullptr) {
    site.all<site::Cord>().put(*extension);
    site.all<site::ExtensionUse>().put({site::ExtensionUseId("extension"), extension->id, wall, {}, {}, {}});
    hookup.socket = site::CordSocket{extension->id, 0};
  }
  site.all<site::Hookup>().put(hookup);
  return site;
}

}  // namespace cordreach::planning
