// SPDX-License-Identifier: GPL-3.0-or-later
// std::complex multiplies with a look for NaN that costs more than the product.
#include "network/detail/linear_sweep.h"

#include <algorithm>

namespace cordreach::network::detail {
namespace {

Pair pairOf(Phasor value) { return {value.real(), value.imag()}; }
Pair pairOf(Impedance value) { return {value.re, value.im}; }
Pair pairAt(const double* value) { return {value[0], value[1]}; }
Pair times(Pair x, Pair y) { return {x.re * y.re - x.im * y.im, x.re * y.im + x.im * y.re}; }

void add(Pair& sum, Pair part) {
  sum.re += part.re;
  sum.im += part.im;
}

void subtract(Pair& from, Pair part) {
  from.re -= part.re;
  from.im -= part.im;
}

Pair inverse(Pair value) {
  const double scale = 1.0 / std::max(value.re * value.re + value.im * value.im, kSmallestDeterminant);
  return {value.re * scale, -value.im * scale};
}

}  // namespace

void LinearSweep::run(std::vector<double>& voltage, std::vector<LoadState>& loads,
                      std::vector<physics::LoadPoint>& points) {
  m_folded.resize(m_network.nodes.size());
  m_elimination.begin();
  for (const FlatCircuit& circuit : m_network.circuits) fold(circuit);
  m_elimination.finishPanels(voltage);
  for (const FlatCircuit& circuit : m_network.circuits) {
    unfold(circuit, voltage);
    settle(circuit, voltage, loads, points);
  }
}

void LinearSweep::fold(const FlatCircuit& circuit) {
  const FlatNode* nodes = m_network.nodes.data() + circuit.firstNode;
  Folded* folded = m_folded.data() + circuit.firstNode;
  const std::size_t count = circuit.endNode - circuit.firstNode;
  std::fill_n(folded, count, Folded{});
  for (std::size_t i = count; i-- > 0;) {
    Pair drawn = folded[i].seen;
    for (std::uint32_t k = nodes[i].firstLoad; k < nodes[i].endLoad; ++k) {
      add(drawn, pairOf(m_network.loads[k].always->admittanceS));
    }
    Pair divisor = times(pairOf(nodes[i].pole), drawn);
    divisor.re += 1.0;
    folded[i].share = inverse(divisor);
    folded[i].seen = times(folded[i].share, drawn);
    if (i > 0) add(folded[nodes[i].parent].seen, folded[i].seen);
  }
  m_elimination.addToBus(circuit, {folded[0].seen.re, -folded[0].seen.im, folded[0].seen.im, folded[0].seen.re});
}

void LinearSweep::unfold(const FlatCircuit& circuit, std::vector<double>& voltage) {
  const FlatNode* nodes = m_network.nodes.data() + circuit.firstNode;
  Folded* folded = m_folded.data() + circuit.firstNode;
  double* own = voltage.data() + circuit.voltageAt;
  Pair front = pairAt(voltage.data() + m_network.panels[circuit.panel].voltageAt + 2 * circuit.phases[0]);
  for (std::size_t i = 0; i < circuit.endNode - circuit.firstNode; ++i) {
    if (i > 0) front = pairAt(own + std::size_t{2} * nodes[i].parent);
    const Pair volts = times(folded[i].share, front);
    own[2 * i] = volts.re;
    own[2 * i + 1] = volts.im;
    folded[i].seen = times(folded[i].seen, front);
    if (i > 0) subtract(folded[nodes[i].parent].seen, folded[i].seen);
  }
}

void LinearSweep::settle(const FlatCircuit& circuit, const std::vector<double>& voltage, std::vector<LoadState>& loads,
                         std::vector<physics::LoadPoint>& points) const {
  for (std::size_t i = 0; i < circuit.endNode - circuit.firstNode; ++i) {
    const FlatNode& node = m_network.nodes[circuit.firstNode + i];
    const Pair volts = pairAt(voltage.data() + circuit.voltageAt + 2 * i);
    Pair left = m_folded[circuit.firstNode + i].seen;
    for (std::uint32_t k = node.endLoad; k-- > node.firstLoad;) {
      points[k] = *m_network.loads[k].always;
      const Pair drawn = times(pairOf(points[k].admittanceS), volts);
      const Pair given = k == node.firstLoad ? left : drawn;
      subtract(left, drawn);
      loads[k].uRe = volts.re;
      loads[k].uIm = volts.im;
      loads[k].netRe = given.re;
      loads[k].netIm = given.im;
    }
  }
}

}  // namespace cordreach::network::detail
