// SPDX-License-Identifier: GPL-3.0-or-later
// The standing wiring of a building as a network, before anything is plugged in: sources, panels, circuits with their
// runs, one node an outlet.
#pragma once

#include <cstddef>
#include <map>
#include <optional>
#include <set>
#include <utility>
#include <vector>

#include "network/network.h"
#include "site/site.h"
#include "study/corner.h"
#include "study/group.h"
#include "timeline/settle.h"
#include "units/quantity.h"

namespace cordreach::study {

// Where something is connected: a node of a circuit of the network, between a pole and another or the neutral.
struct Tap {
  std::size_t circuit = 0;
  std::size_t node = 0;
  std::size_t pole = 0;
  std::optional<std::size_t> toPole;

  friend bool operator==(const Tap&, const Tap&) = default;
};

struct Wiring {
  network::Network network;
  std::vector<timeline::HeatedBranch> heated;
  Groups groups;  // groups.groups[i] is network.circuits[i]
  std::map<site::PanelId, std::size_t> panels;
  std::vector<units::Voltage> nominal;                                        // [panel of the network], line to neutral
  std::map<std::pair<std::size_t, site::OutletId>, std::size_t> outletNodes;  // of that circuit of the network
  std::map<site::OutletId, std::size_t> supposed;  // a circuit of its own for an outlet whose breaker is unknown
};

struct WiringOptions {
  Corner corner = Corner::Likely;
  std::set<site::PanelId> panels;  // what is wired; feeding panels included
  std::set<site::CircuitId> lostNeutral;
};

[[nodiscard]] Wiring wire(const site::Site& site, const WiringOptions& options);

// Where a contact of an outlet is connected; none: its breaker is not among the panels wired.
[[nodiscard]] std::optional<Tap> tapOf(const Wiring& wiring, const site::Site& site, const site::Outlet& outlet,
                                       const site::Contact& contact);

// Where a fixed load is connected.
[[nodiscard]] std::optional<Tap> tapOf(const Wiring& wiring, const site::Site& site, const site::FixedLoad& load);

// The system's nominal voltage between the poles of a tap, and what the open-circuit source gives there.
[[nodiscard]] units::Voltage nominalOf(const Wiring& wiring, const Tap& tap);
[[nodiscard]] units::Voltage openCircuitOf(const Wiring& wiring, const Tap& tap);

}  // namespace cordreach::study
