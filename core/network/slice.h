// SPDX-License-Identifier: GPL-3.0-or-later
// A part of an array that many readers share: what one circuit is given of a solution's arrays. It keeps the whole
// array alive, copies for next to nothing and is never written to. A building's solution is then a few large pieces of
// memory instead of thousands of small ones, whose fetching took longer than the solving.
#pragma once

#include <cstddef>
#include <memory>
#include <span>
#include <utility>

namespace cordreach::network {

template <class T>
class Slice {
 public:
  Slice() = default;
  // `values` lies inside what `owner` owns.
  Slice(std::shared_ptr<const void> owner, std::span<const T> values) : m_owner(std::move(owner)), m_values(values) {}

  [[nodiscard]] std::size_t size() const { return m_values.size(); }
  [[nodiscard]] const T& operator[](std::size_t i) const { return m_values[i]; }
  [[nodiscard]] const T& front() const { return m_values.front(); }
  [[nodiscard]] auto begin() const { return m_values.begin(); }
  [[nodiscard]] auto end() const { return m_values.end(); }

 private:
  std::shared_ptr<const void> m_owner;
  std::span<const T> m_values;
};

}  // namespace cordreach::network
