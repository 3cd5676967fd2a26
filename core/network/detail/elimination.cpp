// SPDX-License-Identifier: GPL-3.0-or-later
// Leaf-to-root elimination over the flat arrays, specialised by the number of poles; nothing is allocated in it.
#include "network/detail/elimination.h"

#include <algorithm>

namespace cordreach::network::detail {
namespace {

// Adds D to the blocks (row pole, column pole) of an N x N matrix.
template <int P>
void addBlock(double* norton, std::size_t row, std::size_t column, const Block& d, double sign) {
  constexpr std::size_t n = 2 * P;
  double* first = norton + 2 * row * n + 2 * column;
  double* second = first + n;
  first[0] += sign * d.a;
  first[1] += sign * d.b;
  second[0] += sign * d.c;
  second[1] += sign * d.d;
}

template <int P>
void addLoad(double* norton, const FlatLoad& load, const LoadState& state) {
  constexpr std::size_t n = 2 * P;
  double* s = norton + n * n;
  addBlock<P>(norton, load.poleIndex, load.poleIndex, state.d, 1.0);
  s[2 * load.poleIndex] += state.sRe;
  s[2 * load.poleIndex + 1] += state.sIm;
  if (load.toPoleIndex == kNeutral) return;
  addBlock<P>(norton, load.poleIndex, load.toPoleIndex, state.d, -1.0);
  addBlock<P>(norton, load.toPoleIndex, load.poleIndex, state.d, -1.0);
  addBlock<P>(norton, load.toPoleIndex, load.toPoleIndex, state.d, 1.0);
  s[2 * load.toPoleIndex] -= state.sRe;
  s[2 * load.toPoleIndex + 1] -= state.sIm;
}

// What a bundle of P poles draws, added to a bus of `busPhases` through its map of phases.
void addMapped(double* bus, std::size_t busPhases, const double* seen, std::size_t poles, const std::uint8_t* phases) {
  const std::size_t busSize = 2 * busPhases;
  const std::size_t size = 2 * poles;
  for (std::size_t row = 0; row < size; ++row) {
    const std::size_t busRow = 2 * std::size_t{phases[row / 2]} + row % 2;
    for (std::size_t k = 0; k < size; ++k) {
      bus[busRow * busSize + 2 * std::size_t{phases[k / 2]} + k % 2] += seen[row * size + k];
    }
    bus[busSize * busSize + busRow] += seen[size * size + row];
  }
}

template <int P>
void foldBundle(double* norton, Impedance pole, Impedance neutral, double* seen) {
  foldPoles<P>(norton, pole);
  foldNeutral<P>(norton, neutral, seen);
}

Impedance sum(Impedance x, Impedance y) { return {x.re + y.re, x.im + y.im}; }

}  // namespace

void Elimination::foldSingleCircuit(const FlatCircuit& circuit, const std::vector<LoadState>& loads) {
  double* norton = m_norton.data() + circuit.nortonAt;
  const FlatNode* nodes = m_network.nodes.data() + circuit.firstNode;
  for (std::size_t i = circuit.endNode - circuit.firstNode; i-- > 0;) {
    const FlatNode& node = nodes[i];
    double* own = norton + i * kNortonSize<1>;
    for (std::uint32_t k = node.firstLoad; k < node.endLoad; ++k) {
      const LoadState& load = loads[k];
      own[0] += load.d.a;
      own[1] += load.d.b;
      own[2] += load.d.c;
      own[3] += load.d.d;
      own[4] += load.sRe;
      own[5] += load.sIm;
    }
    foldSingle(own, node.pole);
    if (i == 0) break;
    double* parent = norton + node.parent * kNortonSize<1>;
    for (std::size_t k = 0; k < kNortonSize<1>; ++k) parent[k] += own[k];
  }
  const FlatPanel& panel = m_network.panels[circuit.panel];
  addMapped(m_norton.data() + panel.nortonAt, panel.phases, norton, 1, circuit.phases.data());
}

template <int P>
void Elimination::foldCircuit(const FlatCircuit& circuit, const std::vector<LoadState>& loads) {
  constexpr std::size_t n = 2 * P;
  double* norton = m_norton.data() + circuit.nortonAt;
  double seen[n * n + n];
  for (std::size_t i = circuit.endNode - circuit.firstNode; i-- > 0;) {
    const FlatNode& node = m_network.nodes[circuit.firstNode + i];
    double* own = norton + i * kNortonSize<P>;
    for (std::uint32_t k = node.firstLoad; k < node.endLoad; ++k) addLoad<P>(own, m_network.loads[k], loads[k]);
    foldBundle<P>(own, node.pole, node.neutral, seen);
    if (i == 0) break;
    double* parent = norton + node.parent * kNortonSize<P>;
    for (std::size_t k = 0; k < n * n + n; ++k) parent[k] += seen[k];
  }
  const FlatPanel& panel = m_network.panels[circuit.panel];
  addMapped(m_norton.data() + panel.nortonAt, panel.phases, seen, P, circuit.phases.data());
}

template <int P>
void Elimination::foldPanel(const FlatPanel& panel) {
  constexpr std::size_t n = 2 * P;
  double* own = m_norton.data() + panel.nortonAt;
  double seen[n * n + n];
  if constexpr (P == 1) {
    foldSingle(own, sum(panel.pole, panel.neutral));
    std::copy(own, own + kNortonSize<1>, seen);
  } else {
    foldBundle<P>(own, panel.pole, panel.neutral, seen);
  }
  if (!panel.fedFrom) return;
  const FlatPanel& feeding = m_network.panels[*panel.fedFrom];
  addMapped(m_norton.data() + feeding.nortonAt, feeding.phases, seen, P, panel.feedPhases.data());
}

void Elimination::unfoldPanel(const FlatPanel& panel, std::vector<double>& voltage) const {
  double feeding[6];
  for (std::size_t i = 0; i < panel.phases; ++i) {
    if (panel.fedFrom) {
      const double* from = voltage.data() + m_network.panels[*panel.fedFrom].voltageAt + 2 * panel.feedPhases[i];
      feeding[2 * i] = from[0];
      feeding[2 * i + 1] = from[1];
    } else {
      feeding[2 * i] = panel.sourceV[i].real();
      feeding[2 * i + 1] = panel.sourceV[i].imag();
    }
  }
  const double* norton = m_norton.data() + panel.nortonAt;
  double* bus = voltage.data() + panel.voltageAt;
  if (panel.phases == 1) unfoldSingle(norton, sum(panel.pole, panel.neutral), feeding, bus);
  if (panel.phases == 2) unfold<2>(norton, panel.pole, feeding, bus);
  if (panel.phases == 3) unfold<3>(norton, panel.pole, feeding, bus);
}

void Elimination::unfoldSingleCircuit(const FlatCircuit& circuit, std::vector<double>& voltage) const {
  const FlatNode* nodes = m_network.nodes.data() + circuit.firstNode;
  const double* norton = m_norton.data() + circuit.nortonAt;
  const double* bus = voltage.data() + m_network.panels[circuit.panel].voltageAt + 2 * circuit.phases[0];
  double* own = voltage.data() + circuit.voltageAt;
  unfoldSingle(norton, nodes[0].pole, bus, own);
  for (std::size_t i = 1; i < circuit.endNode - circuit.firstNode; ++i) {
    unfoldSingle(norton + i * kNortonSize<1>, nodes[i].pole, own + std::size_t{2} * nodes[i].parent, own + 2 * i);
  }
}

template <int P>
void Elimination::unfoldCircuit(const FlatCircuit& circuit, std::vector<double>& voltage) const {
  constexpr std::size_t n = 2 * P;
  const FlatNode* nodes = m_network.nodes.data() + circuit.firstNode;
  const double* norton = m_norton.data() + circuit.nortonAt;
  const double* bus = voltage.data() + m_network.panels[circuit.panel].voltageAt;
  double* own = voltage.data() + circuit.voltageAt;
  double feeding[n];
  for (std::size_t k = 0; k < n; ++k) feeding[k] = bus[2 * std::size_t{circuit.phases[k / 2]} + k % 2];
  unfold<P>(norton, nodes[0].pole, feeding, own);
  for (std::size_t i = 1; i < circuit.endNode - circuit.firstNode; ++i) {
    unfold<P>(norton + i * kNortonSize<P>, nodes[i].pole, own + n * nodes[i].parent, own + n * i);
  }
}

// Circuits clear their own part when they fold.
void Elimination::begin() {
  for (const FlatPanel& panel : m_network.panels) {
    std::fill_n(m_norton.begin() + static_cast<std::ptrdiff_t>(panel.nortonAt), nortonSize(panel.phases), 0.0);
  }
}

void Elimination::fold(const FlatCircuit& circuit, const std::vector<LoadState>& loads) {
  std::fill_n(m_norton.begin() + static_cast<std::ptrdiff_t>(circuit.nortonAt),
              (circuit.endNode - circuit.firstNode) * nortonSize(circuit.poles), 0.0);
  if (circuit.poles == 1) foldSingleCircuit(circuit, loads);
  if (circuit.poles == 2) foldCircuit<2>(circuit, loads);
  if (circuit.poles == 3) foldCircuit<3>(circuit, loads);
}

void Elimination::addToBus(const FlatCircuit& circuit, const Block& drawn) {
  const FlatPanel& panel = m_network.panels[circuit.panel];
  const double seen[kNortonSize<1>] = {drawn.a, drawn.b, drawn.c, drawn.d, 0.0, 0.0};
  addMapped(m_norton.data() + panel.nortonAt, panel.phases, seen, 1, circuit.phases.data());
}

void Elimination::finishPanels(std::vector<double>& voltage) {
  for (std::size_t i = m_network.panels.size(); i-- > 0;) {
    const FlatPanel& panel = m_network.panels[i];
    if (panel.phases == 1) foldPanel<1>(panel);
    if (panel.phases == 2) foldPanel<2>(panel);
    if (panel.phases == 3) foldPanel<3>(panel);
  }
  for (const FlatPanel& panel : m_network.panels) unfoldPanel(panel, voltage);
}

void Elimination::finish(std::vector<double>& voltage) {
  finishPanels(voltage);
  for (const FlatCircuit& circuit : m_network.circuits) {
    if (circuit.poles == 1) unfoldSingleCircuit(circuit, voltage);
    if (circuit.poles == 2) unfoldCircuit<2>(circuit, voltage);
    if (circuit.poles == 3) unfoldCircuit<3>(circuit, voltage);
  }
}

void Elimination::noLoad(std::vector<double>& voltage) const {
  for (const FlatPanel& panel : m_network.panels) {
    for (std::size_t i = 0; i < panel.phases; ++i) {
      double* own = voltage.data() + panel.voltageAt + 2 * i;
      const double* from = panel.fedFrom
                               ? voltage.data() + m_network.panels[*panel.fedFrom].voltageAt + 2 * panel.feedPhases[i]
                               : nullptr;
      own[0] = from ? from[0] : panel.sourceV[i].real();
      own[1] = from ? from[1] : panel.sourceV[i].imag();
    }
  }
  for (const FlatCircuit& circuit : m_network.circuits) {
    const double* bus = voltage.data() + m_network.panels[circuit.panel].voltageAt;
    const std::size_t size = 2 * circuit.poles;
    double* own = voltage.data() + circuit.voltageAt;
    for (std::size_t i = 0; i < (circuit.endNode - circuit.firstNode) * size; ++i) {
      own[i] = bus[2 * std::size_t{circuit.phases[i % size / 2]} + i % 2];
    }
  }
}

}  // namespace cordreach::network::detail
