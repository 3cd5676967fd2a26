// SPDX-License-Identifier: GPL-3.0-or-later
// A linear building as a general-purpose program takes it: one nodal equation a conductor and node (poles and neutrals
// each their own), as a compressed sparse matrix of complex admittances. For circuits of one pole on panels that hang
// on a source each, the source's neutral being ground.
#pragma once

#include <complex>
#include <vector>

#include "base/contract.h"
#include "network/network.h"

namespace cordreach::bench {

class Nodal {
 public:
  explicit Nodal(const network::Network& building) {
    for (const network::Panel& panel : building.panels) addPanel(panel);
    for (const network::Circuit& circuit : building.circuits) addCircuit(circuit);
    compress();
  }

  [[nodiscard]] int size() const { return static_cast<int>(m_diagonal.size()); }
  // Compressed columns; complex values as pairs of doubles.
  std::vector<int> columnStart;
  std::vector<int> row;
  std::vector<std::complex<double>> value;
  std::vector<std::complex<double>> rightSide;

  // The unknowns behind a circuit's node.
  struct Pair {
    int pole, neutral;
  };
  [[nodiscard]] Pair at(std::size_t circuit, std::size_t node) const {
    const int first = m_circuitAt[circuit] + 2 * static_cast<int>(node);
    return {first, first + 1};
  }

 private:
  static constexpr int kGround = -1;
  struct Link {
    int from, to;
    std::complex<double> admittance;
  };

  int addNode() {
    m_diagonal.push_back(0.0);
    rightSide.push_back(0.0);
    return size() - 1;
  }

  void connect(int from, int to, std::complex<double> admittance) {
    if (from != kGround) m_diagonal[static_cast<std::size_t>(from)] += admittance;
    if (to != kGround) m_diagonal[static_cast<std::size_t>(to)] += admittance;
    if (from != kGround && to != kGround) m_links.push_back({from, to, admittance});
  }

  void addPanel(const network::Panel& panel) {
    CORDREACH_EXPECTS(!panel.fedFrom && panel.feeder.neutralOhm == 0.0);
    m_panelAt.push_back(size());
    for (const network::Phasor& source : panel.sourceV) {
      const int bus = addNode();
      connect(bus, kGround, 1.0 / panel.feeder.poleOhm);
      rightSide[static_cast<std::size_t>(bus)] = source / panel.feeder.poleOhm;
    }
  }

  void addCircuit(const network::Circuit& circuit) {
    CORDREACH_EXPECTS(circuit.phases.size() == 1);
    const std::size_t index = m_circuitAt.size();
    m_circuitAt.push_back(size());
    for (std::size_t n = 0; n < circuit.nodes.size(); ++n) {
      const network::Node& node = circuit.nodes[n];
      const int pole = addNode();
      const int neutral = addNode();
      const int bus = m_panelAt[circuit.panel] + static_cast<int>(circuit.phases[0]);
      const Pair from = n == 0 ? Pair{bus, kGround} : at(index, node.parent);
      connect(pole, from.pole, 1.0 / node.branch.poleOhm);
      connect(neutral, from.neutral, 1.0 / node.branch.neutralOhm);
    }
    for (const network::Load& load : circuit.loads) {
      const Pair ends = at(index, load.node);
      connect(ends.pole, ends.neutral, load.law->at(120.0).admittanceS);
    }
  }

  // No pair of nodes is joined twice (a node has one branch to its parent), so only diagonals add up.
  void compress() {
    columnStart.assign(m_diagonal.size() + 1, 0);
    for (std::size_t i = 0; i < m_diagonal.size(); ++i) columnStart[i + 1] = 1;
    for (const Link& link : m_links) {
      ++columnStart[static_cast<std::size_t>(link.from) + 1];
      ++columnStart[static_cast<std::size_t>(link.to) + 1];
    }
    for (std::size_t i = 1; i < columnStart.size(); ++i) columnStart[i] += columnStart[i - 1];
    std::vector<int> next(columnStart.begin(), columnStart.end() - 1);
    row.resize(static_cast<std::size_t>(columnStart.back()));
    value.resize(row.size());
    const auto put = [&](int column, int at, std::complex<double> admittance) {
      const auto place = static_cast<std::size_t>(next[static_cast<std::size_t>(column)]++);
      row[place] = at;
      value[place] = admittance;
    };
    for (int i = 0; i < size(); ++i) put(i, i, m_diagonal[static_cast<std::size_t>(i)]);
    for (const Link& link : m_links) {
      put(link.from, link.to, -link.admittance);
      put(link.to, link.from, -link.admittance);
    }
  }

  std::vector<std::complex<double>> m_diagonal;
  std::vector<Link> m_links;
  std::vector<int> m_panelAt;
  std::vector<int> m_circuitAt;
};

}  // namespace cordreach::bench
