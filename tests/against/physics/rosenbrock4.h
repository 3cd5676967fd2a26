// SPDX-License-Identifier: GPL-3.0-or-later
// Boost.Odeint's Rosenbrock method of fourth order on three stiff equations. Apart, as its vectors do not compile as
// C++20: rosenbrock4.cpp is C++17, and this header is both.
#pragma once

#include <array>
#include <functional>

namespace cordreach::testing {

using Three = std::array<double, 3>;

struct StiffSystem {
  std::function<Three(const Three&)> rates;
  std::function<std::array<Three, 3>(const Three&)> slopes;  // [row][column]: of rate `row` by value `column`
};

// Where `start` is after that time, each step's error held to `tolerance`.
[[nodiscard]] Three byRosenbrock4(const StiffSystem& system, const Three& start, double duration, double tolerance,
                                  double firstStep);

}  // namespace cordreach::testing
