// SPDX-License-Identifier: GPL-3.0-or-later
// Building wire currents out of their tables.
#include "tables/wire_ampacity.h"

#include <string>

#include "tables/size_key.h"
#include "tables/table.h"

namespace cordreach::tables {
namespace {

std::optional<Sourced<units::Current>> amperes(const char* name, const std::string& id, const char* column) {
  const Row* row = table(name).find(id);
  if (row == nullptr) return std::nullopt;
  return Sourced<units::Current>{row->number(column) * units::ampere, &row->source()};
}

std::string rowId(const units::WireSize& size, Metal metal, WireColumn column) {
  const char* word = column == WireColumn::C60 ? ".60" : column == WireColumn::C75 ? ".75" : ".90";
  return sizeKey(size) + "." + metalKey(metal) + word;
}

}  // namespace

std::optional<Sourced<units::Current>> wireAmpacity(const units::WireSize& size, WireColumn column, Metal metal) {
  return amperes("wire_ampacity", rowId(size, metal, column), "ampacity_a");
}

std::optional<Sourced<units::Current>> wireAmpacityBefore2011(const units::WireSize& size, WireColumn column) {
  return amperes("wire_ampacity", rowId(size, Metal::Copper, column) + ".before2011", "ampacity_a");
}

std::optional<Sourced<units::Current>> largestDevice(const units::WireSize& size, Metal metal) {
  return amperes("wire_protection", sizeKey(size) + "." + metalKey(metal), "maximum_a");
}

}  // namespace cordreach::tables
