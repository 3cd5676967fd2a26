// SPDX-License-Identifier: GPL-3.0-or-later
// A building around a machine that is being switched on. In that second everything else stands as the impedance it has
// while the machine runs: motors keep their speed by their own mass, and nothing settles. The network is then linear,
// so that two solutions, without the machine and with a probe in its place, give the source that it sees (physics/
// thevenin.h) and, in proportion to its amps, the volts everywhere else. Cords are cold, the machine's own among them.
#pragma once

#include <complex>
#include <cstddef>
#include <vector>

#include "network/network.h"
#include "network/solve.h"
#include "physics/thevenin.h"
#include "study/panel_states.h"

namespace cordreach::study {

class StartScene {
 public:
  // `load`: the machine, among the loads of the circuit that `tap` is on; it must be on in that state.
  StartScene(const PanelState& state, const Tap& tap, std::size_t load);

  [[nodiscard]] const physics::Thevenin& supply() const { return m_supply; }

  // Volts between the poles of a tap, and of the bus its circuit hangs on, with the machine drawing `currentA` (against
  // the supply's open volts).
  [[nodiscard]] double voltageV(const Tap& tap, std::complex<double> currentA) const;
  [[nodiscard]] double busV(const Tap& tap, std::complex<double> currentA) const;

  // What else the machine's breaker carries, on its first pole: without the machine, and while it draws that, both
  // against the supply's open volts.
  [[nodiscard]] std::complex<double> othersA(std::complex<double> currentA) const;

 private:
  [[nodiscard]] std::complex<double> share(std::complex<double> currentA) const;

  Tap m_tap;
  network::Network m_network;  // linear; the machine is the last load of its circuit
  network::Solution m_without;
  network::Solution m_probed;
  std::complex<double> m_probeA;
  std::complex<double> m_phase;  // of the open volts
  physics::Thevenin m_supply;
};

}  // namespace cordreach::study
