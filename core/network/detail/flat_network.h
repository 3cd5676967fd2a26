// SPDX-License-Identifier: GPL-3.0-or-later
// A network (or a part of it) as flat arrays for the solver's inner loop: nodes in their given order, which has every
// parent before its children; loads grouped by node; voltages and Norton equivalents at offsets into plain doubles.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "network/detail/fold.h"
#include "network/network.h"

namespace cordreach::network::detail {

inline constexpr std::uint8_t kNeutral = 255;

enum class LoadMode : std::uint8_t {
  Running,
  Held,  // kept at the impedance that it has at 0 V, to get past a fold; released or marked once the rest is solved
  Stalled,
};

struct FlatLoad {
  const physics::LoadLaw* law = nullptr;
  const physics::LoadPoint* always = nullptr;  // of a plain impedance
  double pullOutV = 0;
  std::uint32_t original = 0;  // index in the circuit's own list
  std::uint32_t pole = 0;      // offset of the pole's voltage in the flat array
  std::uint32_t toPole = 0;    // same of the other pole; not used to the neutral
  std::uint8_t poleIndex = 0;
  std::uint8_t toPoleIndex = kNeutral;
  LoadMode mode = LoadMode::Running;
  std::uint8_t releases = 0;
};

struct FlatNode {
  Impedance pole;     // one pole: with the neutral's
  Impedance neutral;  // not used with one pole
  std::uint32_t parent = 0;
  std::uint32_t firstLoad = 0;
  std::uint32_t endLoad = 0;
};

struct FlatCircuit {
  std::size_t original = 0;
  std::size_t panel = 0;  // in the flat list
  std::size_t poles = 1;
  std::array<std::uint8_t, 3> phases{};
  std::size_t firstNode = 0;
  std::size_t endNode = 0;
  std::size_t firstLoad = 0;
  std::size_t endLoad = 0;
  std::size_t voltageAt = 0;  // of node 0, first pole; real and imaginary part side by side
  std::size_t nortonAt = 0;
};

struct FlatPanel {
  std::size_t original = 0;
  std::size_t phases = 1;
  std::optional<std::size_t> fedFrom;  // in the flat list
  std::array<std::uint8_t, 3> feedPhases{};
  std::array<Phasor, 3> sourceV{};
  Impedance pole;
  Impedance neutral;
  std::size_t voltageAt = 0;
  std::size_t nortonAt = 0;
};

struct FlatNetwork {
  std::vector<FlatPanel> panels;  // each after the one that feeds it
  std::vector<FlatCircuit> circuits;
  std::vector<FlatNode> nodes;
  std::vector<FlatLoad> loads;
  std::size_t voltageSize = 0;
  std::size_t nortonSize = 0;
  bool onlyImpedances = true;  // and every circuit of one pole
};

[[nodiscard]] std::size_t nortonSize(std::size_t poles);

// The whole network. A network that breaks its own rules (an index out of range, a parent not before its child) is a
// contract failure: it was put together by our own code. What `flat` held before is overwritten.
void flatten(const Network& network, FlatNetwork& flat);

// A panel, what it feeds, and their circuits, from a held voltage in front of its feeder.
void flattenPanel(const Network& network, std::size_t panel, std::span<const Phasor> feedingV, FlatNetwork& flat);

// One circuit at a held bus. `busV`: one voltage a pole.
void flattenCircuit(const Circuit& circuit, std::span<const Phasor> busV, FlatNetwork& flat);

}  // namespace cordreach::network::detail
