// SPDX-License-Identifier: GPL-3.0-or-later
// The whole network: flattened, solved, and put back into the callers' terms.
#include "network/solve.h"

#include "network/detail/results.h"
#include "network/detail/workspace.h"

namespace cordreach::network {

Solution solve(const Network& network, const SolveOptions& options) {
  detail::Workspace memory;
  detail::FlatNetwork& flat = memory.flat();
  detail::flatten(network, flat);
  detail::Newton newton(flat, options, memory.buffers());
  const EndReason end = newton.run();
  Solution solution;
  solution.panelV.reserve(flat.panels.size());
  for (const detail::FlatPanel& panel : flat.panels) solution.panelV.push_back(detail::panelResult(panel, newton));
  solution.circuits = detail::circuitResults(flat, newton);
  solution.summary = detail::summarise(flat, network.circuits, newton, end);
  return solution;
}

}  // namespace cordreach::network
