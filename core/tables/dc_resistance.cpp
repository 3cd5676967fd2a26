// SPDX-License-Identifier: GPL-3.0-or-later
// NEC chapter 9 resistances by size and construction.
#include "tables/dc_resistance.h"

#include <string>

#include "tables/size_key.h"
#include "tables/table.h"

namespace cordreach::tables {
namespace {

// ASTM B8 allows 2 % for the lay of class B strands; the printed table agrees (3.14/3.07, 1.98/1.93, 1.24/1.21).
const Source kStranding{"ASTM B8 class B lay allowance; NEC Ch. 9 Table 8 stranded over solid", SourceStatus::Computed};

std::optional<Sourced<units::ResistancePerLength>> perThousandFeet(const char* name, const std::string& id) {
  const Row* row = table(name).find(id);
  if (row == nullptr) return std::nullopt;
  return Sourced<units::ResistancePerLength>{row->number("ohm_per_kft_75c") * units::ohm / (1000.0 * units::foot),
                                             &row->source()};
}

}  // namespace

std::optional<Sourced<units::ResistancePerLength>> dcResistance75(const units::WireSize& size, Metal metal,
                                                                  Stranding stranding, Coating coating) {
  return perThousandFeet("dc_resistance", sizeKey(size) + "." + metalKey(metal) +
                                              (stranding == Stranding::Solid ? ".solid" : ".stranded") +
                                              (coating == Coating::Bare ? ".bare" : ".coated"));
}

Sourced<double> strandingFactor() { return {1.02, &kStranding}; }

std::optional<Sourced<units::ResistancePerLength>> acResistance75(const units::WireSize& size, Conduit conduit) {
  const char* word = conduit == Conduit::Pvc ? "pvc" : conduit == Conduit::Aluminium ? "aluminium" : "steel";
  return perThousandFeet("ac_impedance", sizeKey(size) + ".resistance." + word);
}

std::optional<Sourced<units::ResistancePerLength>> reactance60Hz(const units::WireSize& size, Conduit conduit) {
  return perThousandFeet("ac_impedance",
                         sizeKey(size) + ".reactance." + (conduit == Conduit::Steel ? "steel" : "nonmagnetic"));
}

Sourced<units::ResistancePerLength> cordReactance60Hz(const units::WireSize& size) {
  for (int number = units::WireSize::kHeaviestAwg; number < 14; ++number) {
    const auto printed = units::WireSize::awg(number);
    if (printed > size) continue;
    if (const auto found = reactance60Hz(printed, Conduit::Pvc)) return *found;
  }
  return *reactance60Hz(units::WireSize::awg(14), Conduit::Pvc);
}

}  // namespace cordreach::tables
