// SPDX-License-Identifier: GPL-3.0-or-later
// Questions that everybody asks of a site. They expect one that holds its invariants.
#pragma once

#include <optional>
#include <vector>

#include "site/site.h"

namespace cordreach::site {

[[nodiscard]] const Contact* contactOf(const Site& site, const OutletSocket& socket);
[[nodiscard]] const Inlet* inletOf(const Site& site, const Hookup& hookup);
// Null: its breaker is unknown.
[[nodiscard]] const Circuit* circuitOf(const Site& site, const OutletSocket& socket);

// Who may plug in: the stricter of what the contact's colour or label says and what its circuit serves. An unknown
// breaker (null) makes nothing laxer.
[[nodiscard]] UseClass useOf(const Contact& contact, const Circuit* circuit);
// Of a contact that is not there: ordinary.
[[nodiscard]] UseClass useOf(const Site& site, const OutletSocket& socket);

// One step from an outlet towards a machine: an extension, or another machine whose pass-through socket is used.
struct ChainLink {
  const ExtensionUse* extension = nullptr;  // one of the two
  const Hookup* through = nullptr;

  friend bool operator==(const ChainLink&, const ChainLink&) = default;
};

struct Chain {
  OutletSocket outlet;
  std::vector<ChainLink> links;  // from the outlet on, without the machine itself
};

// As it is when the hookup begins, and for a cord or machine that comes later as it is then; from the outlet on, or
// from what hangs in the air.
[[nodiscard]] std::vector<ChainLink> linksOf(const Site& site, const Hookup& hookup);
// Nothing when it hangs in the air: it ends at a cord or machine that is not plugged in.
[[nodiscard]] std::optional<Chain> chainOf(const Site& site, const Hookup& hookup);

struct WiredOutlet {
  const Outlet* outlet = nullptr;
  const Run* run = nullptr;  // that feeds it; null: not drawn
};

// The outlets of a circuit: each after the one that feeds it, then those without a drawn run, by id.
[[nodiscard]] std::vector<WiredOutlet> outletsOf(const Site& site, const CircuitId& circuit);

// Plugged in at that time of the planned day; an extension without hours when something that is there hangs on it.
struct PluggedIn {
  std::vector<const Hookup*> hookups;
  std::vector<const ExtensionUse*> extensions;
};
[[nodiscard]] PluggedIn pluggedInAt(const Site& site, units::Duration time);

}  // namespace cordreach::site
