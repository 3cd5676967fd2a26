// SPDX-License-Identifier: GPL-3.0-or-later
// Small days said in a few words, for tests of the timeline: circuits of a 120 V source with one cord each and loads at
// its end.
#pragma once

#include <memory>
#include <optional>
#include <utility>

#include "physics/cord_section.h"
#include "physics/wire.h"
#include "support/network_builder.h"
#include "timeline/cord_warmth.h"
#include "timeline/day.h"

namespace cordreach::testing {

inline const units::Temperature kDayAir = units::Temperature::fromCelsius(24.0);

struct DayCordLike {
  int gauge = 14;
  double lengthM = 20.0;
  tables::Laying laying = tables::Laying::Floor;
  double turns = 0.0;
};

inline physics::CordLadder ladderOf(const DayCordLike& cord) {
  physics::CordSection section{units::WireSize::awg(cord.gauge)};
  section.laying = cord.laying;
  section.turns = cord.turns;
  return physics::ladderOf(section, physics::Corner::Likely);
}

inline network::Branch branchOf(const DayCordLike& cord, units::Temperature at) {
  const double ohm = physics::cordResistance(units::WireSize::awg(cord.gauge), at).in(units::ohmPerMetre)*cord.lengthM;
  return {ohm, ohm};
}

inline std::shared_ptr<const timeline::Warmth> warmthOf(const DayCordLike& cord, double toleranceK = 0.02) {
  return std::make_shared<timeline::CordWarmth>(timeline::CordWarmth::Inputs{
      ladderOf(cord), std::nullopt, kDayAir,
      [cord](units::Temperature worst, units::Temperature) { return branchOf(cord, worst); }, toleranceK});
}

class DayBuilder {
 public:
  struct Empty {};
  explicit DayBuilder(Empty /*nothing*/) {}
  explicit DayBuilder(double sourceOhm = 0.03) {
    day.network.panels.push_back(sourcePanel({120.0}, {sourceOhm, sourceOhm}));
  }

  // A circuit with that cord to its one outlet; its conductor has the circuit's index.
  DayBuilder& circuit(const DayCordLike& cord = {}, std::optional<physics::Breaker> breaker = std::nullopt) {
    const std::size_t index = day.network.circuits.size();
    network::Circuit circuit = chain({0}, {{}, branchOf(cord, kDayAir)});
    circuit.label = "circuit " + std::to_string(index);
    day.network.circuits.push_back(std::move(circuit));
    day.conductors.push_back({{{index, 1}}, warmthOf(cord), units::Temperature::fromCelsius(60.0)});
    day.protectedPoles.push_back({index, 0, 1, breaker});
    return *this;
  }

  // One more load at the circuit's end: on between those times, in seconds, or from the one on.
  DayBuilder& load(std::size_t circuit, Law law, double fromS, std::optional<double> untilS = std::nullopt,
                   std::optional<timeline::StartPeak> start = std::nullopt) {
    auto& loads = day.network.circuits[circuit].loads;
    loads.push_back({"load", 1, 0, std::nullopt, nullptr});
    const timeline::LoadPlace place{circuit, loads.size() - 1};
    change(fromS, timeline::ChangeKind::On, place).law = std::move(law);
    if (start) day.changes.back().start = std::move(start);
    if (untilS) change(*untilS, timeline::ChangeKind::Off, place);
    return *this;
  }

  // In order of time, to that many hours.
  timeline::Day forHours(double hours) {
    std::stable_sort(day.changes.begin(), day.changes.end(), [](const auto& a, const auto& b) { return a.at < b.at; });
    day.until = hours * units::hour;
    return day;
  }

  timeline::Day day;

 private:
  timeline::Change& change(double atS, timeline::ChangeKind kind, timeline::LoadPlace place) {
    timeline::Change change;
    change.at = atS * units::second;
    change.kind = kind;
    change.load = place;
    return day.changes.emplace_back(std::move(change));
  }
};

inline std::optional<double> firstS(const timeline::DayResult& result, timeline::EventKind kind) {
  for (const timeline::Event& event : result.events) {
    if (event.kind == kind) return event.at.si();
  }
  return std::nullopt;
}

}  // namespace cordreach::testing
