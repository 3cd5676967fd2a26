// SPDX-License-Identifier: GPL-3.0-or-later
// The cords on the way against each curve of the breaker, from both starts.
#include "study/fault_answer.h"

#include <algorithm>
#include <array>
#include <limits>

#include "physics/fault_clearing.h"
#include "physics/touch_limits.h"
#include "physics/wire.h"
#include "study/assumptions.h"
#include "study/breaker_answer.h"
#include "study/fault_path.h"

namespace cordreach::study {

namespace {

using physics::TripCurve;
using units::Current;
using units::Duration;
using units::Temperature;

constexpr Current kUnknownBreaker = 20.0 * units::ampere;  // of the two usual ones the one that acts later

constexpr double kNever = std::numeric_limits<double>::infinity();

// Before the fault the machine is just being switched on, or has run for as long as it will.
enum class Start { SwitchingOn, AfterRun };
constexpr std::array kStarts = {Start::SwitchingOn, Start::AfterRun};

struct Ended {
  std::optional<Duration> cleared;  // none: never
  std::optional<Duration> damage;
  Temperature conductor;  // when cleared, or at the end of the model

  [[nodiscard]] bool late() const { return damage && (!cleared || *cleared > *damage); }
};

class Race {
 public:
  Race(const site::Site& site, const site::Circuit* circuit, const HookupAnswer& answer, const FaultPath& path)
      : m_path(path),
        m_air(breakerAirOf(site)),
        m_carrying{answer.breaker.carrying, answer.breaker.current},
        m_trusted(circuit == nullptr || !circuit->mayNotTrip) {
    const auto known = circuit != nullptr ? breakerOf(*circuit) : std::nullopt;
    m_breaker = known.value_or(physics::Breaker{kUnknownBreaker});
  }

  // A fault at the end of that link.
  void run(std::size_t link, FaultAnswer& fault) {
    m_never.fill(false);
    for (const Start start : kStarts) {
      for (std::size_t cord = 0; cord <= link; ++cord) runOne(link, cord, start, fault);
    }
    if (m_never[0]) fault.cleared.earliest.reset();
    if (m_never[1]) fault.cleared.likely.reset();
    if (m_never[2]) fault.cleared.latest.reset();
  }

 private:
  void runOne(std::size_t link, std::size_t cord, Start start, FaultAnswer& fault) {
    const bool cool = start == Start::SwitchingOn;
    const FaultLink& at = m_path.links[cord];
    const physics::FaultDrive drive = driveOf(link, at, cool);
    const physics::OvercurrentDevice device{m_breaker, m_air, std::min(m_carrying[cool ? 0 : 1], m_breaker.rating)};
    const physics::FaultHeat heat = physics::faultHeat(cool ? at.cool : at.warm, drive, physics::faultHorizon());
    Ended ended{{}, physics::timeToPass(heat, m_limit), heat.back().conductor};
    for (std::size_t curve = 0; curve < physics::kTripCurves.size(); ++curve) {
      ended.cleared = m_trusted ? physics::clearingTime(device, physics::kTripCurves[curve], heat) : std::nullopt;
      if (ended.cleared) ended.conductor = physics::conductorAt(heat, *ended.cleared);
      note(curve, cord, ended, fault);
    }
  }

  [[nodiscard]] physics::FaultDrive driveOf(std::size_t link, const FaultLink& cord, bool cool) const {
    const FaultLink& end = m_path.links[link];
    const auto rest = cool ? end.coolLoop.ohm() - cord.coolPart.ohm() : end.warmLoop.ohm() - cord.warmPart.ohm();
    static const double alphaPerK = physics::temperatureCoefficient(tables::Metal::Copper);
    return {m_path.toEarth.likely, rest, cord.ohm20, alphaPerK};
  }

  void note(std::size_t curve, std::size_t cord, const Ended& ended, FaultAnswer& fault) {
    auto& slowest = curve == 0 ? fault.cleared.earliest : curve == 1 ? fault.cleared.likely : fault.cleared.latest;
    if (!fault.conductor) fault.conductor = Band<Temperature>{ended.conductor, ended.conductor, ended.conductor};
    auto& hottest = curve == 0 ? fault.conductor->low : curve == 1 ? fault.conductor->likely : fault.conductor->high;
    m_never[curve] = m_never[curve] || !ended.cleared;
    if (ended.cleared) slowest = std::max(slowest.value_or(*ended.cleared), *ended.cleared);
    if (physics::kTripCurves[curve] == TripCurve::Latest) fault.latestLate = fault.latestLate || ended.late();
    if (physics::kTripCurves[curve] == TripCurve::Likely) {
      fault.likelyLate = fault.likelyLate || ended.late();
      const double used = !ended.damage ? 0.0 : ended.cleared ? *ended.cleared / *ended.damage : kNever;
      fault.used = std::max(fault.used, used);
      if (ended.conductor >= hottest) {
        fault.damage = ended.damage;
        fault.damaged = cord;
      }
    }
    hottest = std::max(hottest, ended.conductor);
  }

  const FaultPath& m_path;
  physics::BreakerAir m_air;
  std::array<Current, 2> m_carrying;  // [start]
  physics::Breaker m_breaker{kUnknownBreaker};
  bool m_trusted;
  Temperature m_limit = physics::conductorShortCircuit().value;
  std::array<bool, physics::kTripCurves.size()> m_never{};
};

const PanelState* stateAt(const PanelStates& states, const HookupAnswer& answer) {
  const PanelState* any = nullptr;
  for (const PanelMoment& one : states.moments) {
    const PanelState& state = states.states[one.state];
    if (!state.scene().hookups.contains(answer.id)) continue;
    if (one.start == answer.moment) return &state;
    if (any == nullptr) any = &state;
  }
  return any;
}

const site::Supply* supplyOf(const site::Site& site, const site::PanelId& panel) {
  const site::Panel* source = &site.at<site::Panel>(panel);
  while (source->fedFrom) source = &site.at<site::Panel>(*source->fedFrom);
  return source->supply ? site.find<site::Supply>(*source->supply) : nullptr;
}

// What its source lets through of a fault's current; none: nobody knows.
std::optional<Band<Current>> withinLimit(const Band<Current>& bolted, const site::Supply* supply) {
  if (supply == nullptr || supply->source == site::SupplyKindOfSource::Utility) return bolted;
  if (!supply->currentLimit) return std::nullopt;
  const Current limit = supply->currentLimit->value;
  return Band<Current>{std::min(bolted.likely, limit), std::min(bolted.low, limit), std::min(bolted.high, limit)};
}

}  // namespace

void addFaults(const site::Site& site, const PanelStates& states, HookupAnswer& answer) {
  const PanelState* state = stateAt(states, answer);
  if (state == nullptr) return;
  const site::Circuit* circuit = answer.circuit ? &site.at<site::Circuit>(*answer.circuit) : nullptr;
  const site::Supply* supply = circuit != nullptr ? supplyOf(site, circuit->panel) : nullptr;
  const FaultPath path = faultPathOf(site, *state, answer);
  Race race(site, circuit, answer, path);
  for (std::size_t i = 0; i < path.links.size(); ++i) {
    FaultAnswer fault;
    fault.current = withinLimit(path.links[i].bolted, supply);
    fault.toEarth = path.toEarth;
    fault.touch = path.links[i].touch;
    fault.claimed = supply == nullptr || supply->source == site::SupplyKindOfSource::Utility;
    if (fault.claimed) race.run(i, fault);
    answer.cords[i].fault = fault;
  }
}

}  // namespace cordreach::study
