// SPDX-License-Identifier: GPL-3.0-or-later
// Looks a construction up and adds what follows from it.
#include "physics/cord_build.h"

#include <algorithm>
#include <numbers>

#include "base/contract.h"
#include "tables/cord_construction.h"

namespace cordreach::physics {
namespace {

using tables::CordFamily;
using units::Area;
using units::Length;

bool isFlat(CordFamily family) {
  return family == CordFamily::Parallel1 || family == CordFamily::Parallel2 || family == CordFamily::Parallel3;
}

// Round: the circle. Flat: cores side by side, the gaps between them filled.
Area crossSection(const CordBuild& build) {
  const Length core = build.strandDiameter + 2.0 * build.insulation;
  if (build.flat) return core * core * (std::numbers::pi / 4.0 + (build.conductors - 1));
  return build.outerDiameter * build.outerDiameter * (std::numbers::pi / 4.0);
}

}  // namespace

CordBuild buildOf(const units::WireSize& size, int conductors, CordFamily family, int carrying) {
  auto found = tables::nearestCordConstruction(family, size, conductors);
  if (!found) {
    found =
        tables::nearestCordConstruction(CordFamily::MetricLight, units::WireSize::squareMillimetres(0.75), conductors);
  }
  CORDREACH_EXPECTS(found.has_value());
  CordBuild build;
  build.copperArea = std::min(size.area(), found->size.area());
  build.strandDiameter = found->strandBundle.value;
  build.insulation = found->insulation.value;
  build.outerDiameter = found->outerDiameter.value;
  build.conductors = found->conductors;
  build.carrying = carrying;
  build.flat = isFlat(found->family);
  build.crossSection = crossSection(build);
  return build;
}

}  // namespace cordreach::physics
