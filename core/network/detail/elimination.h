// SPDX-License-Identifier: GPL-3.0-or-later
// One linear step, solved exactly: every load stands as I = D V + s, the trees are folded from their leaves into the
// panels' buses, the panels in reverse order into their sources, and the voltages come back on the way down.
#pragma once

#include <vector>

#include "network/detail/flat_network.h"

namespace cordreach::network::detail {

// A load linearised at voltage u: what it draws is D V + s. `netA` is what the network gives it at u, which differs
// from what its law draws until the solution is found.
struct LoadState {
  double uRe = 0;
  double uIm = 0;
  double netRe = 0;
  double netIm = 0;
  Block d;
  double sRe = 0;
  double sIm = 0;
};

class Elimination {
 public:
  // `norton` is its working memory, of the size the network says.
  Elimination(const FlatNetwork& network, std::vector<double>& norton) : m_network(network), m_norton(norton) {}

  // Node and panel voltages that solve the network for these linear loads: begin, fold every circuit, finish. A circuit
  // can be folded as soon as its loads are known, while they are still in the processor's cache.
  void begin();
  void fold(const FlatCircuit& circuit, const std::vector<LoadState>& loads);
  void finish(std::vector<double>& voltage);

  // The same in parts, for circuits of one pole that were folded elsewhere: what such a circuit draws a volt, and the
  // voltages of the panels alone.
  void addToBus(const FlatCircuit& circuit, const Block& drawn);
  void finishPanels(std::vector<double>& voltage);

  // With nothing drawn.
  void noLoad(std::vector<double>& voltage) const;

 private:
  template <int P>
  void foldCircuit(const FlatCircuit& circuit, const std::vector<LoadState>& loads);
  template <int P>
  void foldPanel(const FlatPanel& panel);
  template <int P>
  void unfoldCircuit(const FlatCircuit& circuit, std::vector<double>& voltage) const;
  void foldSingleCircuit(const FlatCircuit& circuit, const std::vector<LoadState>& loads);
  void unfoldSingleCircuit(const FlatCircuit& circuit, std::vector<double>& voltage) const;
  void unfoldPanel(const FlatPanel& panel, std::vector<double>& voltage) const;

  const FlatNetwork& m_network;
  std::vector<double>& m_norton;
};

}  // namespace cordreach::network::detail
