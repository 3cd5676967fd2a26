// SPDX-License-Identifier: GPL-3.0-or-later
// Static loads: active and reactive power as functions of volts, apart from each other.
//   exponents   P = P0 v^np,               Q = Q0 v^nq               (power-system handbooks)
//   polynomial  P = P0 (Zp v² + Ip v + Pp), Q likewise, sums 1       (IEEE Trans. Power Delivery 29(3), 2014)
// Valid from 100/120 to 132/120 of system nominal. Outside, power factor and distortion ratio are held and P goes on
// as v^np; below 0.75 of nominal a load of np < 1 draws constant current; below half it is the impedance it has there
// (the last two limits are our own).
#pragma once

#include <array>
#include <memory>
#include <optional>
#include <string_view>

#include "base/result.h"
#include "physics/load_law.h"
#include "physics/load_model.h"
#include "units/quantity.h"

namespace cordreach::physics {

struct PowerShape {
  bool polynomial = false;
  double exponentP = 2;  // with a polynomial: 2 Zp + Ip, its slope at v = 1
  double exponentQ = 2;
  std::array<double, 3> zipP{};  // coefficients of v², v, 1
  std::array<double, 3> zipQ{};
};

struct StaticLoad {
  double baseV = 120;      // where v = 1
  double nominalV = 120;   // what the limits of validity refer to
  double activeW = 0;      // P0, over 0
  double reactiveVar = 0;  // Q0, lagging positive
  PowerShape shape{};
  Distortion distortion{};           // as shares of the fundamental at v = 1
  bool distortionFollowsQ = false;   // inside the range distortion volt-amperes take the shape of Q; else go with I
  std::optional<double> speedRpm{};  // at v = 1; goes with volts (fan loads of universal motors)
};

[[nodiscard]] std::shared_ptr<const LoadLaw> makeStaticLaw(const StaticLoad& load);

// An appliance of zip_appliances.csv by its row id, drawing `current` (total rms) at `voltage`; both positive.
// Error: load.unknown_appliance.
[[nodiscard]] base::Result<std::shared_ptr<const LoadLaw>> makeApplianceLaw(std::string_view id, units::Voltage voltage,
                                                                            units::Current current);
// The same at the size that was measured, on a 120 V system.
[[nodiscard]] base::Result<StaticLoad> measuredAppliance(std::string_view id);

}  // namespace cordreach::physics
