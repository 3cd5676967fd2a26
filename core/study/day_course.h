// SPDX-License-Identifier: GPL-3.0-or-later
// A planned day as it went: what happened when, which breaker tripped, how warm every cord got. Facts only.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "physics/breaker_trip.h"
#include "site/ids.h"
#include "units/quantity.h"
#include "units/temperature.h"

namespace cordreach::study {

// A machine's own cord.
struct OwnCord {
  site::MachineId machine;
  std::string inlet;

  friend auto operator<=>(const OwnCord&, const OwnCord&) = default;
};

// An outlet stands for the supposed 15 A breaker of its own where nobody knows which feeds it, a panel for its main.
using DaySubject = std::variant<site::HookupId, site::FixedLoadId, site::CircuitId, site::OutletId, site::CordId,
                                OwnCord, site::PanelId>;

enum class DayEventKind {
  On,
  Off,
  Lay,          // a cord lies otherwise from here
  Trip,         // its breaker, by the likely curve: nothing on it runs after that
  Stall,        // a machine stands, with its rotor locked, until it is switched off or its breaker trips
  OverRating,   // a cord's conductor is as warm as its insulation may get
  BeyondModel,  // a cord is hotter than anything its insulation outlives
};

struct DayEvent {
  units::Duration at{};  // since the run's start
  DayEventKind kind = DayEventKind::On;
  DaySubject subject;
  // Of a trip, and of a cord: what came on last through it, and how long before; none: nothing has.
  std::optional<DaySubject> after{};
  units::Duration since{};
  units::Current current{};  // of a trip: what it carried; of a stall: what it draws from then on
  units::Voltage voltage{};  // of a stall: what is left for it

  // Something that is not to happen.
  [[nodiscard]] bool isFault() const { return kind >= DayEventKind::Trip; }
};

struct DayCircuit {
  DaySubject subject;                        // a circuit, an outlet whose breaker nobody knows, or a panel's main
  std::optional<physics::TripTimes> trip{};  // since the run's start, live until then; none: breaker unknown
  units::Current largest{};                  // that it carried, starts apart
  // How long before its earliest, and before its likely trip, something on it came on last.
  units::Duration earliestSince{};
  units::Duration likelySince{};
};

struct DayCord {
  DaySubject subject;            // an extension's cord or a machine's own
  units::Temperature conductor;  // warmest, at its worst place
  units::Temperature surface;
  units::Temperature limit;                  // rating of its insulation
  std::optional<units::Duration> limitAt{};  // since the run's start; none: never
  bool beyondModel = false;
  units::Duration at{};          // when it was warmest
  units::Duration limitSince{};  // how long before `limitAt` something on it came on last
};

struct DaySample {
  units::Duration at{};
  std::vector<units::Current> circuits;        // as `circuits`
  std::vector<units::Current> cords;           // as `cords`
  std::vector<units::Temperature> conductors;  // as `cords`
  std::vector<units::Temperature> surfaces;
};

struct DayRun {
  units::Duration start{};  // time of the planned day
  units::Duration until{};  // its length
  std::vector<DayEvent> events;
  std::vector<DayCircuit> circuits;
  std::vector<DayCord> cords;
  std::vector<DaySample> samples;
  std::vector<site::FixedLoadId> guessedCycles;
  bool stopped = false;  // by the hook, before its end
};

}  // namespace cordreach::study
