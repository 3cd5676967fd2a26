// SPDX-License-Identifier: GPL-3.0-or-later
// Direct-current resistance of a wire over its temperature, and how warm a wall's wire gets.
//   gauge sizes:  R20 = f rho20 / A, f = 1.02 for the longer way of stranded wires (NEC Chapter 9 Table 8, class B)
//   metric sizes: the greatest R20 of IEC 60228, class 2 in walls, class 5 in cords; unlisted sizes by area from the
//                 next smaller listed one
//   R(T) = R20 [1 + alpha20 (T - 20 C)], copper and aluminium by IEC 60028 and 60889; -50 to 300 C within 1 %
//   wall wire: T = T_a + (T_r - 30 C)(I/I_z)^2, I_z the table ampacity of the T_r column at 30 C; pure and steady
#pragma once

#include <optional>

#include "tables/conductor_metal.h"
#include "units/quantity.h"
#include "units/temperature.h"
#include "units/wire_size.h"

namespace cordreach::physics {

// 20 °C, to which the resistances and coefficients of all tables here are referred.
inline constexpr units::Temperature kReferenceTemperature = units::Temperature::fromCelsius(20.0);

enum class WireUse { Building, Cord };

// One conductor, one way.
[[nodiscard]] units::ResistancePerLength wireResistance(const units::WireSize& size, tables::Metal metal, WireUse use,
                                                        units::Temperature at);
// Of a flexible cord's copper.
[[nodiscard]] units::ResistancePerLength cordResistance(const units::WireSize& size, units::Temperature at);

// R(T)/R(20 °C).
[[nodiscard]] double resistanceRatio(tables::Metal metal, units::Temperature at);
// Per kelvin, referred to 20 °C.
[[nodiscard]] double temperatureCoefficient(tables::Metal metal);

// Of a wire in the wall with air of `ambient` round it. Its insulation rating (60, 75, 90 °C; others by the next lower
// of these) chooses the ampacity column, by default 90 °C. Sizes without a row take the ampacity of the largest listed
// size below them, the smallest listed size's scaled by area if there is none: the warm side.
[[nodiscard]] units::Temperature buildingWireTemperature(const units::WireSize& size, tables::Metal metal,
                                                         units::Current rms, units::Temperature ambient,
                                                         std::optional<units::Temperature> insulation = std::nullopt);

}  // namespace cordreach::physics
