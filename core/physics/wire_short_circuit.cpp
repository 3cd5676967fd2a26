// SPDX-License-Identifier: GPL-3.0-or-later
// The adiabatic equation.
#include "physics/wire_short_circuit.h"

#include <cmath>

#include "base/contract.h"
#include "tables/table.h"

namespace cordreach::physics {

double adiabaticFactor(tables::Metal metal, units::Temperature first, units::Temperature last) {
  CORDREACH_EXPECTS(last > first);
  const char* capacityId = metal == tables::Metal::Copper ? "capacity.copper" : "capacity.aluminium";
  const double capacity = tables::table("heat_constants").at(capacityId).number("value");
  const tables::ConductorMetal& conductor = tables::conductorMetal(metal);
  const double b = -conductor.zeroResistance.value.celsius();
  const double growth = std::log((b + last.celsius()) / (b + first.celsius()));
  constexpr double kPerSquareMillimetre = 1e-6;
  return kPerSquareMillimetre * std::sqrt(capacity * (b + 20.0) / conductor.resistivity20.value.si() * growth);
}

units::Duration adiabaticTime(const units::WireSize& size, tables::Metal metal, units::Current fault,
                              units::Temperature first, units::Temperature last) {
  const double root =
      adiabaticFactor(metal, first, last) * size.area().in(units::squareMillimetre) / fault.in(units::ampere);
  return units::Duration::fromSi(root * root);
}

}  // namespace cordreach::physics
