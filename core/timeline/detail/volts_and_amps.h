// SPDX-License-Identifier: GPL-3.0-or-later
// The present solution of a day's network, kept whole while only parts of it are solved anew: all that hangs on one
// source, or one circuit at the bus that the last of these left.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "network/partial.h"
#include "network/phase_amps.h"
#include "network/solve.h"

namespace cordreach::timeline::detail {

class VoltsAndAmps {
 public:
  explicit VoltsAndAmps(network::Network network);

  [[nodiscard]] network::Network& network() { return m_network; }
  [[nodiscard]] const network::Network& network() const { return m_network; }
  [[nodiscard]] std::size_t sources() const { return m_circuitsOfSource.size(); }
  [[nodiscard]] std::size_t sourceOf(std::size_t circuit) const;

  // Answers the circuits that have a new solution.
  const std::vector<std::size_t>& solveSource(std::size_t source, const network::SolveOptions& options);
  void solveCircuit(std::size_t circuit, const network::SolveOptions& options);
  // A circuit that is not the network's own, at that one's bus.
  [[nodiscard]] network::CircuitSolution solveInstead(std::size_t circuit, const network::Circuit& instead,
                                                      const network::SolveOptions& options) const;
  // Its amps are no longer those that the bus was solved with.
  [[nodiscard]] bool pullsAtItsBus(std::size_t circuit) const;

  [[nodiscard]] const network::CircuitSolution& circuit(std::size_t index) const { return m_circuits[index]; }
  // Of the pole that carries most among some of a circuit's poles.
  [[nodiscard]] double largestPoleA(std::size_t circuit, std::size_t first, std::size_t count) const;

  // Of the phase that carries most at a panel, with all that hangs on it.
  [[nodiscard]] double largestPhaseA(std::size_t panel, const network::Instead& instead = {}) const {
    return network::largestPhaseA(m_network, m_circuits, panel, instead);
  }

 private:
  [[nodiscard]] std::vector<network::Phasor> busOf(std::size_t circuit) const;
  [[nodiscard]] double largestPoleA(std::size_t circuit) const;

  network::Network m_network;
  std::vector<std::size_t> m_rootPanels;  // [source]
  std::vector<std::size_t> m_sourceOfPanel;
  std::vector<std::vector<std::size_t>> m_circuitsOfSource;
  std::vector<std::vector<network::Phasor>> m_panelV;
  std::vector<network::CircuitSolution> m_circuits;
  std::vector<double> m_busSolvedA;  // [circuit]
};

}  // namespace cordreach::timeline::detail
