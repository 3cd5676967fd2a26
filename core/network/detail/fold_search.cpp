// SPDX-License-Identifier: GPL-3.0-or-later
// Impedance in front of each load, and from it how strongly the load folds.
#include "network/detail/fold_search.h"

#include <algorithm>
#include <cmath>

namespace cordreach::network::detail {
namespace {

constexpr double kSticks = 0.25;         // of its squared mismatch left after a full step
constexpr double kAmongTheWorst = 1e-2;  // of the largest squared mismatch of a circuit
constexpr double kWorthwhile = 1e-6;     // of the whole squared mismatch
constexpr double kNearFold = 0.5;        // strength; 1 is a fold by this load alone
constexpr double kEqual = 1.0 - 1e-6;    // loads this close count as the same

double size(Impedance z) { return std::hypot(z.re, z.im); }

}  // namespace

FoldSearch::FoldSearch(const FlatNetwork& network, const std::vector<LoadState>& loads,
                       const std::vector<double>& mismatch, const std::vector<double>& afterFullStep)
    : m_network(network),
      m_loads(loads),
      m_mismatch(mismatch),
      m_afterFullStep(afterFullStep),
      m_strength(loads.size()) {
  std::vector<double> panelOhm(network.panels.size());
  for (std::size_t i = 0; i < network.panels.size(); ++i) {
    const FlatPanel& panel = network.panels[i];
    panelOhm[i] = size(panel.pole) + size(panel.neutral) + (panel.fedFrom ? panelOhm[*panel.fedFrom] : 0.0);
  }
  std::vector<double> nodeOhm(network.nodes.size());
  for (const FlatCircuit& circuit : network.circuits) {
    for (std::size_t i = circuit.firstNode; i < circuit.endNode; ++i) {
      const FlatNode& node = network.nodes[i];
      const double front = i == circuit.firstNode ? panelOhm[circuit.panel] : nodeOhm[circuit.firstNode + node.parent];
      nodeOhm[i] = front + size(node.pole) + size(node.neutral);
      for (std::size_t k = node.firstLoad; k < node.endLoad; ++k) m_strength[k] = strength(k, nodeOhm[i]);
    }
  }
}

double FoldSearch::strength(std::size_t load, double frontOhm) const {
  const FlatLoad& flat = m_network.loads[load];
  if (flat.mode != LoadMode::Running) return 0;
  const LoadState& state = m_loads[load];
  const double voltageV = std::hypot(state.uRe, state.uIm);
  const physics::LoadPoint point = flat.law->at(voltageV);
  const double admittance = std::abs(point.admittanceS);
  if (admittance <= 0) return 0;
  const double slope = (std::conj(point.admittanceS) * point.admittanceSlopeSPerV).real() / admittance;
  const double strength = -(admittance + voltageV * slope) * frontOhm;
  return std::isfinite(strength) ? strength : 0;
}

double FoldSearch::strongest(const FlatCircuit& circuit) const {
  double strongest = 0;
  for (std::size_t k = circuit.firstLoad; k < circuit.endLoad; ++k) strongest = std::max(strongest, m_strength[k]);
  return strongest;
}

// The strongest, if above `atLeast`, and every motor that is below its pull-out already and so may jump at its kink.
void FoldSearch::add(const FlatCircuit& circuit, double atLeast, std::vector<std::size_t>& found) const {
  for (std::size_t k = circuit.firstLoad; k < circuit.endLoad; ++k) {
    const FlatLoad& load = m_network.loads[k];
    if (load.mode != LoadMode::Running) continue;
    const bool below = std::hypot(m_loads[k].uRe, m_loads[k].uIm) <= load.pullOutV;
    if (below || (m_strength[k] > 0 && m_strength[k] >= kEqual * atLeast)) found.push_back(k);
  }
}

std::vector<std::size_t> FoldSearch::folding() const {
  std::vector<std::size_t> found;
  double whole = 0;
  double largest = 0;
  for (const double mismatch : m_mismatch) {
    whole += mismatch;
    largest = std::max(largest, mismatch);
  }
  double strongestOfWorst = 0;
  for (std::size_t c = 0; c < m_network.circuits.size(); ++c) {
    const FlatCircuit& circuit = m_network.circuits[c];
    const double own = strongest(circuit);
    if (m_mismatch[c] >= kAmongTheWorst * largest) strongestOfWorst = std::max(strongestOfWorst, own);
    const bool goesDown = m_afterFullStep[c] <= kSticks * m_mismatch[c] || m_mismatch[c] <= kWorthwhile * whole;
    if (!goesDown) add(circuit, std::max(own, kNearFold), found);
  }
  if (!found.empty()) return found;
  for (std::size_t c = 0; c < m_network.circuits.size(); ++c) {
    if (m_mismatch[c] >= kAmongTheWorst * largest) add(m_network.circuits[c], strongestOfWorst, found);
  }
  return found;
}

}  // namespace cordreach::network::detail
