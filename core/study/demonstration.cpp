// SPDX-License-Identifier: GPL-3.0-or-later
#include "study/demonstration.h"

#include <algorithm>
#include <cmath>

#include "network/solve.h"
#include "physics/breaker_trip.h"
#include "physics/cord_transient.h"
#include "physics/plug_node.h"
#include "study/assumptions.h"
#include "study/breaker_answer.h"
#include "study/scene.h"

namespace cordreach::study {

namespace {

using physics::CordTransient;
using units::ampere;
using units::Current;
using units::Duration;
using units::Temperature;
using units::volt;

constexpr double kSolveAgainK = 0.25;  // so much warmer or cooler changes a volt by less than a hundredth
constexpr std::size_t kFirstRounds = 8;

const site::CordMake& makeOf(const site::Site& site, const CordLink& link) {
  if (link.extension) return site.at<site::Cord>(site.at<site::ExtensionUse>(*link.extension).cord).make;
  const auto& hookup = site.at<site::Hookup>(*link.hookup);
  return inletOf(site.at<site::Machine>(hookup.machine), hookup.inlet).cord;
}

bool isLoose(const site::Site& site, const Plugged& plugged) {
  const auto& contacts = site.at<site::Outlet>(plugged.outlet).contacts;
  return std::any_of(contacts.begin(), contacts.end(),
                     [&](const site::Contact& contact) { return contact.name == plugged.contact && contact.loose; });
}

double temperatureOr(const CordTransient& cord, double beyondC) {
  return cord.beyondModel() ? beyondC : cord.now().conductor.celsius();
}

// The scene's network with everything warm that is not watched, and one cord at whatever temperature it is given.
class WarmNetwork {
 public:
  WarmNetwork(Scene scene, const Plugged& plugged)
      : m_scene(std::move(scene)), m_plugged(plugged), m_watched(plugged.chain.front().node) {
    for (const timeline::HeatedBranch& branch : m_scene.heated) {
      if (isWatched(branch)) m_cord = dynamic_cast<const CordHeat*>(branch.heat.get());
    }
    CORDREACH_EXPECTS(m_cord != nullptr);
  }

  [[nodiscard]] const CordHeat& cord() const { return *m_cord; }

  void solve(Temperature worst, Temperature rest) {
    branchOfCord() = m_cord->at(worst, rest);
    // Once at rest the others follow in one round.
    const std::size_t rounds = m_solution.circuits.empty() ? kFirstRounds : 1;
    for (std::size_t round = 0; round < rounds; ++round) {
      m_solution = network::solve(m_scene.network);
      for (const timeline::HeatedBranch& branch : m_scene.heated) {
        if (isWatched(branch)) continue;
        const auto& currents = m_solution.circuits[branch.circuit].branches[branch.node];
        const double poleA = *std::max_element(currents.poleRmsA.begin(), currents.poleRmsA.end());
        node(branch).branch = branch.heat->warm(poleA, currents.neutralRmsA);
      }
    }
  }

  [[nodiscard]] const network::LoadSolution& load() const {
    return m_solution.circuits[m_plugged.tap.circuit].loads[*m_plugged.load];
  }
  [[nodiscard]] Current throughCord() const { return currentIn(m_watched); }
  [[nodiscard]] Current throughBreaker() const { return currentIn(0); }
  [[nodiscard]] double voltsAt(std::size_t node) const {
    const auto& poles = m_solution.circuits[m_plugged.tap.circuit].nodeV[node];
    const std::size_t pole = m_plugged.tap.pole;
    return std::abs(m_plugged.tap.toPole ? poles[pole] - poles[*m_plugged.tap.toPole] : poles[pole]);
  }
  [[nodiscard]] units::Voltage voltage() const { return voltsAt(m_plugged.tap.node) * volt; }
  [[nodiscard]] units::Voltage lostInCord() const {
    const auto& nodes = m_scene.network.circuits[m_plugged.tap.circuit].nodes;
    return (voltsAt(nodes[m_watched].parent) - voltsAt(m_watched)) * volt;
  }
  // Both conductors of the cord with the contacts of its plug.
  [[nodiscard]] units::Power heatOfCord() {
    const double amps = throughCord().in(ampere);
    const network::Branch& branch = branchOfCord();
    const auto back = m_plugged.tap.toPole ? branch.poleOhm : branch.neutralOhm;
    return (branch.poleOhm + back).real() * amps * amps * units::watt;
  }

