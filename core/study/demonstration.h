// SPDX-License-Identifier: GPL-3.0-or-later
// One machine at work through one cord from cold, instant by instant: what a class watches. The cord's conductor warms,
// so its resistance grows, so volts and amps move with it; beside it the circuit's breaker warms.
// Solved in steps: the network at the cord's present temperatures, then cord, plug and breaker each by their own model
// at that current. Everything but the watched cord is as warm as its current would leave it for good. Starting currents
// are left out. Where nothing changes any more it is what `assess` answers.
// Current flows until the latest of the breaker's three curves trips, as `assess` takes it too.
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "physics/breaker_curve.h"
#include "site/site.h"
#include "study/band.h"
#include "units/quantity.h"
#include "units/temperature.h"

namespace cordreach::study {

struct DemonstrationPoint {
  units::Duration time{};
  std::optional<Band<units::Temperature>> conductor;  // hottest place of the cord; none: beyond the model
  std::optional<Band<units::Temperature>> surface;
  units::Temperature plug = units::Temperature::fromCelsius(0.0);  // of the cord's plug in its socket
  units::Voltage voltage{};                                        // at the machine's terminals
  units::Voltage lost{};                                           // in the watched cord, both ways
  units::Current current{};                                        // through the watched cord
  units::Power heat{};                                             // given off by the whole watched cord
  std::optional<double> speedRpm;                                  // 0 once stalled
  std::array<double, physics::kTripCurves.size()> warmth{};        // of each curve: 0 cold, 1 trips
  bool powered = true;                                             // false: even the latest curve has tripped
};

struct Demonstration {
  std::vector<DemonstrationPoint> points;  // every `step` from 0 on
  units::Duration step{};
  units::Temperature air = units::Temperature::fromCelsius(0.0);
  units::Temperature limit = air;          // rating of the cord's insulation
  std::optional<units::Current> rating{};  // of the breaker; none: unknown, and its warmth stays 0
  std::array<std::optional<units::Duration>, physics::kTripCurves.size()> trips{};
  std::optional<units::Duration> stalledAt{};

  [[nodiscard]] units::Duration run() const { return points.back().time; }
  // Between two points in proportion; before the first and after the last these.
  [[nodiscard]] DemonstrationPoint at(units::Duration time) const;
  // When the conductor is first over that: on the likely course, and on the hot and the cool edge of the band.
  [[nodiscard]] std::optional<units::Duration> conductorOver(units::Temperature limit) const;
  [[nodiscard]] std::optional<units::Duration> conductorOverEarly(units::Temperature limit) const;
  [[nodiscard]] std::optional<units::Duration> conductorOverLate(units::Temperature limit) const;
};

struct DemonstrationOptions {
  units::Duration run = 2.0 * units::hour;
  units::Duration step = 15.0 * units::second;
};

// Watches the first cord on the way to that hookup's machine: the extension, or the machine's own where there is none.
// The hookup ends in a wired outlet, is switched on, and nothing in the site has hours.
[[nodiscard]] Demonstration demonstrate(const site::Site& site, const site::HookupId& hookup,
                                        const DemonstrationOptions& options = {});

}  // namespace cordreach::study
