// SPDX-License-Identifier: GPL-3.0-or-later
// A network of plain impedances on circuits of one pole, solved outright: complex numbers, once to the source and once
// back. A node that draws y behind a branch z is seen as y/(1 + z y) and gets 1/(1 + z y) of the volts in front of it.
#pragma once

#include <vector>

#include "network/detail/elimination.h"

namespace cordreach::network::detail {

struct Pair {
  double re = 0;
  double im = 0;
};

// Of a node: first what it draws, then what is seen of it from the other end of its branch, then the amps that come in.
struct Folded {
  Pair seen;
  Pair share;  // of the volts in front of the branch
};

class LinearSweep {
 public:
  // For a network that says it is of impedances only. Fills the voltages, each load's state and its point; a node's
  // mismatch, which is rounding, goes to its first load.
  LinearSweep(const FlatNetwork& network, Elimination& elimination, std::vector<Folded>& folded)
      : m_network(network), m_elimination(elimination), m_folded(folded) {}
  void run(std::vector<double>& voltage, std::vector<LoadState>& loads, std::vector<physics::LoadPoint>& points);

 private:
  void fold(const FlatCircuit& circuit);
  void unfold(const FlatCircuit& circuit, std::vector<double>& voltage);
  void settle(const FlatCircuit& circuit, const std::vector<double>& voltage, std::vector<LoadState>& loads,
              std::vector<physics::LoadPoint>& points) const;

  const FlatNetwork& m_network;
  Elimination& m_elimination;
  std::vector<Folded>& m_folded;
};

}  // namespace cordreach::network::detail