 private:
  [[nodiscard]] bool isWatched(const timeline::HeatedBranch& branch) const {
    return branch.circuit == m_plugged.tap.circuit && branch.node == m_watched;
  }
  network::Node& node(const timeline::HeatedBranch& branch) {
    return m_scene.network.circuits[branch.circuit].nodes[branch.node];
  }
  network::Branch& branchOfCord() { return m_scene.network.circuits[m_plugged.tap.circuit].nodes[m_watched].branch; }
  [[nodiscard]] Current currentIn(std::size_t node) const {
    return m_solution.circuits[m_plugged.tap.circuit].branches[node].poleRmsA[m_plugged.tap.pole] * ampere;
  }

  Scene m_scene;
  Plugged m_plugged;
  std::size_t m_watched;
  const CordHeat* m_cord = nullptr;
  network::Solution m_solution;
};

// The cord's three courses, its plug, and what of it lies on the floor beside the worst place.
class WarmCord {
 public:
  WarmCord(const CordHeat& heat, const site::CordMake& make, Temperature room, bool loose)
      : m_low(heat.section(), room, physics::Corner::Low),
        m_likely(heat.section(), room, physics::Corner::Likely),
        m_high(heat.section(), room, physics::Corner::High),
        m_rest(onFloor(heat.section()), room, physics::Corner::Likely),
        m_partly(heat.isPartly()),
        m_plug(sizeOf(make),
               physics::contactsOf(loose ? physics::ContactClass::Worn : physics::ContactClass::Healthy,
                                   physics::Corner::Likely),
               room) {}

  void advance(Current rms, Duration duration) {
    for (CordTransient* course : {&m_low, &m_likely, &m_high}) course->advance(rms, duration);
    if (m_partly) m_rest.advance(rms, duration);
    m_plug.advance(rms, duration);
  }

  [[nodiscard]] Temperature worst() const { return conductorOf(m_likely); }
  [[nodiscard]] Temperature rest() const { return conductorOf(m_partly ? m_rest : m_likely); }
  [[nodiscard]] Temperature plug() const { return m_plug.now(); }
  [[nodiscard]] std::optional<Band<Temperature>> conductor() const {
    return band([](const physics::HeatResult& heat) { return heat.conductor; });
  }
  [[nodiscard]] std::optional<Band<Temperature>> surface() const {
    return band([](const physics::HeatResult& heat) { return heat.surface; });
  }

 private:
  static physics::CordSection onFloor(physics::CordSection section) {
    section.laying = tables::Laying::Floor;
    return section;
  }
  static Temperature conductorOf(const CordTransient& course) {
    return Temperature::fromCelsius(temperatureOr(course, physics::beyondModelTemperature().celsius()));
  }
  template <class Read>
  std::optional<Band<Temperature>> band(Read read) const {
    if (m_likely.beyondModel()) return std::nullopt;
    // Where only the hot edge has left the model, the band ends at the model's own end.
    const Temperature high = m_high.beyondModel() ? physics::beyondModelTemperature() : read(m_high.now());
    return Band<Temperature>{read(m_likely.now()), read(m_low.now()), high};
  }

  CordTransient m_low;
  CordTransient m_likely;
  CordTransient m_high;
  CordTransient m_rest;
  bool m_partly;
  physics::PlugNode m_plug;
};

class WarmBreaker {
 public:
  WarmBreaker(const site::Site& site, const site::Circuit* circuit) {
    const auto breaker = circuit != nullptr ? breakerOf(*circuit) : std::nullopt;
    if (!breaker) return;
    m_mayNotTrip = circuit->mayNotTrip;
    const physics::BreakerAir air = breakerAirOf(site);
    for (const physics::TripCurve curve : physics::kTripCurves) {
      m_states.emplace_back(*breaker, curve, air.at(curve));
    }
  }

  // Answers when within that time even the latest curve trips; none: it holds, or is not to be relied on.
  std::optional<Duration> advance(Current rms, Duration from, Duration duration, Demonstration& into) {
    std::optional<Duration> cutOff;
    for (std::size_t i = 0; i < m_states.size(); ++i) {
      const auto tripped = m_states[i].advance(rms, duration);
      if (!tripped) continue;
      into.trips[i] = from + *tripped;
      if (i + 1 == m_states.size() && !m_mayNotTrip) cutOff = *tripped;
    }
    return cutOff;
  }

