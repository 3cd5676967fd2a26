// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes as a jacket legend: it must come back, stay small, and name only types that exist.
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

#include "tables/cord_legend.h"

namespace tables = cordreach::tables;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const auto legend = tables::readLegend({reinterpret_cast<const char*>(data), size});
  bool sound = legend.unread.size() <= 40;
  for (const auto& type : legend.possibleTypes) sound = sound && tables::cordType(type) != nullptr;
  if (legend.type) sound = sound && legend.possibleTypes.size() == 1 && legend.family.has_value();
  if (legend.conductors) sound = sound && *legend.conductors >= 2 && *legend.conductors <= 9;
  if (legend.rating) sound = sound && legend.rating->celsius() > 0.0 && legend.rating->celsius() < 251.0;
  if (legend.voltage) sound = sound && legend.voltage->si() >= 50.0 && legend.voltage->si() <= 1000.0;
  for (const auto& piece : legend.unread) {
    for (const char c : piece) sound = sound && c >= 0x20 && c < 0x7F;
  }
  if (!sound) std::abort();
  return 0;
}
