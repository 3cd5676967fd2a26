// SPDX-License-Identifier: GPL-3.0-or-later
// Code limits out of their table.
#include "tables/code_limits.h"

#include <algorithm>
#include <string>
#include <vector>

#include "tables/table.h"
#include "units/plain.h"

namespace cordreach::tables {
namespace {

Sourced<double> number(const Row& row) { return {row.number("value"), &row.source()}; }

Sourced<double> number(const char* id) { return number(table("code_limits").at(id)); }

// A row that exists for some ratings only: `cord_and_plug.15`.
std::optional<Sourced<units::Current>> amperesFor(const char* rule, units::Current rating) {
  const Row* row = table("code_limits").find(rule + units::plain(rating.in(units::ampere)));
  if (row == nullptr) return std::nullopt;
  return Sourced<units::Current>{row->number("value") * units::ampere, &row->source()};
}

Sourced<units::Current> milliamperes(const char* id) {
  const auto value = number(id);
  return {value.value * units::milliampere, value.from};
}

}  // namespace

std::optional<Sourced<units::Current>> cordAndPlugLimit(units::Current receptacleRating) {
  return amperesFor("cord_and_plug.", receptacleRating);
}

std::optional<ReceptacleRange> receptacleRange(units::Current circuitRating) {
  const auto least = amperesFor("receptacle_on.", circuitRating);
  const auto most = amperesFor("receptacle_most.", circuitRating);
  if (!least || !most) return std::nullopt;
  return ReceptacleRange{*least, *most};
}

Sourced<double> singleReceptacleShare() { return number("single_receptacle.share"); }
Sourced<double> portableShare() { return number("portable.share"); }
Sourced<double> fastenedShare() { return number("fastened.share"); }
Sourced<double> continuousShare() { return number("continuous.share"); }
Sourced<double> branchDropAdvisory() { return number("drop.branch"); }
Sourced<double> totalDropAdvisory() { return number("drop.total"); }

Sourced<units::Duration> continuousFrom() {
  const auto hours = number("continuous.from");
  return {hours.value * units::hour, hours.from};
}

std::span<const Sourced<units::Current>> standardDeviceRatings() {
  static const std::vector<Sourced<units::Current>> all = [] {
    std::vector<Sourced<units::Current>> ratings;
    for (const Row& row : table("code_limits").rows()) {
      if (!row.id().starts_with("standard_device.")) continue;
      ratings.push_back({row.number("value") * units::ampere, &row.source()});
    }
    std::ranges::sort(ratings, {}, &Sourced<units::Current>::value);
    return ratings;
  }();
  return all;
}

std::optional<Sourced<units::Current>> standardDeviceFor(units::Current current) {
  const auto all = standardDeviceRatings();
  const auto found = std::ranges::lower_bound(all, current, {}, &Sourced<units::Current>::value);
  if (found == all.end()) return std::nullopt;
  return *found;
}

Sourced<units::Current> groundFaultHolds() { return milliamperes("ground_fault.no_trip"); }
Sourced<units::Current> groundFaultTrips() { return milliamperes("ground_fault.trip"); }

Sourced<units::Temperature> unmarkedCordRating() {
  const auto celsius = number("cord.unmarked_rating");
  return {units::Temperature::fromCelsius(celsius.value), celsius.from};
}

Sourced<units::WireSize> lightestFieldMadeExtension() {
  const auto gauge = number("extension.field_made");
  return {units::WireSize::awg(static_cast<int>(gauge.value)), gauge.from};
}

}  // namespace cordreach::tables
