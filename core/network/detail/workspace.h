// SPDX-License-Identifier: GPL-3.0-or-later
// The solver's memory, kept by each thread between solves. Taken out while in use, so a solve within a solve (from a
// progress hook, say) finds its own; not kept beyond a size, so one huge building does not hold it for ever.
#pragma once

#include <cstddef>

#include "network/detail/newton.h"

namespace cordreach::network::detail {

inline constexpr std::size_t kMostNodesKept = 150'000;  // some 60 MB

struct Memory {
  FlatNetwork flat;
  Buffers buffers;
};

class Workspace {
 public:
  Workspace();
  ~Workspace();
  Workspace(const Workspace&) = delete;
  Workspace& operator=(const Workspace&) = delete;

  [[nodiscard]] FlatNetwork& flat() { return m_memory.flat; }
  [[nodiscard]] Buffers& buffers() { return m_memory.buffers; }

 private:
  Memory m_memory;
};

}  // namespace cordreach::network::detail
