// SPDX-License-Identifier: GPL-3.0-or-later
// What a site comes to: every circuit, hookup, outlet and cord at its worst moment, keyed by the site's ids.
// Worst by moments, each at rest, or in the course of the planned day, whichever is the stricter (day_answer.h).
// Facts only; what they mean is the business of the rules.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "physics/breaker_trip.h"
#include "site/hours.h"
#include "site/ids.h"
#include "site/plan.h"
#include "study/band.h"
#include "study/leakage.h"
#include "study/start_answer.h"
#include "units/quantity.h"
#include "units/temperature.h"

namespace cordreach::study {

// Something that draws current, and how much of a sum is its.
struct Share {
  std::optional<site::HookupId> hookup;  // one of the two
  std::optional<site::FixedLoadId> load;
  units::Current current;   // at the worst moment, as solved
  units::Current plate;     // what its plate says (a fixed load: as stated)
  bool continuous = false;  // on for three hours or more
  bool cycling = false;     // comes and goes by itself
};

struct BreakerAnswer {
  std::optional<units::Current> rating;    // none: unknown
  std::optional<physics::TripTimes> trip;  // none: unknown breaker
  units::Current carrying;                 // what it carried just before
  units::Current current;                  // what then flows
  units::Duration run;                     // for how long that can flow: the planned run or the load's own cycle
  // Time of the planned day at which it trips in the day's course, by the likely curve, else by the earliest.
  std::optional<units::Duration> tripsAt{};
};

struct CircuitAnswer {
  site::CircuitId id;
  std::optional<units::Duration> moment;  // start of its worst moment; none: nothing has hours
  Band<units::Current> current;           // largest pole, everything on that can be on
  units::Current likelyCurrent;           // what it is no more than half of the time: coincidence.h
  units::Current neutral;                 // rms with harmonics; of a multiwire group the common neutral
  units::Current plateSum;                // cord-and-plug and fixed loads of that moment by their plates
  units::Current continuousSum;           // of these, what is on three hours or more
  BreakerAnswer breaker;
  units::Temperature wireTemperature;  // hottest run of its building wire
  std::vector<Share> shares;           // largest first
  double together = 1.0;               // share of the time in which everything that cycles is on together
};

// A fault at the far end of a cord, to neutral or earth without a resistance of its own, and whether it is cut off
// before a conductor on the way passes the short-circuit limit of its insulation. It may come as the machine is
// switched on, cord and breaker cool, or after its run, both warm: the stricter of the two counts, for each curve.
struct FaultAnswer {
  std::optional<Band<units::Current>> current{};  // as it begins; none: what its source limits is not known
  bool claimed = true;                            // false: its source limits its own current, nothing is claimed of it
  physics::TripTimes cleared{};                   // by the breaker; none: never, or it is not to be relied on
  std::optional<units::Duration> damage{};        // until a conductor passes that limit; none: it does not
  std::size_t damaged = 0;                        // the cord whose conductor that is, counted from the outlet
  double used = 0.0;        // most of that time that the likely curve takes; infinite: it never acts
  bool likelyLate = false;  // the likely curve does not clear it before the damage
  bool latestLate = false;  // the latest does not
  // Hottest on the way when it is cleared by the likely, the earliest and the latest curve; none: not claimed.
  std::optional<Band<units::Temperature>> conductor{};
  Band<units::Voltage> toEarth{};  // of a frame there whose earth is broken, for as long as it lasts
  Band<units::Voltage> touch{};    // of one whose earth is whole, until the fault is cleared
};

struct CordAnswer {
  std::optional<site::CordId> id;           // none: the machine's own
  std::optional<site::ExtensionUseId> use;  // of an extension
  Band<units::Current> current;             // all that goes through it
  units::Current plateSum;
  std::optional<Band<units::Temperature>> conductor;  // at the end of the planned run; none: beyond the model
  std::optional<Band<units::Temperature>> surface;
  units::Temperature limit;                    // rating of its insulation
  std::optional<units::Duration> timeToLimit;  // from cold; none: never
  Band<units::TemperatureRise> plugRise;       // of its plug in the socket before it
  std::optional<FaultAnswer> fault{};          // at its far end; none: not studied
  std::optional<units::Duration> limitAt{};    // time of the planned day at which it passes its limit in the course

  [[nodiscard]] bool own() const { return !id.has_value(); }
  [[nodiscard]] bool beyondModel() const { return !conductor.has_value(); }
};

struct HookupAnswer {
  site::HookupId id;
  site::MachineId machine;
  std::string inlet{};
  std::optional<site::OutletId> outlet{};  // where its chain of cords ends; none: it hangs in the air
  std::string contact{};
  std::optional<site::CircuitId> circuit{};  // none: unknown, judged alone on 15 A and on 20 A, the stricter shown
  std::optional<units::Duration> moment{};
  units::Duration run{};  // how long it is on
  Band<units::Current> current{};
  Band<units::Voltage> voltage{};              // at the machine's terminals
  Band<units::Voltage> drop{};                 // below the open-circuit source
  units::Voltage nominal{};                    // of the system, between the poles it is on
  units::Voltage branchDrop{};                 // panel to outlet
  units::Voltage outletDrop{};                 // source to outlet
  units::Voltage dropWithoutOthers{};          // source to outlet, were it alone: what its own current costs
  std::optional<Band<double>> speedRpm{};      // of the machine, when its plate says one
  bool stalledCold = false;                    // has no running point from the start
  bool stalledWarm = false;                    // runs at first, not once its cords are warm
  bool stalledAdverse = false;                 // has none, cold or warm, with all that is uncertain at its worse end
  std::optional<units::Duration> stalledAt{};  // time of the planned day at which it stalls in the course
  units::Current socketPlateSum{};             // of everything fed through the outlet's contact
  BreakerAnswer breaker{};                     // of its circuit, or of the supposed one
  std::vector<CordAnswer> cords{};             // from the outlet on; the machine's own is the last
  std::optional<StartAnswer> start{};          // switching it on, at that moment; none: not on
};

// A panel's main breaker that trips.
struct MainAnswer {
  site::PanelId id;
  BreakerAnswer breaker;
  std::vector<site::HookupId> hookups;      // that are on then and go off by it
  std::optional<units::Duration> moment{};  // start of its worst moment; none: nothing has hours
};

struct OutletAnswer {
  site::OutletId id;
  std::string contact;
  std::optional<Band<units::Voltage>> voltage;  // between the contact's poles as loaded; none: circuit unknown or dead
};

struct Answer {
  std::vector<CircuitAnswer> circuits;
  std::vector<HookupAnswer> hookups;
  std::vector<OutletAnswer> outlets;
  std::vector<LeakageAnswer> leakages;  // of every ground-fault device with anything behind it
  std::vector<MainAnswer> mains;        // those that would trip
  std::vector<LoadStart> loadStarts;    // of what comes on by itself on circuits that hookups share

  [[nodiscard]] const CircuitAnswer* find(const site::CircuitId& id) const;
  [[nodiscard]] const HookupAnswer* find(const site::HookupId& id) const;
};

}  // namespace cordreach::study
