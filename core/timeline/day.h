// SPDX-License-Identifier: GPL-3.0-or-later
// A building carried through hours: what is switched when, how warm every conductor gets, which breaker acts, and what
// goes on after that.
// Volts and amps are quasi-steady. They are found anew, for all that hangs on one source, whenever something is
// switched; for one circuit at its bus held, whenever one of its conductors has moved by 2 K since, or rests a tenth of
// that away. Between, every conductor and breaker goes on by itself at the mean square of its amps: conductors by their
// own implicit steps, looked at when they should have moved by about 2 K; breakers exactly. A machine that finds no
// running point stands with its rotor locked until it is switched off. A breaker that acts takes its loads out until
// the end. A start's peak passes its breaker, and the mains in front of that, within the instant of switching on, its
// bus held, everything else there as an impedance. Range: seconds to half a day.
#pragma once

#include <cstddef>
#include <memory>
#include <optional>
#include <vector>

#include "base/progress.h"
#include "network/network.h"
#include "network/solve.h"
#include "physics/breaker_trip.h"
#include "timeline/warmth.h"

namespace cordreach::timeline {

inline constexpr units::Duration kLongestDay = 12.0 * units::hour;

struct BranchPlace {
  std::size_t circuit = 0;
  std::size_t node = 0;
};

struct LoadPlace {
  std::size_t circuit = 0;
  std::size_t load = 0;

  friend auto operator<=>(const LoadPlace&, const LoadPlace&) = default;
};

// A conductor that warms; of a cord that is plugged in here and later there, a place each, of which one carries.
struct Conductor {
  std::vector<BranchPlace> places;
  std::shared_ptr<const Warmth> warmth;  // as it is before all
  units::Temperature limit;              // whose passing is told
};

struct ProtectedPoles {
  std::size_t circuit = 0;
  std::size_t firstPole = 0;
  std::size_t poles = 1;
  std::optional<physics::Breaker> breaker{};  // none: nobody knows it, so nothing is told of it
  physics::BreakerAir air = physics::BreakerAir::all(physics::defaultBreakerAir());
  bool acts = true;                    // false: its curves are told, but it is not relied on to take anything out
  std::optional<std::size_t> panel{};  // of a main: all that hangs on that panel, in place of a circuit's poles
};

// While a machine comes up to speed.
struct StartPeak {
  std::shared_ptr<const physics::LoadLaw> law;
  units::Duration lasts{};
};

enum class ChangeKind {
  On,  // draws by that law from here on, also when it was on before
  Off,
  Lay,  // a conductor lies otherwise
};

struct Change {
  units::Duration at{};  // since the day's start, 0 or more
  ChangeKind kind = ChangeKind::On;
  LoadPlace load{};
  std::shared_ptr<const physics::LoadLaw> law{};
  std::optional<StartPeak> start{};
  std::size_t conductor = 0;
  std::shared_ptr<const Warmth> laying{};
  bool silent = false;  // makes no event of its own
};

struct Day {
  network::Network network;  // loads that are on have been so for long; one without a law is off
  std::vector<Conductor> conductors;
  std::vector<ProtectedPoles> protectedPoles;
  std::vector<Change> changes;  // in order of time
  units::Duration until = kLongestDay;
};

// Whose trip takes a circuit out. None: breakers do not act, and all goes on.
enum class Acting { None, Earliest, Likely, Latest };

struct DayOptions {
  Acting acting = Acting::Likely;
  std::optional<units::Duration> sampleEvery{};
  double movedK = 2.0;  // solved again when a conductor has moved by that
  units::Duration longestLook = 900.0 * units::second;
  bool wholePanels = false;  // solve all that hangs on a source every time: for checking
  base::Progress progress{};
};

enum class EventKind { On, Off, Lay, Stall, OverLimit, BeyondModel, Trip };

struct Event {
  units::Duration at{};
  EventKind kind = EventKind::On;
  LoadPlace load{};                // of On, Off, Stall
  std::size_t conductor = 0;       // of Lay, OverLimit, BeyondModel
  std::size_t protectedPoles = 0;  // of Trip
  double rmsA = 0.0;               // of Trip: what it carried; of Stall: what it draws from then on
  double voltageV = 0.0;           // of Stall: what is left for it
};

// Of a conductor: the warmest that it was, and when it first passed its limit.
struct Peak {
  units::Temperature conductor;
  units::Temperature surface;
  std::optional<units::Duration> limitAt{};  // since the day's start
  bool beyondModel = false;
  units::Duration at{};  // when it was that warm
};

struct Sample {
  units::Duration at{};
  std::vector<double> circuitA;                // [protected], its pole that carries most
  std::vector<double> conductorA;              // [conductor]
  std::vector<units::Temperature> conductors;  // [conductor]
  std::vector<units::Temperature> surfaces;    // [conductor]
  std::vector<std::vector<double>> loadV;      // [circuit][load]
};

struct DayResult {
  std::vector<Event> events;  // in order of time
  // [protected], since the day's start. After one has acted: of a later curve, when it would have, had what then
  // flowed gone on; of those it took out before they could act, none.
  std::vector<physics::TripTimes> trips;
  std::vector<double> largestA;  // [protected], starts apart
  std::vector<Peak> peaks;       // [conductor]
  std::vector<Sample> samples;
  std::size_t solves = 0;  // of all that hangs on a source
  std::size_t circuitSolves = 0;
  std::size_t looks = 0;
  bool stopped = false;  // by the hook: everything up to there
};

// Whether what a breaker protects holds anything of that circuit, and that load.
[[nodiscard]] bool feeds(const Day& day, const ProtectedPoles& poles, std::size_t circuit);
[[nodiscard]] bool feeds(const Day& day, const ProtectedPoles& poles, const LoadPlace& place);

// Changes, places and loads must exist in the network.
[[nodiscard]] DayResult runDay(const Day& day, const DayOptions& options = {});

}  // namespace cordreach::timeline
