// SPDX-License-Identifier: GPL-3.0-or-later
#include "network/phase_amps.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <span>

namespace cordreach::network {

namespace {

struct PhaseAmps {
  Phasor fundamentalA{};
  double harmonicsA = 0.0;
};

void addLoad(const Load& load, const LoadSolution& solved, std::span<PhaseAmps* const> poles) {
  const double harmonicsA = std::sqrt(std::max(0.0, solved.totalRmsA * solved.totalRmsA - std::norm(solved.currentA)));
  poles[load.pole]->fundamentalA += solved.currentA;
  poles[load.pole]->harmonicsA += harmonicsA;
  if (!load.toPole) return;
  poles[*load.toPole]->fundamentalA -= solved.currentA;
  poles[*load.toPole]->harmonicsA += harmonicsA;
}

// Which phase of the panel stands behind a phase of another; none: that one does not hang on it.
std::optional<std::size_t> phaseAt(const Network& network, std::size_t panel, std::size_t from, std::size_t phase) {
  while (from != panel) {
    const Panel& bus = network.panels[from];
    if (!bus.fedFrom) return std::nullopt;
    phase = bus.feedPhases[phase];
    from = *bus.fedFrom;
  }
  return phase;
}

}  // namespace

double largestPhaseA(const Network& network, const std::vector<CircuitSolution>& circuits, std::size_t panel,
                     const Instead& instead, const Counts& counts) {
  std::array<PhaseAmps, 3> phases;
  for (std::size_t i = 0; i < network.circuits.size(); ++i) {
    const Circuit& circuit = network.circuits[i];
    std::array<PhaseAmps*, 3> poles{};
    for (std::size_t pole = 0; pole < circuit.phases.size(); ++pole) {
      const auto phase = phaseAt(network, panel, circuit.panel, circuit.phases[pole]);
      if (phase) poles[pole] = &phases[*phase];
    }
    if (poles.front() == nullptr) continue;
    const bool other = instead.solution != nullptr && instead.circuit == i;
    const CircuitSolution& solved = other ? *instead.solution : circuits[i];
    for (std::size_t k = 0; k < solved.loads.size(); ++k) {
      if (!counts || counts(i, k)) addLoad(circuit.loads[k], solved.loads[k], poles);
    }
  }
  double largest = 0.0;
  for (const PhaseAmps& phase : phases) {
    largest = std::max(largest, std::hypot(std::abs(phase.fundamentalA), phase.harmonicsA));
  }
  return largest;
}

bool hangsOn(const Network& network, std::size_t circuit, std::size_t panel) {
  const Circuit& place = network.circuits[circuit];
  return phaseAt(network, panel, place.panel, place.phases.front()).has_value();
}

}  // namespace cordreach::network
