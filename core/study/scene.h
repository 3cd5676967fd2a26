// SPDX-License-Identifier: GPL-3.0-or-later
// One moment of the plan in network terms: the standing wiring with every cord and machine that is then plugged in.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "site/site.h"
#include "study/load_book.h"
#include "study/moments.h"
#include "study/wiring.h"
#include "timeline/settle.h"

namespace cordreach::study {

// A cord between an outlet and a machine: the branch that ends at `node`.
struct CordLink {
  std::optional<site::ExtensionUseId> extension;  // none: the own cord of `hookup`
  std::optional<site::HookupId> hookup;
  std::size_t node = 0;
};

struct Plugged {
  Tap tap;  // at the machine's terminals
  Tap outletTap;
  site::OutletId outlet;
  std::string contact;
  std::optional<site::CircuitId> circuit;
  std::optional<std::size_t> load;  // index in the circuit's loads; none: off, or no power at the contact
  std::vector<CordLink> chain;      // from the outlet on
};

struct Scene {
  network::Network network;
  std::vector<timeline::HeatedBranch> heated;
  std::map<site::HookupId, Plugged> hookups;                       // those that end in a wired outlet
  std::map<site::FixedLoadId, std::pair<Tap, std::size_t>> loads;  // with the index in its circuit's loads
};

[[nodiscard]] Scene sceneOf(const site::Site& site, const Wiring& wiring, const Moment& moment, Corner corner,
                            LoadBook& book);

}  // namespace cordreach::study
