// SPDX-License-Identifier: GPL-3.0-or-later
#include "study/scene.h"

#include <algorithm>
#include <set>

#include "study/assumptions.h"
#include "study/branch_heat.h"

namespace cordreach::study {

namespace {

class Plugger {
 public:
  Plugger(const site::Site& site, const Wiring& wiring, const Moment& moment, Corner corner, LoadBook& book)
      : m_site(site), m_wiring(wiring), m_moment(moment), m_corner(corner), m_book(book) {
    m_scene.network = wiring.network;
    m_scene.heated = wiring.heated;
    for (const auto& id : moment.extensions) {
      const auto& use = site.at<site::ExtensionUse>(id);
      m_usesOfCord.insert({use.cord, &use});
    }
    for (const auto& id : moment.hookups) {
      const auto& hookup = site.at<site::Hookup>(id);
      m_hookupsOfMachine.insert({hookup.machine, &hookup});
    }
  }

  Scene run() {
    for (const auto& id : m_moment.loads) {
      const auto& load = m_site.at<site::FixedLoad>(id);
      // Everything that cycles or charges is on together at worst; at best it is off, or charged.
      if (m_corner != Corner::Favourable || (!load.cycle && !load.charge)) addFixedLoad(load);
    }
    for (const auto& id : m_moment.hookups) plug(m_site.at<site::Hookup>(id));
    return std::move(m_scene);
  }

 private:
  // What a plug finds in a socket: the way back to the outlet, and whether there is power.
  struct Supply {
    Plugged path;
    bool powered = true;
    bool loose = false;  // the outlet's contact
  };

  void addFixedLoad(const site::FixedLoad& load) {
    const auto tap = tapOf(m_wiring, m_site, load);
    if (!tap) return;
    const auto law = m_book.lawOf(load, nominalOf(m_wiring, *tap));
    m_scene.loads.insert({load.id, {*tap, addLoad(*tap, load.name, law)}});
  }

  std::size_t addLoad(const Tap& tap, const std::string& label, std::shared_ptr<const physics::LoadLaw> law) {
    auto& loads = m_scene.network.circuits[tap.circuit].loads;
    loads.push_back({label, tap.node, tap.pole, tap.toPole, std::move(law)});
    return loads.size() - 1;
  }

  const Supply* plug(const site::Hookup& hookup) {
    if (const auto done = m_plugged.find(hookup.id); done != m_plugged.end())
      return done->second ? &*done->second : nullptr;
    std::optional<Supply> supply = supplyAt(hookup.socket);
    if (supply) {
      const auto& machine = m_site.at<site::Machine>(hookup.machine);
      const auto& inlet = inletOf(machine, hookup.inlet);
      addCord(*supply, {std::nullopt, hookup.id, 0}, inlet.cord, hookup.ownCord, machine.name);
      if (!hookup.off && supply->powered) {
        const auto law = m_book.lawOf(hookup, nominalOf(m_wiring, supply->path.tap), m_corner);
        supply->path.load = addLoad(supply->path.tap, machine.name, law);
      }
      m_scene.hookups.insert({hookup.id, supply->path});
      supply->path.load.reset();
    }
    const auto& kept = m_plugged.insert({hookup.id, std::move(supply)}).first->second;
    return kept ? &*kept : nullptr;
  }

  const Supply* plug(const site::ExtensionUse& use) {
    if (const auto done = m_extended.find(use.id); done != m_extended.end())
      return done->second ? &*done->second : nullptr;
    std::optional<Supply> supply = supplyAt(use.socket);
    if (supply) {
      const auto& cord = m_site.at<site::Cord>(use.cord);
      addCord(*supply, {use.id, std::nullopt, 0}, cord.make, use.laying, cord.label);
    }
    const auto& kept = m_extended.insert({use.id, std::move(supply)}).first->second;
    return kept ? &*kept : nullptr;
  }

  std::optional<Supply> supplyAt(const site::Socket& socket) {
    if (const auto* outlet = std::get_if<site::OutletSocket>(&socket)) return supplyAtOutlet(*outlet);
    const Supply* before = nullptr;
    if (const auto* cord = std::get_if<site::CordSocket>(&socket)) {
      const auto use = m_usesOfCord.find(cord->cord);
      if (use != m_usesOfCord.end()) before = plug(*use->second);
    } else {
      const auto hookup = m_hookupsOfMachine.find(std::get<site::MachineSocket>(socket).machine);
      if (hookup != m_hookupsOfMachine.end()) before = plug(*hookup->second);
    }
    return before != nullptr ? std::optional(*before) : std::nullopt;
  }

  std::optional<Supply> supplyAtOutlet(const site::OutletSocket& socket) const {
    const auto& outlet = m_site.at<site::Outlet>(socket.outlet);
    const auto contact = std::find_if(outlet.contacts.begin(), outlet.contacts.end(),
                                      [&](const site::Contact& c) { return c.name == socket.contact; });
    if (contact == outlet.contacts.end()) return std::nullopt;
    const auto tap = tapOf(m_wiring, m_site, outlet, *contact);
    if (!tap) return std::nullopt;
    Supply supply{{*tap, *tap, outlet.id, contact->name, std::nullopt, std::nullopt, {}}};
    if (contact->assignment) supply.path.circuit = contact->assignment->circuit;
    const bool inHours = !contact->poweredHours || !m_moment.start || contact->poweredHours->holds(*m_moment.start);
    supply.powered = !contact->dead && inHours;
    supply.loose = contact->loose;
    return supply;
  }

  // Lengthens the way by a cord: a node at its far end, heated by what goes through it.
  void addCord(Supply& supply, CordLink link, const site::CordMake& make, const site::LayingOfCord& laying,
               const std::string& label) {
    Tap& tap = supply.path.tap;
    const std::string& id = link.extension ? link.extension->text() : link.hookup->text();
    const auto heat = m_book.heatOf({id, link.extension.has_value(), m_corner}, [&] {
      const bool loose = supply.path.chain.empty() && supply.loose;
      return std::make_shared<CordHeat>(CordHeat::Inputs{make, laying, roomOf(m_site), m_corner, loose});
    });
    auto& nodes = m_scene.network.circuits[tap.circuit].nodes;
    nodes.push_back({label, tap.node, heat->warm(0.0, 0.0)});
    tap.node = nodes.size() - 1;
    m_scene.heated.push_back({tap.circuit, tap.node, heat});
    link.node = tap.node;
    supply.path.chain.push_back(std::move(link));
  }

  const site::Site& m_site;
  const Wiring& m_wiring;
  const Moment& m_moment;
  Corner m_corner;
  LoadBook& m_book;
  Scene m_scene;
  std::map<site::CordId, const site::ExtensionUse*> m_usesOfCord;
  std::map<site::MachineId, const site::Hookup*> m_hookupsOfMachine;  // the first inlet feeds its sockets
  std::map<site::HookupId, std::optional<Supply>> m_plugged;
  std::map<site::ExtensionUseId, std::optional<Supply>> m_extended;
};

}  // namespace

Scene sceneOf(const site::Site& site, const Wiring& wiring, const Moment& moment, Corner corner, LoadBook& book) {
  return Plugger(site, wiring, moment, corner, book).run();
}

}  // namespace cordreach::study
