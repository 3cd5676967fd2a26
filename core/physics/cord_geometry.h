// SPDX-License-Identifier: GPL-3.0-or-later
// What a cord's cross-section means for heat: resistance from its carrying cores to its surface, and heat capacities.
// Round cords: m carrying cores as line sources at radius b in a body of radius R with an isothermal surface, r_c the
// copper's radius, phi the angle and d = 2 b sin(phi/2) the distance between cores:
//   S = 1/(2 pi m) [ ln((R^2-b^2)/(R r_c)) + (m-1) ln( sqrt(R^4+b^4-2R^2 b^2 cos phi)/(R d) ) ],   R_cs = rho_T S
// Derived by images; 5 to 12 % above a two-dimensional solution of solid fill, the safe side. Flat cords: the circle of
// the same perimeter. Capacities by volume, IEC 60853-2 and 60949, the gaps between cores partly air.
#pragma once

#include "units/quantity.h"

namespace cordreach::physics {

struct CordBuild {
  units::Area copperArea;        // of one conductor
  units::Length strandDiameter;  // over the stranded copper
  units::Length insulation;      // its thickness
  units::Length outerDiameter;   // of a flat cord: of the circle with its perimeter
  units::Area crossSection;      // of the whole cord
  int conductors = 3;            // with the earth
  int carrying = 2;              // of these, 2 or 3
  bool flat = false;
};

struct CordGeometry {
  units::Length outerDiameter;
  double coreToSurface = 0.0;  // S: times the thermal resistivity, K m/W of the whole cord's heat
  units::HeatCapacityPerLength carryingCopper;
  units::HeatCapacityPerLength liveInsulation;
  units::HeatCapacityPerLength rest;  // earth conductor with its insulation, filler, jacket
};

// The build's numbers are positive and its cores fit into its body.
[[nodiscard]] CordGeometry geometryOf(const CordBuild& build);

}  // namespace cordreach::physics
