// SPDX-License-Identifier: GPL-3.0-or-later
// Solved networks given to ngspice as they are wired, each load as the impedance it was solved at, and its volts read
// back. The source's neutral is ngspice's ground.
#pragma once

#include <complex>
#include <map>
#include <string>

#include "network/solve.h"

namespace cordreach::testing {

// ngspice's name of a node's pole or neutral, as in the answers.
[[nodiscard]] std::string spicePole(std::size_t building, std::size_t circuit, std::size_t node, std::size_t pole);
[[nodiscard]] std::string spiceNeutral(std::size_t building, std::size_t circuit, std::size_t node);
[[nodiscard]] std::string spiceBus(std::size_t building, std::size_t panel, std::size_t phase);
[[nodiscard]] std::string spiceBusNeutral(std::size_t building, std::size_t panel);

class Netlist {
 public:
  void add(std::size_t building, const network::Network& network, const network::Solution& solution);

  // Runs `ngspice -b` on it in a temporary folder. Empty if ngspice is missing or fails.
  [[nodiscard]] std::map<std::string, std::complex<double>> run() const;

 private:
  void impedance(const std::string& from, const std::string& to, std::complex<double> ohm);
  void panel(std::size_t building, std::size_t index, const network::Network& network);
  void circuit(std::size_t building, std::size_t index, const network::Network& network,
               const network::CircuitSolution& solution);

  std::string m_text;
  std::size_t m_parts = 0;
};

}  // namespace cordreach::testing
