// SPDX-License-Identifier: GPL-3.0-or-later
// Which loads make a fold: where |dI|/|dV| of a load, negative, outweighs the impedance in front of it, no small change
// of the voltages leads to a solution. A motor's slope grows without bound towards its pull-out voltage, so the motor
// nearest to it is found first.
#pragma once

#include <cstddef>
#include <vector>

#include "network/detail/elimination.h"

namespace cordreach::network::detail {

class FoldSearch {
 public:
  // Mismatches per circuit, A²: at the present voltages and after the full step.
  FoldSearch(const FlatNetwork& network, const std::vector<LoadState>& loads, const std::vector<double>& mismatch,
             const std::vector<double>& afterFullStep);

  // In every circuit that sticks, its strongest and what is below its pull-out; none such: the strongest
  // of the circuits that are furthest off. Equal ones together,
  // so that the answer does not depend on their order. Empty: nothing here can make a fold.
  [[nodiscard]] std::vector<std::size_t> folding() const;

 private:
  [[nodiscard]] double strength(std::size_t load, double frontOhm) const;
  [[nodiscard]] double strongest(const FlatCircuit& circuit) const;
  void add(const FlatCircuit& circuit, double atLeast, std::vector<std::size_t>& found) const;

  const FlatNetwork& m_network;
  const std::vector<LoadState>& m_loads;
  const std::vector<double>& m_mismatch;
  const std::vector<double>& m_afterFullStep;
  std::vector<double> m_strength;
};

}  // namespace cordreach::network::detail
