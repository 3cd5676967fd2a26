// SPDX-License-Identifier: GPL-3.0-or-later
// What switching a machine on does: to itself, to its breaker, and to everything else that is on at that moment.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "physics/breaker_trip.h"
#include "site/ids.h"
#include "study/band.h"
#include "units/quantity.h"

namespace cordreach::study {

// Volts at something while the machine starts.
struct Dip {
  units::Voltage before;        // with everything else on and the machine off
  Band<units::Voltage> during;  // at the peak
  units::Voltage nominal;

  [[nodiscard]] double share() const { return (before - during.likely) / nominal; }
};

// Something else in use, and the dip it sees.
struct LoadDip {
  std::optional<site::HookupId> hookup;  // one of the two
  std::optional<site::FixedLoadId> load;
  Dip dip;
};

struct OutletDip {
  site::OutletId outlet;
  std::string contact;
  Dip dip;
};

// How long it takes to 95 % of its speed; none: it never gets there.
struct StartTime {
  std::optional<units::Duration> likely, easy, hard;  // easy, hard: all that is uncertain at its better, worse end
};

struct StartAnswer {
  Band<units::Current> peak;     // total rms of the first cycles
  Band<units::Current> settled;  // what it draws once it runs, or goes on drawing when it never does
  StartTime time;
  bool tipped = false;                     // taken to start with its pad off the floor
  Band<units::Voltage> lowest;             // at its terminals
  Dip outlet;                              // where its chain of cords ends
  Dip panel;                               // at the panel's bus, between the same poles
  std::optional<physics::TripTimes> trip;  // within the start, what carried on before included; none: breaker unknown
  std::vector<LoadDip> dips;               // of everything else in use, deepest first
  bool inertiaStated = false;              // else from the class's band
};

// Something fixed that comes on by itself beside a hookup, at the moment when its circuit carries most.
struct LoadStart {
  site::FixedLoadId load;
  site::CircuitId circuit;
  std::optional<units::Duration> moment;
  StartAnswer start;
};

}  // namespace cordreach::study
