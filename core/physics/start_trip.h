// SPDX-License-Identifier: GPL-3.0-or-later
// A breaker through a start: its three thermal replicas carried along the amps, and the instantaneous part at the peak
// over √2, the rms of the first cycle. Other things on the circuit add as phasors of the fundamental.
#pragma once

#include <complex>

#include "physics/breaker_trip.h"
#include "physics/start_run.h"

namespace cordreach::physics {

struct StartOnBreaker {
  Breaker breaker;
  BreakerAir air;
  units::Current carrying;           // by the circuit, for long before
  std::complex<double> othersA = 0;  // that run on beside it, against the machine's open-circuit volts
};

// From switching on; within the start. One that never completes flows on until it trips. None: it holds.
[[nodiscard]] TripTimes startTrip(const StartRun& run, const StartOnBreaker& on);

// Total rms of the circuit at a sample.
[[nodiscard]] units::Current circuitAmps(const StartSample& sample, std::complex<double> othersA);

}  // namespace cordreach::physics
