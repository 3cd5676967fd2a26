// SPDX-License-Identifier: GPL-3.0-or-later
// A site's planned day, run: what happens when, which breaker trips, how warm every cord gets. By likely values; bands
// are `assess`'s and the chances'.
#pragma once

#include <optional>
#include <vector>

#include "base/progress.h"
#include "physics/breaker_trip.h"
#include "site/site.h"
#include "study/day_plan.h"
#include "units/quantity.h"
#include "units/temperature.h"

namespace cordreach::study {

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

  // Something that is not to happen.
  [[nodiscard]] bool isFault() const { return kind >= DayEventKind::Trip; }
};

struct DayCircuit {
  DaySubject subject;                        // a circuit, or an outlet whose breaker nobody knows
  std::optional<physics::TripTimes> trip{};  // since the run's start, live until then; none: breaker unknown
  units::Current largest{};                  // that it carried, starts apart
};

struct DayCord {
  DaySubject subject;            // an extension's cord or a machine's own
  units::Temperature conductor;  // warmest, at its worst place
  units::Temperature surface;
  units::Temperature limit;                  // rating of its insulation
  std::optional<units::Duration> limitAt{};  // since the run's start; none: never
  bool beyondModel = false;
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

struct DayRunOptions {
  units::Duration until = timeline::kLongestDay;  // its length
  bool breakersAct = true;                        // false: they stay closed, and all goes on
  std::optional<units::Duration> sampleEvery{};
  base::Progress progress{};
};

[[nodiscard]] DayRun runDay(const site::Site& site, const DayRunOptions& options = {});

}  // namespace cordreach::study
