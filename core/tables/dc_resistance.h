// SPDX-License-Identifier: GPL-3.0-or-later
// Printed conductor resistances and reactances of the NEC, chapter 9 tables 8 and 9, at 75 °C. Tables to check a
// computed resistance against, and the reactance that nothing computes. Nothing is extrapolated: no row, no value.
#pragma once

#include <optional>

#include "tables/conductor_metal.h"
#include "tables/sourced.h"
#include "units/quantity.h"
#include "units/wire_size.h"

namespace cordreach::tables {

enum class Stranding { Solid, Stranded };
enum class Coating { Bare, Coated };
enum class Conduit { Pvc, Aluminium, Steel };

// Table 8, 18 AWG to 4/0, direct current. Stranded is class B (7 or 19 strands).
[[nodiscard]] std::optional<Sourced<units::ResistancePerLength>> dcResistance75(const units::WireSize& size,
                                                                                Metal metal, Stranding stranding,
                                                                                Coating coating = Coating::Bare);

// Resistance of a class B stranded wire against the solid one of the same area: its strands run longer. 1.02.
[[nodiscard]] Sourced<double> strandingFactor();

// Table 9, 14 AWG to 4/0, copper, 60 Hz, ohm to neutral for three single conductors in that conduit.
[[nodiscard]] std::optional<Sourced<units::ResistancePerLength>> acResistance75(const units::WireSize& size,
                                                                                Conduit conduit);
[[nodiscard]] std::optional<Sourced<units::ResistancePerLength>> reactance60Hz(const units::WireSize& size,
                                                                               Conduit conduit);

// What stands in for the reactance per conductor of a flexible cord at 60 Hz, which no table prints: Table 9 outside
// steel, by the heaviest printed size not above `size`; lighter than 14 AWG, 14 AWG's, where it is under 2 % of R.
[[nodiscard]] Sourced<units::ResistancePerLength> cordReactance60Hz(const units::WireSize& size);

}  // namespace cordreach::tables
