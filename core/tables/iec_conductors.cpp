// SPDX-License-Identifier: GPL-3.0-or-later
// Metric conductors out of their tables.
#include "tables/iec_conductors.h"

#include <string>

#include "tables/size_key.h"
#include "tables/table.h"

namespace cordreach::tables {
namespace {

std::optional<Sourced<units::Current>> ampacity(const std::string& id) {
  const Row* row = table("iec_ampacity").find(id);
  if (row == nullptr) return std::nullopt;
  return Sourced<units::Current>{row->number("ampacity_a") * units::ampere, &row->source()};
}

}  // namespace

std::optional<Sourced<units::ResistancePerLength>> iecResistance20(const units::WireSize& size, IecClass conductorClass,
                                                                   bool tinned) {
  const Row* row = table("iec_resistance")
                       .find(sizeKey(size) + (conductorClass == IecClass::Stranded2 ? ".class2" : ".class5") +
                             (tinned ? ".tinned" : ".plain"));
  if (row == nullptr) return std::nullopt;
  return Sourced<units::ResistancePerLength>{row->number("ohm_per_km_20c") * units::ohmPerKilometre, &row->source()};
}

std::optional<Sourced<units::Current>> iecAmpacity(const units::WireSize& size, IecLoaded loaded, IecMethod method) {
  return ampacity(sizeKey(size) + (loaded == IecLoaded::Two ? ".two" : ".three") +
                  (method == IecMethod::B2InConduit ? ".b2" : ".c"));
}

IecCordSeries iecCordSeries(const units::WireSize& size) {
  return {ampacity(sizeKey(size) + ".cord.bs7671"), ampacity(sizeKey(size) + ".cord.appliance")};
}

std::optional<Sourced<units::Current>> iecCordAmpacity(const units::WireSize& size) {
  const auto series = iecCordSeries(size);
  if (!series.appliance) return series.fixedInstallation;
  if (!series.fixedInstallation) return series.appliance;
  return series.appliance->value < series.fixedInstallation->value ? series.appliance : series.fixedInstallation;
}

}  // namespace cordreach::tables
