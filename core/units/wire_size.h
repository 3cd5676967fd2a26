// SPDX-License-Identifier: GPL-3.0-or-later
// How thick a wire is, by the system it was sold in: an American wire gauge or a metric cross-section.
// AWG diameter: d = 0.127 mm * 92^((36-n)/39), ASTM B258, exact by definition; 1/0 to 4/0 are n = 0 to -3.
// Ordered by copper area, so a lower gauge is the larger size.
#pragma once

#include <compare>
#include <optional>
#include <string>
#include <string_view>

#include "base/result.h"
#include "units/quantity.h"

namespace cordreach::units {

class WireSize {
 public:
  static constexpr int kHeaviestAwg = -3;  // 4/0
  static constexpr int kLightestAwg = 40;

  // Outside kHeaviestAwg to kLightestAwg, or an area not above zero, is our own bug.
  [[nodiscard]] static WireSize awg(int number);
  [[nodiscard]] static WireSize squareMillimetres(double nominal);

  // The gauge number, nothing for a metric size.
  [[nodiscard]] std::optional<int> awgNumber() const;
  // The nominal cross-section in mm², nothing for a gauge.
  [[nodiscard]] std::optional<double> metricMm2() const;
  // Copper cross-section: by the gauge formula, or the nominal area.
  [[nodiscard]] Area area() const;
  // Of the solid wire with that area; a stranded one is thicker.
  [[nodiscard]] Length solidDiameter() const;
  // `14 AWG`, `1/0 AWG`, `2.5 mm²`.
  [[nodiscard]] std::string name() const;

  friend bool operator==(const WireSize&, const WireSize&) = default;
  friend std::partial_ordering operator<=>(const WireSize& a, const WireSize& b);

 private:
  WireSize(bool isAwg, double number) : m_isAwg(isAwg), m_number(number) {}
  bool m_isAwg;
  double m_number;  // the gauge, or mm²
};

// `14 AWG`, `14`, `#14`, `AWG 14`, `14 ga`, `1/0 AWG`, `2.5 mm²`, `2,5 mm2`, `2.5 sq mm`. A bare number is a gauge.
// Errors: units.empty, units.not_a_number, units.ambiguous_number, units.not_a_wire_size, units.out_of_range.
[[nodiscard]] base::Result<WireSize> parseWireSize(std::string_view text);

// A length of wire: `60ft/12AWG`, `18 m / 2.5 mm²`, or the size first, `14AWG/50ft`.
struct WireRun {
  Length length;
  WireSize size;

  friend bool operator==(const WireRun&, const WireRun&) = default;
};

// Errors: units.not_a_run, units.empty, or that of the half which can't be read.
[[nodiscard]] base::Result<WireRun> parseWireRun(std::string_view text);

}  // namespace cordreach::units
