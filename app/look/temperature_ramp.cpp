// SPDX-License-Identifier: GPL-3.0-or-later
// sRGB to CIE Lab (D65) by IEC 61966-2-1 and CIE 15.
#include "look/temperature_ramp.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace cordreach::look {

namespace {

using Triple = std::array<double, 3>;

constexpr std::array<unsigned, 9> kLight = {0x3A9AC4, 0x5387C1, 0x6774B6, 0x765FA5, 0x87478D,
                                            0x94276A, 0x930041, 0x81001E, 0x621705};
constexpr std::array<unsigned, 9> kDark = {0x1E77A2, 0x5F7DC1, 0x9582D0, 0xCC83D1, 0xFE85BC,
                                           0xFEA4AB, 0xFFBEA7, 0xFFD6A7, 0xFEEFA1};
constexpr Triple kWhite = {0.95047, 1.0, 1.08883};
constexpr double kEpsilon = 216.0 / 24389.0;
constexpr double kKappa = 24389.0 / 27.0;

double toLinear(double v) { return v <= 0.04045 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4); }
double toSrgb(double v) { return v <= 0.0031308 ? 12.92 * v : 1.055 * std::pow(v, 1 / 2.4) - 0.055; }
double forward(double t) { return t > kEpsilon ? std::cbrt(t) : (kKappa * t + 16) / 116; }
double backward(double f) { return f * f * f > kEpsilon ? f * f * f : (116 * f - 16) / kKappa; }

Triple toLab(const QColor& color) {
  const double r = toLinear(color.redF());
  const double g = toLinear(color.greenF());
  const double b = toLinear(color.blueF());
  const double x = forward((0.4124564 * r + 0.3575761 * g + 0.1804375 * b) / kWhite[0]);
  const double y = forward(0.2126729 * r + 0.7151522 * g + 0.0721750 * b);
  const double z = forward((0.0193339 * r + 0.1191920 * g + 0.9503041 * b) / kWhite[2]);
  return {116 * y - 16, 500 * (x - y), 200 * (y - z)};
}

QColor fromLab(const Triple& lab) {
  const double fy = (lab[0] + 16) / 116;
  const double x = backward(fy + lab[1] / 500) * kWhite[0];
  const double y = backward(fy);
  const double z = backward(fy - lab[2] / 200) * kWhite[2];
  const auto channel = [](double linear) {
    return static_cast<float>(std::clamp(toSrgb(std::max(linear, 0.0)), 0.0, 1.0));
  };
  return QColor::fromRgbF(channel(3.2404542 * x - 1.5371385 * y - 0.4985314 * z),
                          channel(-0.9692660 * x + 1.8760108 * y + 0.0415560 * z),
                          channel(0.0556434 * x - 0.2040259 * y + 1.0572252 * z));
}

}  // namespace

QColor mixedInLab(const QColor& from, const QColor& to, double fraction) {
  const Triple a = toLab(from);
  const Triple b = toLab(to);
  const double t = std::clamp(fraction, 0.0, 1.0);
  return fromLab({std::lerp(a[0], b[0], t), std::lerp(a[1], b[1], t), std::lerp(a[2], b[2], t)});
}

QColor temperatureColor(units::Temperature temperature, bool dark) {
  const auto& stops = dark ? kDark : kLight;
  const double place = std::clamp((temperature.celsius() - kRampLowC) / 10, 0.0, double(stops.size() - 1));
  const auto below = std::min(static_cast<std::size_t>(place), stops.size() - 2);
  return mixedInLab(QColor::fromRgb(stops[below]), QColor::fromRgb(stops[below + 1]), place - double(below));
}

QLinearGradient temperatureGradient(const QPointF& cool, const QPointF& hot, bool dark) {
  QLinearGradient gradient(cool, hot);
  const auto& stops = dark ? kDark : kLight;
  for (std::size_t i = 0; i < stops.size(); ++i) {
    gradient.setColorAt(double(i) / double(stops.size() - 1), QColor::fromRgb(stops[i]));
  }
  return gradient;
}

}  // namespace cordreach::look
