// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/case.h"

#include <algorithm>
#include <set>

#include "rules/sockets.h"
#include "site/queries.h"

namespace cordreach::rules {

namespace {

Link linkOf(const site::Hookup& hookup, const site::Site& site) {
  return {nullptr,       nullptr, &hookup, &site.at<site::Machine>(hookup.machine), site::inletOf(site, hookup),
          &hookup.socket};
}

Link linkOf(const site::ExtensionUse& use, const site::Site& site) {
  return {&use, &site.at<site::Cord>(use.cord), nullptr, nullptr, nullptr, &use.socket};
}

double hotness(const study::CordAnswer& answer) { return answer.conductor ? answer.conductor->likely.celsius() : 1e9; }

}  // namespace

bool together(const std::optional<site::Hours>& a, const std::optional<site::Hours>& b) {
  return !a || !b || a->overlaps(*b);
}

std::vector<Link> chainOf(const site::Hookup& hookup, const site::Site& site) {
  std::vector<Link> chain;
  for (const site::ChainLink& link : site::linksOf(site, hookup)) {
    chain.push_back(link.extension != nullptr ? linkOf(*link.extension, site) : linkOf(*link.through, site));
  }
  chain.push_back(linkOf(hookup, site));
  return chain;
}

Case::Case(const site::Site& site, const study::Answer& answer) : m_site(site), m_answer(answer) {
  for (const study::HookupAnswer& given : answer.hookups) {
    const site::Hookup* hookup = site.find<site::Hookup>(given.id);
    if (hookup == nullptr || hookup->off) continue;
    HookupCase one;
    one.hookup = hookup;
    one.chain = chainOf(*hookup, site);
    one.machine = one.chain.back().machine;
    one.inlet = one.chain.back().inlet;
    one.answer = &given;
    if (one.inlet == nullptr) continue;
    if (const auto* socket = std::get_if<site::OutletSocket>(one.chain.front().socket)) {
      one.outlet = &site.at<site::Outlet>(socket->outlet);
      one.contact = site::contactOf(site, *socket);
      one.circuit = site::circuitOf(site, *socket);
    }
    m_hookups.push_back(std::move(one));
  }
  gatherCords();
}

// The answers of a chain run from the outlet on and end with the machine's own cord, as the chain does.
void Case::gatherCords() {
  for (const HookupCase& one : m_hookups) {
    const std::size_t count = std::min(one.chain.size(), one.answer->cords.size());
    for (std::size_t back = 1; back <= count; ++back) {
      const Link& link = one.chain[one.chain.size() - back];
      const study::CordAnswer& given = one.answer->cords[one.answer->cords.size() - back];
      const auto known = std::find_if(m_cords.begin(), m_cords.end(), [&](const CordCase& cord) {
        return cord.link.use == link.use && cord.link.hookup == link.hookup;
      });
      if (known == m_cords.end()) {
        m_cords.push_back({link, &given, &one, {&one}});
        continue;
      }
      known->users.push_back(&one);
      if (hotness(given) > hotness(*known->answer)) {
        known->answer = &given;
        known->at = &one;
      }
    }
  }
}

std::vector<const HookupCase*> Case::on(const site::CircuitId& circuit) const {
  std::vector<const HookupCase*> found;
  for (const HookupCase& one : m_hookups) {
    if (one.circuit != nullptr && one.circuit->id == circuit) found.push_back(&one);
  }
  return found;
}

std::size_t Case::receptaclesOn(const site::CircuitId& circuit) const { return rules::receptaclesOn(m_site, circuit); }

std::vector<const site::Outlet*> Case::answeredOutlets() const {
  std::set<site::CircuitId> answered;
  for (const study::CircuitAnswer& circuit : m_answer.circuits) answered.insert(circuit.id);
  std::vector<const site::Outlet*> found;
  for (const site::Outlet& outlet : m_site.all<site::Outlet>()) {
    const bool any = std::any_of(outlet.contacts.begin(), outlet.contacts.end(), [&](const site::Contact& contact) {
      return contact.assignment && answered.contains(contact.assignment->circuit);
    });
    if (any) found.push_back(&outlet);
  }
  return found;
}

}  // namespace cordreach::rules
