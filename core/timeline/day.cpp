// SPDX-License-Identifier: GPL-3.0-or-later
// From one time at which something happens to the next: a change, a trip, a conductor to be looked at, a sample.
#include "timeline/day.h"

#include <algorithm>
#include <limits>
#include <set>

#include "base/contract.h"
#include "timeline/detail/breakers.h"
#include "timeline/detail/conductors.h"
#include "timeline/detail/stand_in_laws.h"
#include "timeline/detail/volts_and_amps.h"

namespace cordreach::timeline {

namespace {

using units::second;

constexpr double kToleranceV = 1e-6;  // own: far below what 2 K do
constexpr double kIdleA = 1e-3;

network::Network withLaws(network::Network network) {
  static const auto off = std::make_shared<detail::Off>();
  for (auto& circuit : network.circuits) {
    for (auto& load : circuit.loads) {
      if (load.law == nullptr) load.law = off;
    }
  }
  return network;
}

class DayRunner {
 public:
  DayRunner(const Day& day, const DayOptions& options)
      : m_day(day),
        m_options(options),
        m_grid(withLaws(day.network)),
        m_conductors(day, options),
        m_breakers(day, options.acting),
        m_off(std::make_shared<detail::Off>()) {
    m_solve.toleranceV = kToleranceV;
    m_solve.progress = {options.progress.stop, {}};
    m_conductorsOf.resize(day.network.circuits.size());
    m_breakersOf.resize(day.network.circuits.size());
    m_stalled.resize(day.network.circuits.size());
    for (std::size_t i = 0; i < day.network.circuits.size(); ++i) {
      m_stalled[i].resize(day.network.circuits[i].loads.size(), false);
    }
    for (std::size_t i = 0; i < day.conductors.size(); ++i) {
      for (const BranchPlace& place : day.conductors[i].places) m_conductorsOf[place.circuit].push_back(i);
    }
    for (std::size_t i = 0; i < day.protectedPoles.size(); ++i) {
      for (std::size_t circuit = 0; circuit < day.network.circuits.size(); ++circuit) {
        if (feeds(day, day.protectedPoles[i], circuit)) m_breakersOf[circuit].push_back(i);
      }
    }
  }

  DayResult run() {
    settleBefore();
    if (m_options.sampleEvery) m_nextSampleS = 0.0;
    const double untilS = m_day.until.si();
    while (!stopped()) {
      applyChanges();
      solveWhatIsDue();
      takeSample();
      if (m_nowS >= untilS) break;
      m_nowS = std::max(
          m_nowS, std::min({untilS, nextChangeS(), m_conductors.nextLookS(), m_breakers.nextTripS(), m_nextSampleS}));
      for (const std::size_t index : m_breakers.takeTripped(m_nowS)) takeOut(index);
      for (const std::size_t index : m_conductors.look(m_nowS)) markMoved(index);
      report(untilS);
    }
    return finished();
  }

 private:
  [[nodiscard]] bool stopped() const { return m_options.progress.stopRequested(); }

  // What is on has been so for long.
  void settleBefore() {
    for (int round = 0; round < 3; ++round) {
      for (std::size_t source = 0; source < m_grid.sources(); ++source) {
        m_grid.solveSource(source, m_solve);
        ++m_result.solves;
      }
      m_conductors = detail::Conductors(m_day, m_options);
      for (std::size_t i = 0; i < m_conductors.size(); ++i) {
        const BranchAmps amps = ampsOf(i);
        if (amps.largest() > kIdleA) m_conductors.settle(i, amps);
        putInNetwork(i);
      }
    }
    for (std::size_t i = 0; i < m_day.protectedPoles.size(); ++i) m_breakers.settle(i, polesA(i));
    for (std::size_t source = 0; source < m_grid.sources(); ++source) m_dueSources.insert(source);
  }

  [[nodiscard]] double nextChangeS() const {
    return m_nextChange < m_day.changes.size() ? m_day.changes[m_nextChange].at.si() : m_day.until.si();
  }

  void applyChanges() {
    while (m_nextChange < m_day.changes.size() && m_day.changes[m_nextChange].at.si() <= m_nowS) {
      const Change& change = m_day.changes[m_nextChange++];
      if (change.kind == ChangeKind::Lay) {
        lay(change);
      } else if (!isOut(change.load)) {
        switchLoad(change);
      }
    }
  }

  void lay(const Change& change) {
    m_conductors.lay(change.conductor, m_nowS, *change.laying);
    markMoved(change.conductor);
    if (!change.silent) tell({m_nowS * second, EventKind::Lay, {}, change.conductor, 0});
  }

  void switchLoad(const Change& change) {
    const auto [circuit, load] = change.load;
    m_stalled[circuit][load] = false;
    if (change.kind == ChangeKind::On) {
      if (change.start) startPeak(change);
      m_grid.network().circuits[circuit].loads[load].law = change.law;
    } else {
      m_grid.network().circuits[circuit].loads[load].law = m_off;
    }
    markSwitched(circuit);
    const EventKind kind = change.kind == ChangeKind::On ? EventKind::On : EventKind::Off;
    if (!change.silent) tell({m_nowS * second, kind, change.load, 0, 0});
  }

