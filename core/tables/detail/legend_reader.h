// SPDX-License-Identifier: GPL-3.0-or-later
// Reading a plain legend piece by piece. Each piece is tried as one thing after another; what fits none is unread.
#pragma once

#include <string_view>

#include "tables/cord_legend.h"
#include "tables/detail/legend_cursor.h"

namespace cordreach::tables::detail {

class LegendReader {
 public:
  explicit LegendReader(std::string_view plain) : m_cursor(plain) {}
  [[nodiscard]] CordLegend read();

 private:
  bool tryType();
  bool tryVoltage();         // 300V, 300/500 V
  bool tryCores();           // 3G1.5, 3X2.5MM2, 3X14AWG
  bool tryGauge();           // 14AWG, #14, AWG 14, 18AWGX2C, 1/0 AWG
  bool tryGaugeAndCount();   // 14/3, 14-3, 14/3C
  bool tryMetric();          // 2.5MM2
  bool tryTemperature();     // 60C, -40C, 140F
  bool tryConductorCount();  // 3/C, 3C, 3 CONDUCTORS

  void sizeIs(const units::WireSize& size);
  void conductorsAre(int count);
  void typesAre(const std::vector<const CordType*>& types);
  void unread(std::string_view piece);
  bool accept(const LegendCursor& after);

  LegendCursor m_cursor;
  CordLegend m_legend;
  bool m_sizeDisputed = false;
  bool m_conductorsDisputed = false;
  bool m_typeDisputed = false;
};

}  // namespace cordreach::tables::detail
