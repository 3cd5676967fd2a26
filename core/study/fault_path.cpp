// SPDX-License-Identifier: GPL-3.0-or-later
#include "study/fault_path.h"

#include <algorithm>
#include <cmath>

#include "physics/touch_voltage.h"
#include "physics/wire.h"
#include "study/assumptions.h"
#include "study/branch_heat.h"

namespace cordreach::study {

namespace {

using physics::FaultLoop;
using units::Temperature;

constexpr std::size_t kLikely = 0;
constexpr std::size_t kAdverse = 1;
constexpr std::size_t kFavourable = 2;
static_assert(kCorners[kAdverse] == Corner::Adverse && kCorners[kFavourable] == Corner::Favourable);

FaultLoop alike(const network::Branch& branch) { return {branch.poleOhm, branch.poleOhm}; }

// One corner of a state, as its hookup sees it.
class View {
 public:
  View(const PanelState& state, std::size_t corner, const site::HookupId& hookup)
      : m_scene(state.scenes[corner]),
        m_solution(state.settled[corner].warm),
        m_plugged(m_scene.hookups.at(hookup)),
        m_circuit(m_scene.network.circuits[m_plugged.tap.circuit]) {}

  [[nodiscard]] units::Voltage toEarth() const {
    std::size_t panel = m_circuit.panel;
    std::size_t phase = m_circuit.phases[m_plugged.tap.pole];
    const auto& panels = m_scene.network.panels;
    while (panels[panel].fedFrom) {
      phase = panels[panel].feedPhases[phase];
      panel = *panels[panel].fedFrom;
    }
    return std::abs(panels[panel].sourceV[phase]) * units::volt;
  }

  // From the source to the outlet, as cool as the wall or as warm as the load keeps it.
  [[nodiscard]] FaultLoop wiring(bool warm) const {
    const Tap& tap = m_plugged.outletTap;
    FaultLoop loop{};
    for (std::size_t node = tap.node;; node = m_circuit.nodes[node].parent) {
      const auto* heat = warm ? heatAt(node) : nullptr;
      const double poleA = m_solution.circuits[tap.circuit].branches[node].poleRmsA[tap.pole];
      loop = loop + alike(heat != nullptr ? heat->warm(poleA, poleA) : m_circuit.nodes[node].branch);
      if (node == 0) break;
    }
    for (std::optional<std::size_t> panel = m_circuit.panel; panel; panel = m_scene.network.panels[*panel].fedFrom) {
      const network::Branch& feeder = m_scene.network.panels[*panel].feeder;
      loop = loop + FaultLoop{feeder.poleOhm, feeder.neutralOhm};
    }
    return loop;
  }

  [[nodiscard]] std::size_t cords() const { return m_plugged.chain.size(); }
  [[nodiscard]] const CordHeat& cord(std::size_t link) const {
    return dynamic_cast<const CordHeat&>(*heatAt(m_plugged.chain[link].node));
  }

 private:
  [[nodiscard]] const timeline::BranchHeat* heatAt(std::size_t node) const {
    const auto at = std::find_if(m_scene.heated.begin(), m_scene.heated.end(), [&](const auto& branch) {
      return branch.circuit == m_plugged.tap.circuit && branch.node == node;
    });
    return at != m_scene.heated.end() ? at->heat.get() : nullptr;
  }

  const Scene& m_scene;
  const network::Solution& m_solution;
  const Plugged& m_plugged;
  const network::Circuit& m_circuit;
};

// As hot as its load leaves it, where that is beyond the model as hot as the model reaches.
physics::HeatResult warmthOf(const CordAnswer& cord) {
  const Temperature beyond = physics::beyondModelTemperature();
  return {cord.conductor ? cord.conductor->likely : beyond, cord.surface ? cord.surface->likely : beyond};
}

class Path {
 public:
  Path(const site::Site& site, const PanelState& state, const HookupAnswer& answer)
      : m_answer(answer),
        m_room(roomOf(site)),
        m_likely(state, kLikely, answer.id),
        m_adverse(state, kAdverse, answer.id),
        m_favourable(state, kFavourable, answer.id) {}

  FaultPath run() {
    const units::Voltage volts = m_likely.toEarth();
    const units::Voltage low = std::min(m_adverse.toEarth(), physics::leastVoltageFactor() * volts);
    const units::Voltage high = m_favourable.toEarth();
    FaultPath path{bandOf(volts, low, high), {}};
    FaultLoop cool = m_likely.wiring(false);
    FaultLoop warm = m_likely.wiring(true);
    FaultLoop least = m_favourable.wiring(false);
    FaultLoop most = m_adverse.wiring(true) + physics::jointsLoop();
    const std::size_t count = std::min(m_likely.cords(), m_answer.cords.size());
    for (std::size_t i = 0; i < count; ++i) {
      FaultLink link = linkOf(i);
      link.coolLoop = cool = cool + link.coolPart;
      link.warmLoop = warm = warm + link.warmPart;
      const Temperature cold = physics::kReferenceTemperature;
      const Temperature hot = std::max(warmthOf(m_answer.cords[i]).conductor, physics::hotLoop());
      least = least + alike(m_favourable.cord(i).at(cold, cold));
      most = most + alike(m_adverse.cord(i).at(hot, hot));
      link.bolted = bandOf(physics::boltedCurrent(volts, warm), physics::boltedCurrent(low, most),
                           physics::boltedCurrent(high, least));
      link.touch = bandOf(physics::touchVoltage(volts, warm), physics::touchVoltage(low, most),
                          physics::touchVoltage(high, least));
      path.links.push_back(std::move(link));
    }
    return path;
  }

 private:
  [[nodiscard]] FaultLink linkOf(std::size_t index) const {
    const CordHeat& heat = m_likely.cord(index);
    const physics::HeatResult before = warmthOf(m_answer.cords[index]);
    const Temperature reference = physics::kReferenceTemperature;
    return {physics::FaultCord(heat.section(), physics::Corner::Likely, {m_room, m_room}, m_room),
            physics::FaultCord(heat.section(), physics::Corner::Likely, before, m_room),
            alike(heat.at(reference, reference)).ohm(),
            alike(heat.at(m_room, m_room)),
            alike(heat.at(before.conductor, before.conductor)),
            {},
            {},
            {},
            {}};
  }

  const HookupAnswer& m_answer;
  Temperature m_room;
  View m_likely;
  View m_adverse;
  View m_favourable;
};

}  // namespace

FaultPath faultPathOf(const site::Site& site, const PanelState& state, const HookupAnswer& answer) {
  return Path(site, state, answer).run();
}

}  // namespace cordreach::study
