// SPDX-License-Identifier: GPL-3.0-or-later
// Parts of a network: the same solver over fewer flat arrays.
#include "network/partial.h"

#include "base/contract.h"
#include "network/detail/results.h"
#include "network/detail/workspace.h"

namespace cordreach::network {

CircuitAlone solveCircuit(const Circuit& circuit, std::span<const Phasor> busV, const SolveOptions& options) {
  detail::Workspace memory;
  detail::FlatNetwork& flat = memory.flat();
  detail::flattenCircuit(circuit, busV, flat);
  detail::Newton newton(flat, options, memory.buffers());
  const EndReason end = newton.run();
  return {detail::circuitResults(flat, newton).front(), detail::summarise(flat, std::span(&circuit, 1), newton, end)};
}

PanelAlone solvePanel(const Network& network, std::size_t panel, std::span<const Phasor> feedingV,
                      const SolveOptions& options) {
  detail::Workspace memory;
  detail::FlatNetwork& flat = memory.flat();
  detail::flattenPanel(network, panel, feedingV, flat);
  detail::Newton newton(flat, options, memory.buffers());
  const EndReason end = newton.run();
  PanelAlone result;
  for (const detail::FlatPanel& place : flat.panels) {
    result.panels.push_back(place.original);
    result.panelV.push_back(detail::panelResult(place, newton));
  }
  for (const detail::FlatCircuit& place : flat.circuits) {
    result.circuitIndices.push_back(place.original);
  }
  result.circuits = detail::circuitResults(flat, newton);
  result.summary = detail::summarise(flat, network.circuits, newton, end);
  return result;
}

std::vector<Phasor> feedingVoltages(const Network& network, std::size_t panel, const Solution& solution) {
  CORDREACH_EXPECTS(panel < network.panels.size());
  const Panel& fed = network.panels[panel];
  if (!fed.fedFrom) return fed.sourceV;
  std::vector<Phasor> volts;
  volts.reserve(fed.feedPhases.size());
  for (const std::size_t phase : fed.feedPhases) volts.push_back(solution.panelV[*fed.fedFrom][phase]);
  return volts;
}

}  // namespace cordreach::network
