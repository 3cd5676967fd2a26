// SPDX-License-Identifier: GPL-3.0-or-later
// A stretch of cord that lies one way, and the thermal ladder that stands for it. Axial conduction reaches 6 to 9 cm,
// so sections heat each on its own.
// Layings: straight (free air) and floor, carpet: jacket to air with parts of its surface shaded; covered: a fixed
// 6.5 K m/W (4.5 to 9) through a rug; coiled: a hank of N turns, of diameter D sqrt(N/0.75), as a uniformly heated
// cylinder of 0.20 W/(m K) in two rings, T_centre - T_s = N q'/(4 pi k); reel of L layers: a hank of L (L + 1/2) turns.
// Corners: the favourable and adverse ends of convection, emissivity, resistivity, voids and copper taken together.
#pragma once

#include "physics/cord_ladder.h"
#include "tables/cord_types.h"
#include "tables/laying.h"
#include "units/quantity.h"
#include "units/wire_size.h"

namespace cordreach::physics {

enum class Corner { Low, Likely, High };

struct CordSection {
  units::WireSize size;
  int conductors = 3;  // with the earth
  tables::CordFamily family = tables::CordFamily::Hard;
  tables::Laying laying = tables::Laying::Floor;
  double turns = 0.0;      // of a coil, 1 or more; layers of a reel
  int carrying = 2;        // conductors that carry the current: 2, or 3 of a three-phase cord
  double lossScale = 1.0;  // of the heat given off, from a measured jacket temperature: 0.6 to 1.5
};

// The corner's parameters alone, without the laying's own spread.
[[nodiscard]] CordLadder ladderOf(const CordSection& section, Corner corner);

// How much the laying's own error widens the likely rise: a factor below 1 for Low, above 1 for High, 1 for Likely.
[[nodiscard]] double layingRiseFactor(tables::Laying laying, Corner corner);

}  // namespace cordreach::physics
