// SPDX-License-Identifier: GPL-3.0-or-later
// Puts a cord's geometry, its laying and a corner together into a ladder.
#include "physics/cord_section.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>

#include "base/contract.h"
#include "physics/cord_build.h"
#include "physics/cord_geometry.h"
#include "physics/wire.h"
#include "tables/table.h"

namespace cordreach::physics {
namespace {

using tables::Laying;

double heatConstant(const char* id) { return tables::table("heat_constants").at(id).number("value"); }

const tables::Row& cornerRow(Corner corner) {
  const char* id = corner == Corner::Low ? "low" : corner == Corner::High ? "high" : "likely";
  return tables::table("heat_corners").at(id);
}

const tables::Row& layingRow(Laying laying) {
  switch (laying) {
    case Laying::Straight:
      return tables::table("heat_laying").at("straight");
    case Laying::Floor:
      return tables::table("heat_laying").at("floor");
    case Laying::Carpet:
      return tables::table("heat_laying").at("carpet");
    case Laying::Covered:
      return tables::table("heat_laying").at("covered");
    case Laying::Coiled:
      return tables::table("heat_laying").at("coiled");
    case Laying::Reel:
      break;
  }
  return tables::table("heat_laying").at("reel");
}

// One cord of the section: its resistance to the surface and its capacities, split by the ladder's shares.
struct OneCord {
  double coreToSurface;  // K m/W
  double capacity0;
  double capacity1;
  double capacity2;
  double ohmPerM20;

  [[nodiscard]] double capacity() const { return capacity0 + capacity1 + capacity2; }
};

OneCord oneCord(const CordGeometry& geometry, const CordSection& section, const tables::Row& corner, bool flat) {
  const double voids = flat ? 1.0 : corner.number("void_factor");
  const double resistivity = heatConstant("resistivity.pvc") * corner.number("resistivity_factor");
  const double insulation = geometry.liveInsulation.si();
  const double withCopper = heatConstant("ladder.insulation_with_copper");
  const double middle = heatConstant("ladder.insulation_middle");
  const double ohm20 = cordResistance(section.size, kReferenceTemperature).si() * corner.number("resistance_factor");
  return {geometry.coreToSurface * resistivity * voids, geometry.carryingCopper.si() + withCopper * insulation,
          middle * insulation, geometry.rest.si() + (1.0 - withCopper - middle) * insulation, section.carrying * ohm20};
}

CordLadder laidOut(const OneCord& cord) {
  CordLadder ladder;
  ladder.capacityJPerMK = {cord.capacity0, cord.capacity1, cord.capacity2};
  ladder.resistance01 = cord.coreToSurface * heatConstant("ladder.resistance_inner");
  ladder.resistance12 = cord.coreToSurface * heatConstant("ladder.resistance_middle");
  ladder.resistance2s = cord.coreToSurface * heatConstant("ladder.resistance_outer");
  ladder.ohmPerM20 = cord.ohmPerM20;
  return ladder;
}

// Node 0: copper of the inner turns; node 1: the rest of them; node 2: the outer turns. With T falling as 1 - x over
// the share x of the cross-section, the centre is R_h (1+w)/2 above the outer ring's mean, that R_h (1-w)/2 above the
// surface, R_h = 1/(4 pi k).
CordLadder hank(const OneCord& cord, double turns) {
  const double inner = heatConstant("hank.inner_share");
  const double across = 1.0 / (4.0 * std::numbers::pi * heatConstant("hank.conductivity"));
  CordLadder ladder;
  ladder.capacityJPerMK = {inner * turns * (cord.capacity0 + cord.capacity1), inner * turns * cord.capacity2,
                           (1.0 - inner) * turns * cord.capacity()};
  ladder.sourceShare = inner;
  ladder.resistance01 = cord.coreToSurface / (inner * turns);
  ladder.resistance12 = across * (1.0 + inner) / (2.0 * inner);
  ladder.resistance2s = across * (1.0 - inner) / 2.0;
  ladder.ohmPerM20 = turns * cord.ohmPerM20;
  return ladder;
}

double hankTurns(const CordSection& section) {
  if (section.laying == Laying::Reel) {
    const double layers = std::max(section.turns, 1.0);
    return layers * (layers + heatConstant("reel.width_over_depth"));
  }
  return std::max(section.turns, 1.0);
}

CordSurface surfaceOf(const CordSection& section, Corner corner, units::Length diameter) {
  const tables::Row& row = cornerRow(corner);
  const tables::Row& laying = layingRow(section.laying);
  CordSurface surface;
  surface.emissivity = row.number("emissivity");
  surface.scale = section.lossScale;
  surface.diameter = diameter;
  surface.law = row.text("convection") == "morgan" ? ConvectionLaw::Morgan : ConvectionLaw::ChurchillChu;
  surface.convectionFactor = row.number("convection_factor");
  if (section.laying == Laying::Covered) {
    const char* column = corner == Corner::Low    ? "resistance_low"
                         : corner == Corner::High ? "resistance_high"
                                                  : "resistance_likely";
    surface.throughCover = laying.number(column) * units::kelvinMetrePerWatt;
  } else if (section.laying == Laying::Coiled || section.laying == Laying::Reel) {
    const double exposure = heatConstant("hank.exposure");
    surface.diameter = diameter * std::sqrt(hankTurns(section) / heatConstant("hank.packing"));
    surface.law = ConvectionLaw::ChurchillChu;
    surface.convectionFactor *= exposure;
    surface.radiationFactor = exposure;
  } else {
    surface.convectionFactor *= laying.number("convection_factor");
    surface.radiationFactor = laying.number("radiation_factor");
  }
  return surface;
}

}  // namespace

CordLadder ladderOf(const CordSection& section, Corner corner) {
  CORDREACH_EXPECTS(section.lossScale >= heatConstant("scale.low") && section.lossScale <= heatConstant("scale.high"));
  const CordBuild build = buildOf(section.size, section.conductors, section.family, section.carrying);
  const CordGeometry geometry = geometryOf(build);
  const OneCord cord = oneCord(geometry, section, cornerRow(corner), build.flat);
  const bool wound = section.laying == Laying::Coiled || section.laying == Laying::Reel;
  CordLadder ladder = wound ? hank(cord, hankTurns(section)) : laidOut(cord);
  ladder.alphaPerK = temperatureCoefficient(tables::Metal::Copper);
  ladder.surface = surfaceOf(section, corner, geometry.outerDiameter);
  return ladder;
}

double layingRiseFactor(Laying laying, Corner corner) {
  if (corner == Corner::Likely) return 1.0;
  return layingRow(laying).number(corner == Corner::Low ? "rise_factor_low" : "rise_factor_high");
}

}  // namespace cordreach::physics
