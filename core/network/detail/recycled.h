// SPDX-License-Identifier: GPL-3.0-or-later
// Arrays for solutions that go back, once their last reader is gone, to the thread that drops them, for its next
// solve: a building solved again and again then touches no memory fresh from the system, which costs more than solving.
#pragma once

#include <cstddef>
#include <memory>
#include <utility>
#include <vector>

#include "network/detail/workspace.h"

namespace cordreach::network::detail {

template <class T>
class Spare {
 public:
  // None once the thread's spares are gone, as when a solution outlives its thread's end.
  static Spare* ofThread() {
    thread_local bool gone = false;
    thread_local Spare spare(gone);
    return gone ? nullptr : &spare;
  }

  ~Spare() { m_gone = true; }
  Spare(const Spare&) = delete;
  Spare& operator=(const Spare&) = delete;

  std::vector<T> take() {
    if (m_arrays.empty()) return {};
    std::vector<T> last = std::move(m_arrays.back());
    m_arrays.pop_back();
    return last;
  }

  void give(std::vector<T>&& array) {
    if (m_arrays.size() < kMost && array.capacity() <= kMostNodesKept) m_arrays.push_back(std::move(array));
  }

 private:
  static constexpr std::size_t kMost = 3;  // a solution, the one before it, and the next one on its way

  explicit Spare(bool& gone) : m_gone(gone) { m_arrays.reserve(kMost); }

  bool& m_gone;
  std::vector<std::vector<T>> m_arrays;
};

// `size` values, of which each must be written: they may hold an earlier solution's.
template <class T>
[[nodiscard]] std::shared_ptr<std::vector<T>> recycled(std::size_t size) {
  Spare<T>* spare = Spare<T>::ofThread();
  std::unique_ptr<std::vector<T>> array = std::make_unique<std::vector<T>>();
  if (spare != nullptr) *array = spare->take();
  array->resize(size);
  return {array.release(), [](std::vector<T>* old) {
            const std::unique_ptr<std::vector<T>> owned(old);
            if (Spare<T>* back = Spare<T>::ofThread(); back != nullptr) back->give(std::move(*owned));
          }};
}

}  // namespace cordreach::network::detail
