// SPDX-License-Identifier: GPL-3.0-or-later
// What the letters on a cord's jacket mean: UL 62 and NEC Table 400.4 types, and the harmonised European ones.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "tables/source.h"
#include "units/quantity.h"
#include "units/temperature.h"
#include "units/wire_size.h"

namespace cordreach::tables {

// Types of one family are built alike: see cord_construction.h.
enum class CordFamily {
  Hard,         // SJ and kin
  ExtraHard,    // S and kin
  Vacuum,       // SV and kin
  Parallel1,    // SP-1, SPT-1: flat, the thinnest insulation
  Parallel2,    // SP-2, SPT-2
  Parallel3,    // SP-3, SPT-3
  MetricLight,  // H05VV-F and kin
  MetricHeavy,  // H07RN-F
};
enum class CordUsage { Light, Hard, ExtraHard };
enum class CordMaterial { Rubber, Elastomer, Thermoplastic };  // elastomer: thermoplastic elastomer, letter E

struct CordType {
  std::string letters;  // as printed, capitals: "SJTW"
  CordFamily family;
  CordUsage usage;
  CordMaterial material;
  units::Temperature rating;                        // where nothing is printed: 60 °C for nearly all
  std::vector<units::Temperature> optionalRatings;  // that may be printed instead
  units::Voltage voltage;
  units::WireSize lightest;
  units::WireSize heaviest;
  bool outdoor;  // letter W
  bool heater;   // has the heater column of the cord ampacity table
  const Source* from;

  [[nodiscard]] const Source& source() const { return *from; }
  [[nodiscard]] bool allows(const units::WireSize& size) const { return size >= lightest && size <= heaviest; }
};

[[nodiscard]] std::span<const CordType> cordTypes();

// The type of those letters, in any case; null when there is none.
[[nodiscard]] const CordType* cordType(std::string_view letters);

// Row-id word of a family: `hard`, `parallel_1`.
[[nodiscard]] const char* familyKey(CordFamily family);

}  // namespace cordreach::tables
