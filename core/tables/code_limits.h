// SPDX-License-Identifier: GPL-3.0-or-later
// What the NEC allows on a branch circuit, and its advisories. Clause numbers move between editions; the source of
// each value names the one it is from.
#pragma once

#include <optional>
#include <span>

#include "tables/sourced.h"
#include "units/quantity.h"
#include "units/temperature.h"
#include "units/wire_size.h"

namespace cordreach::tables {

// 210.21(B)(2): the largest cord-and-plug load at a receptacle of that rating, on a circuit with two or more:
// 12, 16, 24 A for 15, 20, 30 A; nothing for others.
[[nodiscard]] std::optional<Sourced<units::Current>> cordAndPlugLimit(units::Current receptacleRating);

// 210.21(B)(3): ratings of receptacles allowed on a circuit with two or more, both included; nothing for a circuit
// rating the table does not have.
struct ReceptacleRange {
  Sourced<units::Current> least;
  Sourced<units::Current> most;
};
[[nodiscard]] std::optional<ReceptacleRange> receptacleRange(units::Current circuitRating);

// 210.21(B)(1): a receptacle alone on its circuit is rated at least this share of the circuit, 1.
[[nodiscard]] Sourced<double> singleReceptacleShare();

[[nodiscard]] Sourced<double> portableShare();    // 210.23: one cord-and-plug machine, of a shared circuit, 0.80
[[nodiscard]] Sourced<double> fastenedShare();    // 210.23: fastened equipment, of a shared circuit, 0.50
[[nodiscard]] Sourced<double> continuousShare();  // 210.20(A): continuous load, of the device, 0.80
[[nodiscard]] Sourced<units::Duration> continuousFrom();  // Article 100, 3 h

// Advisory voltage drop as a share of nominal: panel to outlet 0.03, with the feeder 0.05.
[[nodiscard]] Sourced<double> branchDropAdvisory();
[[nodiscard]] Sourced<double> totalDropAdvisory();

// 240.6(A) up to 400 A, rising.
[[nodiscard]] std::span<const Sourced<units::Current>> standardDeviceRatings();
// The smallest of them not below `current`, if there is one.
[[nodiscard]] std::optional<Sourced<units::Current>> standardDeviceFor(units::Current current);

// Class A ground-fault devices: below 4 mA none acts, from 6 mA on each does.
[[nodiscard]] Sourced<units::Current> groundFaultHolds();
[[nodiscard]] Sourced<units::Current> groundFaultTrips();

// A cord that has no temperature printed on it, 60 °C.
[[nodiscard]] Sourced<units::Temperature> unmarkedCordRating();

// 240.5(B)(4): the lightest field-made extension cord on a 20 A circuit, 16 AWG.
[[nodiscard]] Sourced<units::WireSize> lightestFieldMadeExtension();

}  // namespace cordreach::tables
