// SPDX-License-Identifier: GPL-3.0-or-later
// The distribution of the sum, load by load on a fine grid of amps.
#include "study/coincidence.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace cordreach::study {

namespace {

constexpr std::size_t kSteps = 4096;  // of the sum of all: each load is off by at most half a step
constexpr double kHalf = 0.5 + 1e-12;

}  // namespace

Coincidence coincidenceOf(std::span<const ComesAndGoes> loads) {
  Coincidence result;
  for (const ComesAndGoes& load : loads) {
    result.worst += load.current;
    result.together *= load.onFraction;
  }
  if (!(result.worst > units::Current{})) return result;
  std::vector<double> chance(kSteps + 2 * loads.size() + 1, 0.0);  // of drawing that many steps
  chance[0] = 1.0;
  for (const ComesAndGoes& load : loads) {
    const auto steps = static_cast<std::size_t>(std::lround(load.current / result.worst * kSteps));
    for (std::size_t i = chance.size(); i-- > 0;) {
      const double without = i >= steps ? chance[i - steps] : 0.0;
      chance[i] = (1.0 - load.onFraction) * chance[i] + load.onFraction * without;
    }
  }
  double sum = 0.0;
  for (std::size_t i = 0; i < chance.size(); ++i) {
    sum += chance[i];
    if (sum < kHalf) continue;
    result.likely = std::min(1.0, static_cast<double>(i) / kSteps) * result.worst;
    break;
  }
  return result;
}

}  // namespace cordreach::study
