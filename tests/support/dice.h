// SPDX-License-Identifier: GPL-3.0-or-later
// Random numbers from a seed, the same on every machine.
#pragma once

#include <cstddef>
#include <cstdint>
#include <random>

namespace cordreach::testing {

class Dice {
 public:
  explicit Dice(std::uint64_t seed) : m_engine(seed) {}
  // The engine's sequence is fixed by the standard; the library's distributions are not.
  [[nodiscard]] double between(double low, double high) {
    return low + (high - low) * static_cast<double>(m_engine() >> 11) * 0x1p-53;
  }
  [[nodiscard]] std::size_t below(std::size_t count) { return static_cast<std::size_t>(m_engine() % count); }
  [[nodiscard]] bool chance(double probability) { return between(0, 1) < probability; }

 private:
  std::mt19937_64 m_engine;
};

}  // namespace cordreach::testing
