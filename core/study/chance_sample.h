// SPDX-License-Identifier: GPL-3.0-or-later
// One run of a chance model with its inputs drawn. For chances.cpp.
#pragma once

#include <cstdint>
#include <memory>
#include <span>
#include <vector>

#include "study/chance_model.h"

namespace cordreach::study {

struct SampleResult {
  bool trips = false;
  double nearness = 0.0;         // 1 at a trip
  std::vector<bool> cordIsOver;  // [cord of the model]
};

class ChanceSampler {
 public:
  explicit ChanceSampler(const ChanceModel& model);
  ~ChanceSampler();

  // `draws`: one w in -1 to 1 an input; of a phase, its place in the cycle from -1 to 1.
  [[nodiscard]] SampleResult run(std::span<const float> draws);

 private:
  class Circuits;
  // How near the breaker comes to a trip: its largest warmth, or current over pick-up.
  double breakerNearness(std::span<const float> draws);

  const ChanceModel& m_model;
  std::unique_ptr<Circuits> m_circuits;
};

// Uniform in [0, 1) for that sample and input: a counter hashed, so that order and threads do not matter.
[[nodiscard]] double uniformOf(std::uint64_t seed, std::uint64_t sample, std::uint64_t input);
// The w of the band's triangle for a uniform u.
[[nodiscard]] double triangleOf(double uniform);

}  // namespace cordreach::study