  // Everything else on the circuit stands as the impedance that it had.
  void startPeak(const Change& change) {
    const std::size_t place = change.load.circuit;
    network::Circuit circuit = m_grid.network().circuits[place];
    for (std::size_t i = 0; i < circuit.loads.size(); ++i) {
      circuit.loads[i].law = std::make_shared<detail::Held>(m_grid.circuit(place).loads[i].point);
    }
    circuit.loads[change.load.load].law = change.start->law;
    const network::CircuitSolution solution = m_grid.solveInstead(place, circuit, m_solve);
    const auto& currents = solution.branches.front().poleRmsA;
    for (const std::size_t index : m_breakersOf[place]) {
      const ProtectedPoles& poles = m_day.protectedPoles[index];
      if (!feeds(m_day, poles, change.load)) continue;
      double rmsA = poles.panel ? m_grid.largestPhaseA(*poles.panel, {place, &solution}) : 0.0;
      for (std::size_t i = 0; !poles.panel && i < poles.poles; ++i) {
        rmsA = std::max(rmsA, currents[poles.firstPole + i]);
      }
      m_breakers.start(index, m_nowS, rmsA, change.start->lasts);
    }
  }

  [[nodiscard]] bool isOut(const LoadPlace& place) const {
    return std::any_of(m_out.begin(), m_out.end(),
                       [&](std::size_t index) { return feeds(m_day, m_day.protectedPoles[index], place); });
  }

  void takeOut(std::size_t index) {
    m_out.push_back(index);
    const ProtectedPoles& poles = m_day.protectedPoles[index];
    for (std::size_t circuit = 0; circuit < m_day.network.circuits.size(); ++circuit) {
      if (!feeds(m_day, poles, circuit)) continue;
      auto& loads = m_grid.network().circuits[circuit].loads;
      for (std::size_t i = 0; i < loads.size(); ++i) {
        if (feeds(m_day, poles, {circuit, i})) loads[i].law = m_off;
      }
      markSwitched(circuit);
    }
    tell({m_nowS * second, EventKind::Trip, {}, 0, index, m_breakers.amps(index)});
  }

  void markSwitched(std::size_t circuit) {
    m_dueSources.insert(m_grid.sourceOf(circuit));
    for (const std::size_t index : m_conductorsOf[circuit]) {
      m_conductors.bringTo(index, m_nowS);
      putInNetwork(index);
    }
  }

  void markMoved(std::size_t conductor) {
    putInNetwork(conductor);
    for (const BranchPlace& place : m_day.conductors[conductor].places) {
      if (m_options.wholePanels) {
        m_dueSources.insert(m_grid.sourceOf(place.circuit));
      } else {
        m_dueCircuits.insert(place.circuit);
      }
    }
  }

  void putInNetwork(std::size_t conductor) {
    const network::Branch branch = m_conductors.intoNetwork(conductor);
    for (const BranchPlace& place : m_day.conductors[conductor].places) {
      m_grid.network().circuits[place.circuit].nodes[place.node].branch = branch;
    }
  }

  void solveWhatIsDue() {
    while (!(m_dueSources.empty() && m_dueCircuits.empty()) && !stopped()) {
      if (!m_dueSources.empty()) {
        const std::size_t source = *m_dueSources.begin();
        m_dueSources.erase(m_dueSources.begin());
        std::erase_if(m_dueCircuits, [&](std::size_t circuit) { return m_grid.sourceOf(circuit) == source; });
        ++m_result.solves;
        for (const std::size_t circuit : m_grid.solveSource(source, m_solve)) take(circuit);
      } else {
        const std::size_t circuit = *m_dueCircuits.begin();
        m_dueCircuits.erase(m_dueCircuits.begin());
        ++m_result.circuitSolves;
        m_grid.solveCircuit(circuit, m_solve);
        take(circuit);
        if (m_grid.pullsAtItsBus(circuit)) m_dueSources.insert(m_grid.sourceOf(circuit));
      }
    }
  }

  // A circuit's new amps, to all that carries them.
  void take(std::size_t circuit) {
    takeStalls(circuit);
    for (const std::size_t index : m_breakersOf[circuit]) m_breakers.carry(index, m_nowS, polesA(index));
    for (const std::size_t index : m_conductorsOf[circuit]) {
      if (m_conductors.carry(index, m_nowS, ampsOf(index))) markMoved(index);
    }
  }

  void takeStalls(std::size_t circuit) {
    const network::CircuitSolution& solution = m_grid.circuit(circuit);
    for (std::size_t i = 0; i < solution.loads.size(); ++i) {
      if (!solution.loads[i].stalled || m_stalled[circuit][i]) continue;
      m_stalled[circuit][i] = true;
      auto& law = m_grid.network().circuits[circuit].loads[i].law;
      law = std::make_shared<detail::Locked>(law);
      const network::LoadSolution& stands = solution.loads[i];
      tell({m_nowS * second, EventKind::Stall, {circuit, i}, 0, 0, stands.totalRmsA, std::abs(stands.voltageV)});
    }
  }

