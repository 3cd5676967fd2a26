// SPDX-License-Identifier: GPL-3.0-or-later
// How long work listens and reports: one hook passed down to the innermost loop that can take long.
#pragma once

#include <atomic>
#include <functional>

namespace cordreach::base {

struct Progress {
  const std::atomic<bool>* stop = nullptr;            // null: cannot be stopped
  std::function<void(double doneFraction)> report{};  // empty: nobody listens

  [[nodiscard]] bool stopRequested() const { return stop != nullptr && stop->load(std::memory_order_relaxed); }
};

}  // namespace cordreach::base
