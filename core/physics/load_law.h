// SPDX-License-Identifier: GPL-3.0-or-later
// What a load draws at a given voltage, in the one form that the network solver needs: an admittance that depends on
// the size of the voltage only. Every law is finite and continuous down to 0 V.
#pragma once

#include <complex>
#include <optional>

namespace cordreach::physics {

struct LoadPoint {
  std::complex<double> admittanceS{};           // fundamental current phasor = admittance × voltage phasor
  std::complex<double> admittanceSlopeSPerV{};  // its derivative by |voltage|
  double distortionA = 0.0;                     // rms of all harmonics together, the fundamental apart
  double thirdHarmonicA = 0.0;                  // rms of the third harmonic alone, part of distortionA
  double thirdHarmonicPhaseRad = 0.0;           // phase of the third harmonic when the voltage's phase is 0
  std::optional<double> speedRpm;               // for what turns
  bool hasRunningPoint = true;  // false: a motor below its pull-out voltage, held at pull-out's admittance
};

class LoadLaw {
 public:
  virtual ~LoadLaw() = default;
  // Running, at the rms voltage between its terminals (0 or more).
  [[nodiscard]] virtual LoadPoint at(double voltageV) const = 0;
  // With the rotor locked; the same as at() for what cannot stall.
  [[nodiscard]] virtual LoadPoint stalledAt(double voltageV) const { return at(voltageV); }
  // What at() answers if that is the same at every voltage, running or not: a plain impedance. It lives as long as the
  // law.
  [[nodiscard]] virtual const LoadPoint* always() const { return nullptr; }
  // The voltage below which it has no running point; 0 for what cannot stall.
  [[nodiscard]] virtual double pullOutVoltageV() const { return 0.0; }
};

}  // namespace cordreach::physics
