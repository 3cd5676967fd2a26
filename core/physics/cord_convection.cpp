// SPDX-License-Identifier: GPL-3.0-or-later
// The correlations, their constants read once from the tables.
#include "physics/cord_convection.h"

#include <cmath>
#include <vector>

#include "tables/table.h"

namespace cordreach::physics {
namespace {

constexpr double kGravity = 9.80665;                 // exact by convention, CGPM 1901
constexpr double kStefanBoltzmann = 5.670374419e-8;  // exact since the SI of 2019

struct MorganBand {
  double rayleighHigh;
  double coefficient;
  double exponent;
};

const std::vector<MorganBand>& morganBands() {
  static const std::vector<MorganBand> bands = [] {
    std::vector<MorganBand> read;
    for (const tables::Row& row : tables::table("heat_convection").rows()) {
      read.push_back({row.number("ra_high"), row.number("coefficient"), row.number("exponent")});
    }
    return read;
  }();
  return bands;
}

struct ChurchillChuConstants {
  double first;
  double slope;
  double prandtl;
  double laminarFirst;
  double laminarSlope;
};

const ChurchillChuConstants& churchillChu() {
  static const ChurchillChuConstants constants = [] {
    const tables::Table& table = tables::table("heat_constants");
    const auto value = [&](const char* id) { return table.at(id).number("value"); };
    return ChurchillChuConstants{value("churchill_chu.a"), value("churchill_chu.b"), value("churchill_chu.c"),
                                 value("churchill_chu_laminar.a"), value("churchill_chu_laminar.b")};
  }();
  return constants;
}

double prandtlTerm(double prandtl) { return 1.0 + std::pow(churchillChu().prandtl / prandtl, 9.0 / 16.0); }

double rayleighIn(const AirProperties& air, double diameterM, double riseK, double filmK) {
  return kGravity / filmK * std::abs(riseK) * diameterM * diameterM * diameterM /
         (air.viscosityM2PerS * air.diffusivityM2PerS);
}

units::Temperature film(units::Temperature surface, units::Temperature air) { return air + (surface - air) / 2.0; }

}  // namespace

double rayleigh(units::Length diameter, units::Temperature surface, units::Temperature air) {
  const units::Temperature middle = film(surface, air);
  return rayleighIn(airAt(middle), diameter.si(), (surface - air).si(), middle.kelvin());
}

double nusseltMorgan(double rayleigh) {
  for (const MorganBand& band : morganBands()) {
    if (rayleigh <= band.rayleighHigh) return band.coefficient * std::pow(rayleigh, band.exponent);
  }
  const MorganBand& last = morganBands().back();
  return last.coefficient * std::pow(rayleigh, last.exponent);
}

double nusseltChurchillChu(double rayleigh, double prandtl) {
  const auto& c = churchillChu();
  const double root = c.first + c.slope * std::pow(rayleigh, 1.0 / 6.0) / std::pow(prandtlTerm(prandtl), 8.0 / 27.0);
  return root * root;
}

double nusseltChurchillChuLaminar(double rayleigh, double prandtl) {
  const auto& c = churchillChu();
  return c.laminarFirst + c.laminarSlope * std::pow(rayleigh, 0.25) / std::pow(prandtlTerm(prandtl), 4.0 / 9.0);
}

double convectionWPerM2K(ConvectionLaw law, units::Length diameter, units::Temperature surface,
                         units::Temperature air) {
  const units::Temperature middle = film(surface, air);
  const AirProperties properties = airAt(middle);
  const double ra = rayleighIn(properties, diameter.si(), (surface - air).si(), middle.kelvin());
  const double nusselt =
      law == ConvectionLaw::Morgan ? nusseltMorgan(ra) : nusseltChurchillChu(ra, properties.prandtl());
  return nusselt * properties.conductivityWPerMK / diameter.si();
}

double radiationWPerM2K(double emissivity, units::Temperature surface, units::Temperature air) {
  const double s = surface.kelvin();
  const double a = air.kelvin();
  return emissivity * kStefanBoltzmann * (s * s + a * a) * (s + a);
}

}  // namespace cordreach::physics
