// SPDX-License-Identifier: GPL-3.0-or-later
// Wire sizes as parts of row ids.
#include "tables/size_key.h"

#include "units/plain.h"

namespace cordreach::tables {

std::string sizeKey(const units::WireSize& size) {
  if (const auto mm2 = size.metricMm2()) return units::plain(*mm2) + "mm2";
  const int number = *size.awgNumber();
  return number > 0 ? std::to_string(number) : std::to_string(1 - number) + "/0";
}

}  // namespace cordreach::tables
