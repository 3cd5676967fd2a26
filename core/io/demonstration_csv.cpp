// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/demonstration_csv.h"

#include <array>
#include <charconv>

namespace cordreach::io {
namespace {

using study::DemonstrationPoint;

constexpr std::array kColumns = {"conductor_c",      "conductor_low_c", "conductor_high_c", "surface_c",
                                 "surface_low_c",    "surface_high_c",  "plug_c",           "voltage_v",
                                 "lost_v",           "current_a",       "heat_w",           "speed_rpm",
                                 "breaker_earliest", "breaker_likely",  "breaker_latest"};

void put(std::string& row, std::optional<double> value) {
  row += ',';
  if (!value) return;
  constexpr int kDecimals = 3;
  std::array<char, 64> digits{};
  const auto end =
      std::to_chars(digits.data(), digits.data() + digits.size(), *value, std::chars_format::fixed, kDecimals);
  row.append(digits.data(), end.ptr);
}

void putBand(std::string& row, const std::optional<study::Band<units::Temperature>>& band) {
  put(row, band ? std::optional(band->likely.celsius()) : std::nullopt);
  put(row, band ? std::optional(band->low.celsius()) : std::nullopt);
  put(row, band ? std::optional(band->high.celsius()) : std::nullopt);
}

void putSide(std::string& row, const DemonstrationPoint& point) {
  putBand(row, point.conductor);
  putBand(row, point.surface);
  put(row, point.plug.celsius());
  put(row, point.voltage.si());
  put(row, point.lost.si());
  put(row, point.current.si());
  put(row, point.heat.si());
  put(row, point.speedRpm);
  for (const double warmth : point.warmth) put(row, warmth);
}

}  // namespace

std::string demonstrationCsv(const study::Demonstration& a, const study::Demonstration& b) {
  CORDREACH_EXPECTS(a.points.size() == b.points.size() && a.step == b.step);
  std::string csv = "time_s";
  for (const char* side : {"a_", "b_"}) {
    for (const char* column : kColumns) csv += "," + std::string(side) + column;
  }
  csv += '\n';
  for (std::size_t i = 0; i < a.points.size(); ++i) {
    std::string row;
    put(row, a.points[i].time.si());
    csv += row.substr(1);
    row.clear();
    putSide(row, a.points[i]);
    putSide(row, b.points[i]);
    csv += row + '\n';
  }
  return csv;
}

}  // namespace cordreach::io
