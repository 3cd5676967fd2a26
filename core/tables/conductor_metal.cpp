// SPDX-License-Identifier: GPL-3.0-or-later
// Conductor metals out of their table.
#include "tables/conductor_metal.h"

#include <string>

#include "tables/table.h"

namespace cordreach::tables {
namespace {

ConductorMetal read(Metal metal) {
  const auto row = [&](const char* what) -> const Row& {
    return table("conductor_metals").at(std::string(metalKey(metal)) + "." + what);
  };
  const auto number = [&](const char* what) { return Sourced<double>{row(what).number("value"), &row(what).source()}; };
  const auto rho = number("rho20");
  const auto zero = number("zero_resistance");
  return {{rho.value * units::ohm * units::squareMillimetre / units::metre, rho.from},
          number("alpha20"),
          {units::Temperature::fromCelsius(zero.value), zero.from},
          number("alpha75")};
}

}  // namespace

const char* metalKey(Metal metal) { return metal == Metal::Copper ? "copper" : "aluminium"; }

const ConductorMetal& conductorMetal(Metal metal) {
  static const ConductorMetal copper = read(Metal::Copper);
  static const ConductorMetal aluminium = read(Metal::Aluminium);
  return metal == Metal::Copper ? copper : aluminium;
}

}  // namespace cordreach::tables
