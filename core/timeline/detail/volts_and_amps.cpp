// SPDX-License-Identifier: GPL-3.0-or-later
#include "timeline/detail/volts_and_amps.h"

#include <algorithm>
#include <cmath>

namespace cordreach::timeline::detail {

namespace {

constexpr double kPullsA = 0.5;  // half an ampere more or less moves a bus by 30 mV at the default source

}  // namespace

VoltsAndAmps::VoltsAndAmps(network::Network network) : m_network(std::move(network)) {
  for (std::size_t i = 0; i < m_network.panels.size(); ++i) {
    const auto& fedFrom = m_network.panels[i].fedFrom;
    m_sourceOfPanel.push_back(fedFrom ? m_sourceOfPanel[*fedFrom] : m_rootPanels.size());
    if (!fedFrom) m_rootPanels.push_back(i);
  }
  m_circuitsOfSource.resize(m_rootPanels.size());
  m_panelV.resize(m_network.panels.size());
  m_circuits.resize(m_network.circuits.size());
  m_busSolvedA.resize(m_network.circuits.size(), 0.0);
  for (std::size_t i = 0; i < m_network.circuits.size(); ++i) m_circuitsOfSource[sourceOf(i)].push_back(i);
}

std::size_t VoltsAndAmps::sourceOf(std::size_t circuit) const {
  return m_sourceOfPanel[m_network.circuits[circuit].panel];
}

const std::vector<std::size_t>& VoltsAndAmps::solveSource(std::size_t source, const network::SolveOptions& options) {
  const std::size_t root = m_rootPanels[source];
  network::PanelAlone solved = network::solvePanel(m_network, root, m_network.panels[root].sourceV, options);
  for (std::size_t i = 0; i < solved.panels.size(); ++i) m_panelV[solved.panels[i]] = std::move(solved.panelV[i]);
  for (std::size_t i = 0; i < solved.circuitIndices.size(); ++i) {
    const std::size_t circuit = solved.circuitIndices[i];
    m_circuits[circuit] = std::move(solved.circuits[i]);
    m_busSolvedA[circuit] = largestPoleA(circuit);
  }
  return m_circuitsOfSource[source];
}

void VoltsAndAmps::solveCircuit(std::size_t circuit, const network::SolveOptions& options) {
  m_circuits[circuit] = solveInstead(circuit, m_network.circuits[circuit], options);
}

network::CircuitSolution VoltsAndAmps::solveInstead(std::size_t circuit, const network::Circuit& instead,
                                                    const network::SolveOptions& options) const {
  return network::solveCircuit(instead, busOf(circuit), options).circuit;
}

bool VoltsAndAmps::pullsAtItsBus(std::size_t circuit) const {
  return std::abs(largestPoleA(circuit) - m_busSolvedA[circuit]) > kPullsA;
}

double VoltsAndAmps::largestPoleA(std::size_t circuit, std::size_t first, std::size_t count) const {
  const auto& currents = m_circuits[circuit].branches.front().poleRmsA;
  double largest = 0.0;
  for (std::size_t pole = first; pole < first + count; ++pole) largest = std::max(largest, currents[pole]);
  return largest;
}

double VoltsAndAmps::largestPoleA(std::size_t circuit) const {
  return largestPoleA(circuit, 0, m_network.circuits[circuit].phases.size());
}

std::vector<network::Phasor> VoltsAndAmps::busOf(std::size_t circuit) const {
  const network::Circuit& place = m_network.circuits[circuit];
  std::vector<network::Phasor> volts;
  for (const std::size_t phase : place.phases) volts.push_back(m_panelV[place.panel][phase]);
  return volts;
}

}  // namespace cordreach::timeline::detail
