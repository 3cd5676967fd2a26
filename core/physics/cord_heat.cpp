// SPDX-License-Identifier: GPL-3.0-or-later
// Steady temperatures with their band.
#include "physics/cord_heat.h"

#include <algorithm>

#include "base/contract.h"
#include "tables/table.h"

namespace cordreach::physics {
namespace {

std::optional<HeatResult> joined(const CordSection& section, std::optional<HeatResult> ofCorner,
                                 std::optional<HeatResult> likely, units::Temperature ambient, Corner corner) {
  if (corner == Corner::Likely) return likely;
  if (corner == Corner::Low && !likely) return ofCorner;
  if (!ofCorner || !likely) return std::nullopt;
  const HeatResult wider = widerOf(*ofCorner, *likely, ambient, section.laying, corner);
  if (wider.conductor > beyondModelTemperature()) return std::nullopt;
  return wider;
}

}  // namespace

HeatResult widerOf(const HeatResult& ofCorner, const HeatResult& likely, units::Temperature ambient,
                   tables::Laying laying, Corner corner) {
  const double factor = layingRiseFactor(laying, corner);
  const auto spread = [&](units::Temperature at) { return ambient + (at - ambient) * factor; };
  if (corner == Corner::Low) {
    return {std::min(ofCorner.conductor, spread(likely.conductor)), std::min(ofCorner.surface, spread(likely.surface))};
  }
  return {std::max(ofCorner.conductor, spread(likely.conductor)), std::max(ofCorner.surface, spread(likely.surface))};
}

std::optional<HeatResult> steady(const CordSection& section, units::Current rms, units::Temperature ambient,
                                 Corner corner) {
  const auto likely = steadyOf(ladderOf(section, Corner::Likely), rms, ambient);
  if (corner == Corner::Likely) return likely;
  return joined(section, steadyOf(ladderOf(section, corner), rms, ambient), likely, ambient, corner);
}

HeatBand steadyBand(const CordSection& section, units::Current rms, units::Temperature ambient) {
  const auto likely = steadyOf(ladderOf(section, Corner::Likely), rms, ambient);
  const auto low = steadyOf(ladderOf(section, Corner::Low), rms, ambient);
  const auto high = steadyOf(ladderOf(section, Corner::High), rms, ambient);
  return {joined(section, low, likely, ambient, Corner::Low), likely,
          joined(section, high, likely, ambient, Corner::High)};
}

units::Current currentForLimit(const CordSection& section, units::Temperature limit, units::Temperature ambient,
                               Corner corner) {
  CORDREACH_EXPECTS(limit > ambient);
  units::Current low = 0.0 * units::ampere;
  units::Current high = 1.0 * units::ampere;
  const auto reaches = [&](units::Current rms) {
    const auto result = steady(section, rms, ambient, corner);
    return !result || result->conductor >= limit;
  };
  while (!reaches(high)) high = high * 2.0;
  while ((high - low).si() > 1e-6) {
    const units::Current middle = (low + high) / 2.0;
    (reaches(middle) ? high : low) = middle;
  }
  return low;
}

double leastLossScale() { return tables::table("heat_constants").at("scale.low").number("value"); }
double mostLossScale() { return tables::table("heat_constants").at("scale.high").number("value"); }

double lossScaleFrom(CordSection section, units::Current rms, units::Temperature ambient,
                     units::Temperature measuredSurface) {
  double low = leastLossScale();
  double high = mostLossScale();
  const auto hotterThanMeasured = [&](double scale) {
    section.lossScale = scale;
    const auto result = steady(section, rms, ambient);
    return !result || result->surface > measuredSurface;
  };
  if (!hotterThanMeasured(low)) return low;
  if (hotterThanMeasured(high)) return high;
  while (high - low > 1e-6) {
    const double middle = (low + high) / 2.0;
    (hotterThanMeasured(middle) ? low : high) = middle;
  }
  return high;
}

}  // namespace cordreach::physics
