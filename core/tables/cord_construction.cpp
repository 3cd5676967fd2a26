// SPDX-License-Identifier: GPL-3.0-or-later
// Cord dimensions out of their table.
#include "tables/cord_construction.h"

#include <array>
#include <string>

#include "tables/size_key.h"
#include "tables/table.h"

namespace cordreach::tables {
namespace {

std::optional<Sourced<double>> valueAt(const std::string& id) {
  const Row* row = table("cord_construction").find(id);
  if (row == nullptr) return std::nullopt;
  return Sourced<double>{row->number("value"), &row->source()};
}

std::optional<CordConstruction> heaviestNotAbove(CordFamily family, const units::WireSize& size, int conductors) {
  using units::WireSize;
  static const std::array kSizes{WireSize::awg(10),
                                 WireSize::awg(12),
                                 WireSize::squareMillimetres(2.5),
                                 WireSize::awg(14),
                                 WireSize::squareMillimetres(1.5),
                                 WireSize::awg(16),
                                 WireSize::awg(17),
                                 WireSize::squareMillimetres(1.0),
                                 WireSize::awg(18),
                                 WireSize::squareMillimetres(0.75)};
  for (const auto& tabulated : kSizes) {
    if (tabulated > size) continue;
    if (auto found = cordConstruction(family, tabulated, conductors)) return found;
  }
  return std::nullopt;
}

}  // namespace

std::optional<CordConstruction> cordConstruction(CordFamily family, const units::WireSize& size, int conductors) {
  const std::string wire = sizeKey(size);
  const std::string cord = std::string(familyKey(family)) + "." + wire;
  const auto bundle = valueAt(wire + ".bundle_mm");
  const auto insulation = valueAt(cord + ".insulation_mm");
  const auto jacket = valueAt(cord + ".jacket_mm");
  const auto diameter = valueAt(cord + ".diameter_" + std::to_string(conductors) + "_mm");
  const auto resistance = valueAt(wire + ".resistance_20c_ohm_per_km");
  if (!bundle || !insulation || !jacket || !diameter || !resistance) return std::nullopt;
  const auto length = [](const Sourced<double>& mm) {
    return Sourced<units::Length>{mm.value * units::millimetre, mm.from};
  };
  return CordConstruction{.family = family,
                          .size = size,
                          .conductors = conductors,
                          .strandBundle = length(*bundle),
                          .insulation = length(*insulation),
                          .jacket = length(*jacket),
                          .outerDiameter = length(*diameter),
                          .resistance20 = {resistance->value * units::ohmPerKilometre, resistance->from}};
}

std::optional<CordConstruction> nearestCordConstruction(CordFamily family, const units::WireSize& size,
                                                        int conductors) {
  const int counted = conductors == 2 ? 2 : 3;
  if (auto found = heaviestNotAbove(family, size, counted)) return found;
  return heaviestNotAbove(CordFamily::Hard, size, counted);
}

}  // namespace cordreach::tables
