// SPDX-License-Identifier: GPL-3.0-or-later
// Metric conductors: IEC 60228 greatest resistances at 20 °C and IEC 60364-5-52 current-carrying capacities.
// A gauge, or a size without a row, has no value.
#pragma once

#include <optional>

#include "tables/sourced.h"
#include "units/quantity.h"
#include "units/wire_size.h"

namespace cordreach::tables {

enum class IecClass { Stranded2, Flexible5 };
enum class IecLoaded { Two, Three };                   // current-carrying conductors
enum class IecMethod { B2InConduit, CClippedDirect };  // reference methods of installation

// 0.5 to 16 mm².
[[nodiscard]] std::optional<Sourced<units::ResistancePerLength>> iecResistance20(const units::WireSize& size,
                                                                                 IecClass conductorClass,
                                                                                 bool tinned = false);

// PVC 70 °C copper in air of 30 °C, 1.5 to 16 mm².
[[nodiscard]] std::optional<Sourced<units::Current>> iecAmpacity(const units::WireSize& size, IecLoaded loaded,
                                                                 IecMethod method);

// Flexible cord in free air, single-phase, 0.5 to 4 mm². Two series are in use and disagree above 1.25 mm²: the lower.
[[nodiscard]] std::optional<Sourced<units::Current>> iecCordAmpacity(const units::WireSize& size);

struct IecCordSeries {
  std::optional<Sourced<units::Current>> fixedInstallation;  // BS 7671 Table 4F3A
  std::optional<Sourced<units::Current>> appliance;          // general-purpose appliance cords
};
[[nodiscard]] IecCordSeries iecCordSeries(const units::WireSize& size);

}  // namespace cordreach::tables
