// SPDX-License-Identifier: GPL-3.0-or-later
// One value a pole of a bundle: one to three, kept in place. A solution holds two of these a node, and fetching memory
// for each costs more than solving the node.
#pragma once

#include <array>
#include <cstddef>

#include "base/contract.h"

namespace cordreach::network {

template <class T>
class PerPole {
 public:
  static constexpr std::size_t kMost = 3;

  PerPole() = default;
  explicit PerPole(std::size_t poles) : m_size(poles) { CORDREACH_EXPECTS(poles <= kMost); }

  [[nodiscard]] std::size_t size() const { return m_size; }
  [[nodiscard]] T& operator[](std::size_t pole) { return m_values[pole]; }
  [[nodiscard]] const T& operator[](std::size_t pole) const { return m_values[pole]; }
  [[nodiscard]] const T* begin() const { return m_values.data(); }
  [[nodiscard]] const T* end() const { return m_values.data() + m_size; }

 private:
  std::array<T, kMost> m_values{};
  std::size_t m_size = 0;
};

}  // namespace cordreach::network
