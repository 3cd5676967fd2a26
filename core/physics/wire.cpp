// SPDX-License-Identifier: GPL-3.0-or-later
// Resistance from resistivity and area, or from IEC 60228; wall wires from their ampacity.
#include "physics/wire.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "base/contract.h"
#include "tables/dc_resistance.h"
#include "tables/iec_conductors.h"
#include "tables/wire_ampacity.h"

namespace cordreach::physics {
namespace {

using tables::Metal;
using units::WireSize;

constexpr double kRatedAirC = 30.0;  // of every ampacity table here

// The metric sizes that the tables list.
constexpr std::array kMetricSizes = {0.5, 0.75, 1.0, 1.5, 2.5, 4.0, 6.0, 10.0, 16.0};

// What the copper table says of the next listed size at or below, times how much more area this size has.
units::ResistancePerLength iecResistance(const WireSize& size, tables::IecClass iecClass) {
  double listed = kMetricSizes.front();
  for (const double candidate : kMetricSizes) {
    if (candidate <= *size.metricMm2()) listed = candidate;
  }
  const auto row = tables::iecResistance20(WireSize::squareMillimetres(listed), iecClass);
  CORDREACH_EXPECTS(row.has_value());
  return row->value * (listed / *size.metricMm2());
}

double resistivityRatioToCopper(Metal metal) {
  return tables::conductorMetal(metal).resistivity20.value / tables::conductorMetal(Metal::Copper).resistivity20.value;
}

struct Ampacity {
  units::Current current;
  double ratingC;
};

Ampacity gaugeAmpacity(const WireSize& size, Metal metal, units::Temperature insulation) {
  const bool at90 = insulation.celsius() >= 90.0;
  const bool at75 = insulation.celsius() >= 75.0;
  const auto column = at90 ? tables::WireColumn::C90 : at75 ? tables::WireColumn::C75 : tables::WireColumn::C60;
  const double ratingC = at90 ? 90.0 : at75 ? 75.0 : 60.0;
  const int gauge = *size.awgNumber();
  for (int lighter = gauge; lighter <= WireSize::kLightestAwg; ++lighter) {
    if (const auto row = tables::wireAmpacity(WireSize::awg(lighter), column, metal)) return {row->value, ratingC};
  }
  int heavier = gauge;
  while (!tables::wireAmpacity(WireSize::awg(heavier), column, metal)) --heavier;
  const WireSize listed = WireSize::awg(heavier);
  return {tables::wireAmpacity(listed, column, metal)->value * (size.area() / listed.area()), ratingC};
}

// Aluminium has no rows of its own here: the same loss at a current lower by the root of the resistivities.
Ampacity metricAmpacity(const WireSize& size, Metal metal) {
  constexpr double kPvcRatingC = 70.0;
  constexpr double kSmallestListed = 1.5;
  double listed = kSmallestListed;
  for (const double candidate : kMetricSizes) {
    if (candidate <= *size.metricMm2()) listed = std::max(listed, candidate);
  }
  const auto row =
      tables::iecAmpacity(WireSize::squareMillimetres(listed), tables::IecLoaded::Two, tables::IecMethod::B2InConduit);
  CORDREACH_EXPECTS(row.has_value());
  const double smaller = std::min(*size.metricMm2() / listed, 1.0);
  return {row->value * (smaller / std::sqrt(resistivityRatioToCopper(metal))), kPvcRatingC};
}

}  // namespace

units::ResistancePerLength wireResistance(const WireSize& size, Metal metal, WireUse use, units::Temperature at) {
  const double ratio = resistanceRatio(metal, at);
  if (size.metricMm2()) {
    const auto iecClass = use == WireUse::Cord ? tables::IecClass::Flexible5 : tables::IecClass::Stranded2;
    return iecResistance(size, iecClass) * (resistivityRatioToCopper(metal) * ratio);
  }
  const auto solid = tables::conductorMetal(metal).resistivity20.value / size.area();
  return solid * (tables::strandingFactor().value * ratio);
}

units::ResistancePerLength cordResistance(const WireSize& size, units::Temperature at) {
  return wireResistance(size, Metal::Copper, WireUse::Cord, at);
}

double resistanceRatio(Metal metal, units::Temperature at) {
  return 1.0 + temperatureCoefficient(metal) * (at - kReferenceTemperature).si();
}

double temperatureCoefficient(Metal metal) { return tables::conductorMetal(metal).alpha20PerK.value; }

units::Temperature buildingWireTemperature(const WireSize& size, Metal metal, units::Current rms,
                                           units::Temperature ambient, std::optional<units::Temperature> insulation) {
  const auto rated = insulation.value_or(units::Temperature::fromCelsius(90.0));
  const Ampacity ampacity = size.awgNumber() ? gaugeAmpacity(size, metal, rated) : metricAmpacity(size, metal);
  const double load = rms / ampacity.current;
  return ambient + units::TemperatureRise::fromSi((ampacity.ratingC - kRatedAirC) * load * load);
}

}  // namespace cordreach::physics
