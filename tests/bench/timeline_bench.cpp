// SPDX-License-Identifier: GPL-3.0-or-later
// A building through twelve hours: 60 circuits on two sources, 40 machines that work in stretches through their own
// cord and an extension, some of it coiled, and 20 things on a cord that come and go by themselves. The error is that
// of every conductor every 20 minutes against the same day in steps of a second, all solved anew in each.
#include <benchmark/benchmark.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "physics/load_nameplate.h"
#include "support/day_builder.h"
#include "timeline/wire_warmth.h"

namespace cordreach {
namespace {

constexpr std::size_t kCircuits = 60;
constexpr std::size_t kMachines = 40;
constexpr double kHours = 12.0;

// Of 12 AWG in a wall, 20 m long: 5.31 mOhm/m, 60 K at its 30 A.
class Wall : public timeline::BranchHeat {
 public:
  static units::Temperature temperatureAt(double rmsA) {
    return units::Temperature::fromCelsius(30.0 + 60.0 * rmsA * rmsA / 900.0);
  }
  network::Branch warm(double poleRmsA, double neutralRmsA) const override {
    return {ohmAt(poleRmsA), ohmAt(neutralRmsA)};
  }

 private:
  static double ohmAt(double rmsA) { return 0.1062 * (1.0 + 0.00393 * (temperatureAt(rmsA).celsius() - 20.0)); }
};

testing::Law lawOf(std::size_t i) {
  constexpr std::array kModels = {physics::LoadModel::Induction, physics::LoadModel::RectifiedDc,
                                  physics::LoadModel::Universal, physics::LoadModel::Compressor};
  physics::Nameplate plate;
  plate.model = i < kMachines ? kModels[i % 3] : kModels[3];
  plate.current = (i < kMachines ? 9.0 + static_cast<double>(i % 5) : 6.0) * units::ampere;
  return physics::makeLoadLaw(plate).value();
}

testing::DayCordLike ownCord(std::size_t i) { return {i < kMachines ? 14 : 16, i < kMachines ? 15.0 : 3.0}; }

testing::DayCordLike extension(std::size_t i) {
  if (i % 4 == 0) return {14, 15.0, tables::Laying::Coiled, 6.0};
  return {i % 4 == 1 ? 16 : 12, 15.0};
}

class TwelveHours {
 public:
  explicit TwelveHours(double toleranceK) : m_toleranceK(toleranceK) {
    for (std::size_t source = 0; source < 2; ++source) {
      m_builder.day.network.panels.push_back(testing::sourcePanel({120.0, -120.0}, {0.006, 0.006}));
    }
    for (std::size_t i = 0; i < kCircuits; ++i) addCircuit(i);
  }

  timeline::Day day() { return m_builder.forHours(kHours); }

 private:
  void addCircuit(std::size_t i) {
    network::Circuit circuit = testing::chain({(i / 2) % 2}, {{}, Wall().warm(0, 0)});
    circuit.panel = i % 2;
    m_builder.day.network.circuits.push_back(circuit);
    const auto wall = std::make_shared<timeline::WireWarmth>(std::make_shared<Wall>(), Wall::temperatureAt);
    m_builder.day.conductors.push_back({{{i, 1}}, wall, units::Temperature::fromCelsius(1e6)});
    if (i < kMachines) addCord(i, extension(i));
    addCord(i, ownCord(i));
    m_builder.day.protectedPoles.push_back({i, 0, 1, physics::Breaker{20.0 * units::ampere}});
    if (i < kMachines) {
      addShifts(i);
    } else {
      addCycles(i);
    }
  }

  void addCord(std::size_t i, const testing::DayCordLike& cord) {
    auto& nodes = m_builder.day.network.circuits[i].nodes;
    nodes.push_back({"cord", nodes.size() - 1, testing::branchOf(cord, testing::kDayAir)});
    m_builder.day.conductors.push_back(
        {{{i, nodes.size() - 1}}, testing::warmthOf(cord, m_toleranceK), units::Temperature::fromCelsius(60.0)});
  }

  // Four stretches of a hundred minutes or so, pauses between, nobody at the same time.
  void addShifts(std::size_t i) {
    const testing::Law law = lawOf(i);
    const double offset = 47.0 * static_cast<double>(i);
    for (int stretch = 0; stretch < 4; ++stretch) {
      const double from = offset + 10500.0 * stretch;
      addOn(i, law, from, from + 6000.0 + 300.0 * static_cast<double>(i % 7));
    }
  }

  void addCycles(std::size_t i) {
    const testing::Law law = lawOf(i);
    const double onS = 420.0 + 20.0 * static_cast<double>(i % 9);
    const double periodS = 1500.0 + 60.0 * static_cast<double>(i % 11);
    for (double from = 30.0 * static_cast<double>(i - kMachines); from < kHours * 3600.0; from += periodS) {
      addOn(i, law, from, from + onS);
    }
  }

  void addOn(std::size_t i, const testing::Law& law, double fromS, double untilS) {
    auto& circuit = m_builder.day.network.circuits[i];
    if (circuit.loads.empty()) circuit.loads.push_back({"load", circuit.nodes.size() - 1, 0, std::nullopt, nullptr});
    timeline::Change change;
    change.load = {i, 0};
    change.at = fromS * units::second;
    change.law = law;
    m_builder.day.changes.push_back(change);
    change.at = untilS * units::second;
    change.kind = timeline::ChangeKind::Off;
    m_builder.day.changes.push_back(change);
  }

  double m_toleranceK;
  testing::DayBuilder m_builder{testing::DayBuilder::Empty{}};
};

timeline::DayOptions sampled() {
  timeline::DayOptions options;
  options.sampleEvery = 1200.0 * units::second;
  return options;
}

double errorK(const timeline::Day& day) {
  timeline::DayOptions everySecond = sampled();
  everySecond.longestLook = 1.0 * units::second;
  everySecond.movedK = 1e-3;
  everySecond.wholePanels = true;
  static const timeline::DayResult fine = runDay(TwelveHours(0.002).day(), everySecond);
  const timeline::DayResult ours = runDay(day, sampled());
  double worst = 0.0;
  for (std::size_t i = 0; i < ours.samples.size(); ++i) {
    for (std::size_t c = 0; c < day.conductors.size(); ++c) {
      worst = std::max(worst, std::abs((ours.samples[i].conductors[c] - fine.samples[i].conductors[c]).si()));
    }
  }
  return worst;
}

void twelveHours(benchmark::State& state) {
  const timeline::Day day = TwelveHours(0.02).day();
  timeline::DayResult result;
  for (auto _ : state) result = runDay(day);
  state.counters["error_k"] = errorK(day);
  state.counters["source_solves"] = static_cast<double>(result.solves);
  state.counters["circuit_solves"] = static_cast<double>(result.circuitSolves);
  state.counters["looks"] = static_cast<double>(result.looks);
  state.counters["trips"] = static_cast<double>(std::count_if(
      result.events.begin(), result.events.end(), [](const auto& e) { return e.kind == timeline::EventKind::Trip; }));
}

BENCHMARK(twelveHours)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace cordreach

BENCHMARK_MAIN();
