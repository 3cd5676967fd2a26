// SPDX-License-Identifier: GPL-3.0-or-later
// A radial building in electrical terms: sources, panels, circuits as trees of nodes, loads at nodes.
// Every circuit is a bundle of one to three poles with a common neutral; a branch has the same impedance in each pole.
// A load between two poles draws nothing through the neutral, so a circuit without one is the same bundle.
#pragma once

#include <complex>
#include <cstddef>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "physics/load_law.h"

namespace cordreach::network {

using Phasor = std::complex<double>;

struct Branch {
  Phasor poleOhm;     // one conductor, one way
  Phasor neutralOhm;  // the neutral conductor, one way
};

// A panel's bus. Its phases are its own; `feedPhases[i]` is the phase of the feeding panel behind its phase i.
struct Panel {
  std::string label;
  std::optional<std::size_t> fedFrom;   // index of the feeding panel, which stands earlier in the list; none: a source
  std::vector<std::size_t> feedPhases;  // used when fed from a panel
  std::vector<Phasor> sourceV;          // used when fed from a source: open-circuit line-to-neutral voltages, 1 to 3
  Branch feeder;                        // source or feeder impedance up to this bus
};

struct Node {
  std::string label;
  std::size_t parent = 0;  // index in the circuit's nodes, smaller than its own; node 0 is the bus side and has none
  Branch branch;           // from the parent to here; of node 0: from the panel's bus (the breaker and its lugs)
};

struct Load {
  std::string label;
  std::size_t node = 0;
  std::size_t pole = 0;               // index in the circuit's poles
  std::optional<std::size_t> toPole;  // none: to the neutral
  std::shared_ptr<const physics::LoadLaw> law;
};

struct Circuit {
  std::string label;
  std::size_t panel = 0;
  std::vector<std::size_t> phases;  // the panel's phase behind each of its poles, 1 to 3
  std::vector<Node> nodes;          // at least one
  std::vector<Load> loads;
};

struct Network {
  std::vector<Panel> panels;
  std::vector<Circuit> circuits;
};

}  // namespace cordreach::network
