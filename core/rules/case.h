// SPDX-License-Identifier: GPL-3.0-or-later
// A site beside its answer, with the chains of plugs and sockets walked once: what every rule looks at.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "site/site.h"
#include "study/answer.h"

namespace cordreach::rules {

// One plug in one socket on the way from an outlet to a machine: an extension's, or a machine's own.
struct Link {
  const site::ExtensionUse* use = nullptr;  // these two of an extension
  const site::Cord* cord = nullptr;
  const site::Hookup* hookup = nullptr;  // these three of a machine's own cord
  const site::Machine* machine = nullptr;
  const site::Inlet* inlet = nullptr;
  const site::Socket* socket = nullptr;  // what its plug is in

  [[nodiscard]] bool own() const { return use == nullptr; }
  [[nodiscard]] const site::CordMake& make() const { return own() ? inlet->cord : cord->make; }
};

struct HookupCase {
  const site::Hookup* hookup = nullptr;
  const site::Machine* machine = nullptr;
  const site::Inlet* inlet = nullptr;
  const study::HookupAnswer* answer = nullptr;
  std::vector<Link> chain;               // from the outlet on; the last is its own cord
  const site::Outlet* outlet = nullptr;  // none of the three: it hangs in the air
  const site::Contact* contact = nullptr;
  const site::Circuit* circuit = nullptr;  // none: breaker unknown
};

// One piece of cord with everybody who hangs on it.
struct CordCase {
  Link link;
  const study::CordAnswer* answer = nullptr;  // the hottest of those given for it
  const HookupCase* at = nullptr;             // whose answer that is
  std::vector<const HookupCase*> users;
};

class Case {
 public:
  // Keeps references to both, which must outlive it. Hookups without an answer, or switched off, are left out.
  Case(const site::Site& site, const study::Answer& answer);

  [[nodiscard]] const site::Site& site() const { return m_site; }
  [[nodiscard]] const study::Answer& answer() const { return m_answer; }
  [[nodiscard]] const std::vector<HookupCase>& hookups() const { return m_hookups; }
  [[nodiscard]] const std::vector<CordCase>& cords() const { return m_cords; }
  // All hookups that draw through this circuit at any time.
  [[nodiscard]] std::vector<const HookupCase*> on(const site::CircuitId& circuit) const;
  // How many contacts, each a receptacle, the circuit feeds.
  [[nodiscard]] std::size_t receptaclesOn(const site::CircuitId& circuit) const;
  // Outlets with at least one contact on a circuit that was answered.
  [[nodiscard]] std::vector<const site::Outlet*> answeredOutlets() const;

  Case(const Case&) = delete;
  Case& operator=(const Case&) = delete;

 private:
  void gatherCords();

  const site::Site& m_site;
  const study::Answer& m_answer;
  std::vector<HookupCase> m_hookups;
  std::vector<CordCase> m_cords;
};

// The chain of a hookup, from the outlet (or what hangs in the air) on; ends with the machine's own cord.
[[nodiscard]] std::vector<Link> chainOf(const site::Hookup& hookup, const site::Site& site);

// Both without hours count as on together with everything.
[[nodiscard]] bool together(const std::optional<site::Hours>& a, const std::optional<site::Hours>& b);

}  // namespace cordreach::rules
