// SPDX-License-Identifier: GPL-3.0-or-later
// Closed forms of the cross-section.
#include "physics/cord_geometry.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "base/contract.h"
#include "tables/table.h"

namespace cordreach::physics {
namespace {

using std::numbers::pi;

double capacityOf(const char* id) { return tables::table("heat_constants").at(id).number("value"); }

// S of the header; lengths in metres.
double shape(const CordBuild& build, double bodyRadius, double coreRadius) {
  const bool trefoil = build.conductors >= 3;
  const double angle = trefoil ? 2.0 * pi / 3.0 : pi;
  const double centre = coreRadius / std::sin(angle / 2.0);  // touching cores
  const double apart = 2.0 * coreRadius;
  const double copperRadius = build.strandDiameter.si() / 2.0;
  const double R2 = bodyRadius * bodyRadius;
  const double b2 = centre * centre;
  const double own = std::log((R2 - b2) / (bodyRadius * copperRadius));
  const double image = std::sqrt(R2 * R2 + b2 * b2 - 2.0 * R2 * b2 * std::cos(angle));
  const double neighbour = std::log(image / (bodyRadius * apart));
  return (own + (build.carrying - 1) * neighbour) / (2.0 * pi * build.carrying);
}

// The gaps between touching cores inside a round cord's jacket, in square metres.
double gapsBetweenCores(const CordBuild& build, double coreRadius) {
  if (build.flat) return 0.0;
  const double centre = build.conductors >= 3 ? 2.0 * coreRadius / std::sqrt(3.0) : coreRadius;
  const double round = centre + coreRadius;
  return pi * (round * round - build.conductors * coreRadius * coreRadius);
}

}  // namespace

CordGeometry geometryOf(const CordBuild& build) {
  CORDREACH_EXPECTS(build.carrying >= 2 && build.carrying <= 3 && build.carrying <= build.conductors);
  const double coreRadius = build.strandDiameter.si() / 2.0 + build.insulation.si();
  const double bodyRadius = build.outerDiameter.si() / 2.0;
  CORDREACH_EXPECTS(build.strandDiameter.si() > 0.0 && build.insulation.si() > 0.0);
  CORDREACH_EXPECTS(bodyRadius > coreRadius);
  const double strandArea = pi * build.strandDiameter.si() * build.strandDiameter.si() / 4.0;
  const double insulationArea = build.carrying * (pi * coreRadius * coreRadius - strandArea);
  const double passiveCopper = (build.conductors - build.carrying) * build.copperArea.si();
  const double air = (1.0 - capacityOf("filler.share")) * gapsBetweenCores(build, coreRadius);
  const double restArea = build.crossSection.si() - insulationArea - build.conductors * strandArea - air;
  const double copper = capacityOf("capacity.copper");
  const double plastic = capacityOf("capacity.pvc");
  using Capacity = units::HeatCapacityPerLength;
  return {build.outerDiameter, shape(build, bodyRadius, coreRadius),
          Capacity::fromSi(build.carrying * build.copperArea.si() * copper), Capacity::fromSi(insulationArea * plastic),
          Capacity::fromSi(passiveCopper * copper + std::max(restArea, 0.0) * plastic)};
}

}  // namespace cordreach::physics