  void putWarmth(DemonstrationPoint& point) const {
    for (std::size_t i = 0; i < m_states.size(); ++i) point.warmth[i] = m_states[i].theta();
  }

 private:
  std::vector<physics::BreakerState> m_states;  // none: unknown breaker
  bool m_mayNotTrip = false;
};

class Demonstrator {
 public:
  Demonstrator(const site::Site& site, WarmNetwork network, const Plugged& plugged)
      : m_network(std::move(network)),
        m_cord(m_network.cord(), makeOf(site, plugged.chain.front()), roomOf(site), isLoose(site, plugged)),
        m_breaker(site, plugged.circuit ? &site.at<site::Circuit>(*plugged.circuit) : nullptr) {
    m_result.air = roomOf(site);
    m_result.limit = ratingOf(makeOf(site, plugged.chain.front()));
    if (plugged.circuit) {
      const auto breaker = breakerOf(site.at<site::Circuit>(*plugged.circuit));
      if (breaker) m_result.rating = breaker->rating;
    }
  }

  Demonstration run(const DemonstrationOptions& options) && {
    m_result.step = options.step;
    const auto steps = static_cast<std::size_t>(std::ceil(options.run / options.step));
    m_result.points.reserve(steps + 1);
    for (std::size_t i = 0; i <= steps; ++i) {
      const Duration now = static_cast<double>(i) * options.step;
      solveWhereItMoved(now);
      m_result.points.push_back(pointAt(now));
      if (i < steps) advance(now, options.step);
    }
    return std::move(m_result);
  }

 private:
  void solveWhereItMoved(Duration now) {
    if (!m_powered) return;
    const auto moved = [](Temperature a, Temperature b) { return std::abs((a - b).si()) > kSolveAgainK; };
    const bool first = !m_solvedAt;
    if (!first && !moved(m_cord.worst(), m_solvedAt->first) && !moved(m_cord.rest(), m_solvedAt->second)) return;
    m_network.solve(m_cord.worst(), m_cord.rest());
    m_solvedAt = {m_cord.worst(), m_cord.rest()};
    if (m_network.load().stalled && !m_result.stalledAt) m_result.stalledAt = now;
  }

  DemonstrationPoint pointAt(Duration now) {
    DemonstrationPoint point;
    point.time = now;
    point.conductor = m_cord.conductor();
    point.surface = m_cord.surface();
    point.plug = m_cord.plug();
    m_breaker.putWarmth(point);
    point.powered = m_powered;
    if (m_powered) {
      point.voltage = m_network.voltage();
      point.lost = m_network.lostInCord();
      point.current = m_network.throughCord();
      point.heat = m_network.heatOfCord();
      const auto& load = m_network.load();
      if (load.point.speedRpm) point.speedRpm = load.stalled ? 0.0 : *load.point.speedRpm;
    }
    return point;
  }

  void advance(Duration now, Duration step) {
    const Current cord = m_powered ? m_network.throughCord() : Current{};
    const Current breaker = m_powered ? m_network.throughBreaker() : Current{};
    const auto cutOff = m_breaker.advance(breaker, now, step, m_result);
    m_cord.advance(cord, cutOff.value_or(step));
    if (!cutOff) return;
    m_powered = false;
    m_cord.advance(Current{}, step - *cutOff);
  }

  WarmNetwork m_network;
  WarmCord m_cord;
  WarmBreaker m_breaker;
  std::optional<std::pair<Temperature, Temperature>> m_solvedAt;
  bool m_powered = true;
  Demonstration m_result;
};

}  // namespace

Demonstration demonstrate(const site::Site& site, const site::HookupId& hookup, const DemonstrationOptions& options) {
  CORDREACH_EXPECTS(options.step > units::Duration{} && options.run >= options.step);
  LoadBook book(site);
  WiringOptions wiringOptions;
  for (const auto& panel : site.all<site::Panel>()) wiringOptions.panels.insert(panel.id);
  const Wiring wiring = wire(site, wiringOptions);
  Scene scene = sceneOf(site, wiring, momentsOf(site).front(), Corner::Likely, book);
  const Plugged plugged = scene.hookups.at(hookup);
  CORDREACH_EXPECTS(plugged.load && !plugged.chain.empty());
  return Demonstrator(site, WarmNetwork(std::move(scene), plugged), plugged).run(options);
}

}  // namespace cordreach::study
