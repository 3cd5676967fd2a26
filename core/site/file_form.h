// SPDX-License-Identifier: GPL-3.0-or-later
// How each kind of number stands in a file, and what is believed of it: the unit that ends its key, the number in that
// unit, and the range of this world. The ranges are this program's own: wide enough for any building, narrow enough
// that a slipped decimal point is seen.
#pragma once

#include <string_view>

#include "units/quantity.h"
#include "units/temperature.h"

namespace cordreach::site {

template <class T>
struct FileForm;

// A quantity whose file unit is its SI unit.
template <class Q>
struct SiForm {
  [[nodiscard]] static constexpr double toFile(Q value) { return value.si(); }
  [[nodiscard]] static constexpr Q fromFile(double number) { return Q::fromSi(number); }
};

template <>
struct FileForm<units::Length> : SiForm<units::Length> {
  static constexpr std::string_view kUnit = "m";
  static constexpr double kLowest = 0.0, kHighest = 2000.0;
};
template <>
struct FileForm<units::Current> : SiForm<units::Current> {
  static constexpr std::string_view kUnit = "a";
  static constexpr double kLowest = 0.0, kHighest = 1000.0;
};
template <>
struct FileForm<units::Voltage> : SiForm<units::Voltage> {
  static constexpr std::string_view kUnit = "v";
  static constexpr double kLowest = 0.0, kHighest = 1000.0;
};
template <>
struct FileForm<units::Resistance> : SiForm<units::Resistance> {
  static constexpr std::string_view kUnit = "ohm";
  static constexpr double kLowest = 0.0, kHighest = 1000.0;
};
template <>
struct FileForm<units::Power> : SiForm<units::Power> {
  static constexpr std::string_view kUnit = "w";
  static constexpr double kLowest = 0.0, kHighest = 1e5;
};
template <>
struct FileForm<units::Force> : SiForm<units::Force> {
  static constexpr std::string_view kUnit = "n";
  static constexpr double kLowest = 0.0, kHighest = 5000.0;
};
template <>
struct FileForm<units::Duration> : SiForm<units::Duration> {
  static constexpr std::string_view kUnit = "s";
  static constexpr double kLowest = 0.0, kHighest = 48.0 * 3600.0;
};
// Turning speeds are the only frequencies of a site.
template <>
struct FileForm<units::Frequency> {
  static constexpr std::string_view kUnit = "rpm";
  static constexpr double kLowest = 0.0, kHighest = 60000.0;
  [[nodiscard]] static constexpr double toFile(units::Frequency value) { return value.si() * 60.0; }
  [[nodiscard]] static constexpr units::Frequency fromFile(double number) {
    return units::Frequency::fromSi(number / 60.0);
  }
};
template <>
struct FileForm<units::Temperature> {
  static constexpr std::string_view kUnit = "c";
  static constexpr double kLowest = -60.0, kHighest = 400.0;
  [[nodiscard]] static constexpr double toFile(units::Temperature value) { return value.celsius(); }
  [[nodiscard]] static constexpr units::Temperature fromFile(double number) {
    return units::Temperature::fromCelsius(number);
  }
};
template <>
struct FileForm<double> {
  static constexpr std::string_view kUnit = "";
  static constexpr double kLowest = 0.0, kHighest = 1000.0;
  [[nodiscard]] static constexpr double toFile(double value) { return value; }
  [[nodiscard]] static constexpr double fromFile(double number) { return number; }
};

inline constexpr double kFarthestM = 10000.0;  // a point from the plan's corner
inline constexpr int kMostConductors = 100;
inline constexpr int kHighestLevel = 300;
inline constexpr double kThinnestMm2 = 0.01;
inline constexpr double kThickestMm2 = 1000.0;
inline constexpr std::size_t kLongestText = 10000;  // bytes
inline constexpr std::size_t kLongestId = 64;       // bytes
inline constexpr std::size_t kMostThings = 200000;  // in one site

}  // namespace cordreach::site
