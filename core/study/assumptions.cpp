// SPDX-License-Identifier: GPL-3.0-or-later
#include "study/assumptions.h"

#include "geometry/point.h"

namespace cordreach::study {

namespace {

using units::ampere;
using units::foot;
using units::Length;
using units::metre;

constexpr double kDetour = 1.2;                   // own: wire does not run straight
constexpr Length kDropsAndRises = 6.0 * metre;    // own: up from the panel and down to the outlet
constexpr Length kRunWithoutPlan = 25.0 * metre;  // own: 82 ft, about the middle of a floor
constexpr double kShortest = 0.6;                 // own: the band of a guess, as these two have it
constexpr double kLongest = 1.8;
constexpr double kShortestDrawn = 0.85;  // own: the same where the way is drawn with its bends and drops
constexpr double kLongestDrawn = 1.3;
constexpr Length kCommonCord = 50.0 * foot;  // own: the commonest stock length

site::Stated<Length> guessed(Length value, const char* how) {
  return {value, value * kShortest, value * kLongest, {}, how, {}, {}};
}

}  // namespace

units::WireSize wireOf(const site::Circuit& circuit) {
  if (circuit.size) return circuit.size->value;
  const double ratingA = circuit.rating ? circuit.rating->value.in(ampere) : 15.0;
  if (ratingA <= 15.0) return units::WireSize::awg(14);
  if (ratingA <= 20.0) return units::WireSize::awg(12);
  return units::WireSize::awg(ratingA <= 30.0 ? 10 : 8);
}

site::Stated<Length> assumedRun(const site::Panel& panel, const site::Outlet& outlet) {
  const bool onOnePlan = panel.place && outlet.place && panel.place->floor == outlet.place->floor;
  if (!onOnePlan) return guessed(kRunWithoutPlan, "unknown");
  return guessed(geometry::rightAngleDistance(panel.place->at, outlet.place->at) * kDetour + kDropsAndRises, "plan");
}

std::optional<site::Stated<Length>> drawnRun(const site::Run& run) {
  if (run.path.size() < 2) return std::nullopt;
  Length way{};
  for (std::size_t i = 1; i < run.path.size(); ++i) way += geometry::straightDistance(run.path[i - 1], run.path[i]);
  if (!run.drops) return guessed(way + kDropsAndRises, "plan");
  const Length whole = way + run.drops->value;
  return site::Stated<Length>{whole, whole * kShortestDrawn, whole * kLongestDrawn, {}, "plan", {}, {}};
}

int conductorsOf(const site::CordMake& make) {
  if (make.conductors) return make.conductors->value;
  return make.pin == site::Pin::NotNeeded ? 2 : 3;
}

units::WireSize sizeOf(const site::CordMake& make) {
  if (make.size) return make.size->value;
  return units::WireSize::awg(conductorsOf(make) == 2 ? 18 : 16);
}

site::Stated<Length> lengthOf(const site::CordMake& make) {
  return make.length ? *make.length : guessed(kCommonCord, "unknown");
}

units::Temperature ratingOf(const site::CordMake& make) {
  return make.rating ? make.rating->value : units::Temperature::fromCelsius(60.0);
}

units::Current plateOf(const site::Inlet& inlet) {
  if (inlet.plate) return inlet.plate->value;
  return (inlet.cord.plug == "5-20" ? 20.0 : 15.0) * ampere;
}

units::Current currentOf(const site::FixedLoad& load) {
  if (load.running) return load.running->value;
  return plateOf(load);
}

units::Current plateOf(const site::FixedLoad& load) {
  if (load.plate) return load.plate->value;
  return load.running ? load.running->value : 0.0 * ampere;
}

units::Temperature roomOf(const site::Site& site) {
  return site.ambient.room ? site.ambient.room->value : units::Temperature::fromCelsius(25.0);
}

units::Temperature wallOf(const site::Site& site) {
  return site.ambient.wall ? site.ambient.wall->value : units::Temperature::fromCelsius(30.0);
}

}  // namespace cordreach::study
