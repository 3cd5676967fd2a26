// SPDX-License-Identifier: GPL-3.0-or-later
// From raw bytes to a legend.
#include "tables/cord_legend.h"

#include "tables/detail/legend_reader.h"
#include "tables/detail/legend_text.h"

namespace cordreach::tables {

CordLegend readLegend(std::string_view text) {
  constexpr std::size_t kMostBytes = 2000;
  const std::string plain = detail::plainLegend(text.substr(0, kMostBytes));
  return detail::LegendReader(plain).read();
}

}  // namespace cordreach::tables
