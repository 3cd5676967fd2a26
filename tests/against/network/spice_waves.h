// SPDX-License-Identifier: GPL-3.0-or-later
// The last cycles of an ngspice transient at 60 Hz, and what they come to: rms and harmonics.
#pragma once

#include <complex>
#include <string>
#include <vector>

namespace cordreach::testing {

struct SpiceWave {
  std::vector<double> timeS;
  std::vector<double> value;

  [[nodiscard]] double rms() const;
  [[nodiscard]] double mean() const;
  // Rms phasor of that harmonic; that of a sine starting at 0 s has phase -90°.
  [[nodiscard]] std::complex<double> harmonic(int order) const;
};

SpiceWave operator-(const SpiceWave& a, const SpiceWave& b);

// Runs the circuit (first line its title, without a control block) for `durationS` and answers these vectors over the
// last six cycles, in their order. Empty if ngspice is missing or did not get through.
[[nodiscard]] std::vector<SpiceWave> spiceWaves(const std::string& circuit, const std::vector<std::string>& vectors,
                                                double durationS);

}  // namespace cordreach::testing
