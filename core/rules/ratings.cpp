// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/ratings.h"

#include <algorithm>

#include "study/assumptions.h"
#include "tables/ambient_factor.h"
#include "tables/code_limits.h"
#include "tables/cord_ampacity.h"
#include "tables/cord_types.h"
#include "tables/iec_conductors.h"
#include "tables/receptacles.h"
#include "tables/wire_ampacity.h"

namespace cordreach::rules {

namespace {

tables::CordColumn columnOf(const site::CordMake& make) {
  const tables::CordType* type = tables::cordType(make.type);
  if (type != nullptr && type->heater) return tables::CordColumn::Heater;
  // The earth does not count: up to three conductors, two carry.
  return study::conductorsOf(make) <= 3 ? tables::CordColumn::TwoCarrying : tables::CordColumn::ThreeCarrying;
}

double ambientShare(const site::CordMake& make, units::Temperature room) {
  const units::Temperature rating = study::ratingOf(make);
  if (const auto factor = tables::ambientFactor(rating, room)) return std::min(1.0, factor->value);
  return room < rating ? 1.0 : 0.0;
}

std::optional<units::Current> printedAmpacity(const site::CordMake& make) {
  const units::WireSize size = study::sizeOf(make);
  if (const auto gauge = tables::cordAmpacity(size, columnOf(make))) return gauge->value;
  if (const auto metric = tables::iecCordAmpacity(size)) return metric->value;
  return {};
}

}  // namespace

std::optional<units::Current> receptacleRating(const std::string& key) {
  const tables::ReceptacleType* type = tables::receptacleType(key);
  if (type == nullptr) return {};
  return type->rating;
}

std::optional<units::Current> cordAmpacity(const site::CordMake& make, units::Temperature room) {
  const auto printed = printedAmpacity(make);
  if (!printed) return {};
  return *printed * ambientShare(make, room);
}

std::optional<units::Current> largestDevice(const units::WireSize& size, site::Metal metal) {
  const tables::Metal of = metal == site::Metal::Copper ? tables::Metal::Copper : tables::Metal::Aluminium;
  if (const auto small = tables::largestDevice(size, of)) return small->value;
  auto ampacity = tables::wireAmpacity(size, tables::WireColumn::C60, of);
  if (!ampacity && metal == site::Metal::Copper) {
    ampacity = tables::iecAmpacity(size, tables::IecLoaded::Two, tables::IecMethod::B2InConduit);
  }
  if (!ampacity) return {};
  const auto device = tables::standardDeviceFor(ampacity->value);
  if (!device) return {};
  return device->value;
}

}  // namespace cordreach::rules