  [[nodiscard]] double polesA(std::size_t index) const {
    const ProtectedPoles& poles = m_day.protectedPoles[index];
    if (poles.panel) return m_grid.largestPhaseA(*poles.panel);
    return m_grid.largestPoleA(poles.circuit, poles.firstPole, poles.poles);
  }

  [[nodiscard]] BranchAmps ampsOf(std::size_t conductor) const {
    BranchAmps amps;
    for (const BranchPlace& place : m_day.conductors[conductor].places) {
      const network::BranchCurrents& currents = m_grid.circuit(place.circuit).branches[place.node];
      for (const double poleA : currents.poleRmsA) amps.poleA = std::max(amps.poleA, poleA);
      amps.neutralA = std::max(amps.neutralA, currents.neutralRmsA);
    }
    return amps;
  }

  void takeSample() {
    if (m_nowS < m_nextSampleS) return;
    m_nextSampleS += m_options.sampleEvery->si();
    m_conductors.bringAllTo(m_nowS);
    Sample sample;
    sample.at = m_nowS * second;
    for (std::size_t i = 0; i < m_day.protectedPoles.size(); ++i) sample.circuitA.push_back(polesA(i));
    for (std::size_t i = 0; i < m_conductors.size(); ++i) {
      sample.conductorA.push_back(m_conductors.amps(i).largest());
      sample.conductors.push_back(m_conductors.warmth(i).conductor());
      sample.surfaces.push_back(m_conductors.warmth(i).surface());
    }
    for (std::size_t i = 0; i < m_day.network.circuits.size(); ++i) {
      std::vector<double>& volts = sample.loadV.emplace_back();
      for (const auto& load : m_grid.circuit(i).loads) volts.push_back(std::abs(load.voltageV));
    }
    m_result.samples.push_back(std::move(sample));
  }

  void tell(const Event& event) { m_result.events.push_back(event); }

  void report(double untilS) {
    constexpr double kEvery = 0.01;
    if (!m_options.progress.report || m_nowS < (m_reported + kEvery) * untilS) return;
    m_reported = m_nowS / untilS;
    m_options.progress.report(m_reported);
  }

  DayResult finished() {
    m_conductors.bringAllTo(m_nowS);
    m_breakers.bringAllTo(m_nowS);
    for (const Event& event : m_conductors.takeEvents()) tell(event);
    std::stable_sort(m_result.events.begin(), m_result.events.end(),
                     [](const Event& a, const Event& b) { return a.at < b.at; });
    m_result.trips = m_breakers.trips();
    m_result.largestA = m_breakers.largestA();
    m_result.peaks = m_conductors.peaks();
    m_result.looks = m_conductors.looks();
    m_result.stopped = stopped();
    return std::move(m_result);
  }

  const Day& m_day;
  const DayOptions& m_options;
  network::SolveOptions m_solve;
  detail::VoltsAndAmps m_grid;
  detail::Conductors m_conductors;
  detail::Breakers m_breakers;
  std::shared_ptr<const physics::LoadLaw> m_off;
  std::vector<std::vector<std::size_t>> m_conductorsOf;  // [circuit]
  std::vector<std::vector<std::size_t>> m_breakersOf;    // [circuit]
  std::vector<std::vector<bool>> m_stalled;              // [circuit][load]
  std::vector<std::size_t> m_out;                        // what acted
  std::set<std::size_t> m_dueSources;
  std::set<std::size_t> m_dueCircuits;
  std::size_t m_nextChange = 0;
  double m_nowS = 0.0;
  double m_nextSampleS = std::numeric_limits<double>::infinity();
  double m_reported = 0.0;
  DayResult m_result;
};

}  // namespace

bool feeds(const Day& day, const ProtectedPoles& poles, std::size_t circuit) {
  return poles.panel ? network::hangsOn(day.network, circuit, *poles.panel) : poles.circuit == circuit;
}

bool feeds(const Day& day, const ProtectedPoles& poles, const LoadPlace& place) {
  if (!feeds(day, poles, place.circuit)) return false;
  if (poles.panel) return true;
  const network::Load& load = day.network.circuits[place.circuit].loads[place.load];
  const auto holds = [&](std::size_t pole) { return pole >= poles.firstPole && pole < poles.firstPole + poles.poles; };
  return holds(load.pole) || (load.toPole && holds(*load.toPole));
}

DayResult runDay(const Day& day, const DayOptions& options) {
  CORDREACH_EXPECTS(day.until >= units::Duration{} && day.until <= kLongestDay);
  CORDREACH_EXPECTS(std::is_sorted(day.changes.begin(), day.changes.end(),
                                   [](const Change& a, const Change& b) { return a.at < b.at; }));
  return DayRunner(day, options).run();
}

}  // namespace cordreach::timeline
