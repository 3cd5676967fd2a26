// SPDX-License-Identifier: GPL-3.0-or-later
// The one colour scale of temperature, 20 to 100 °C: blue over purple to dark red on light ground, to pale yellow on
// dark. Its lightness changes by even steps, so that it reads without colour vision too. Always shown with its figure.
#pragma once

#include <QColor>
#include <QLinearGradient>

#include "units/temperature.h"

namespace cordreach::look {

inline constexpr double kRampLowC = 20;
inline constexpr double kRampHighC = 100;

// Between its stops interpolated in CIE Lab; below 20 and above 100 °C the end's colour.
[[nodiscard]] QColor temperatureColor(units::Temperature temperature, bool dark);

// From `cool` to `hot`, for a scale on screen.
[[nodiscard]] QLinearGradient temperatureGradient(const QPointF& cool, const QPointF& hot, bool dark);

// Between two colours in CIE Lab; fraction 0 to 1.
[[nodiscard]] QColor mixedInLab(const QColor& from, const QColor& to, double fraction);

}  // namespace cordreach::look
