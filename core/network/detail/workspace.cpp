// SPDX-License-Identifier: GPL-3.0-or-later
// Memory out of and back into the thread's keeping.
#include "network/detail/workspace.h"

#include <utility>

namespace cordreach::network::detail {
namespace {

Memory& kept() {
  thread_local Memory memory;
  return memory;
}

}  // namespace

Workspace::Workspace() : m_memory(std::exchange(kept(), {})) {}

Workspace::~Workspace() {
  if (m_memory.flat.nodes.capacity() <= kMostNodesKept) kept() = std::move(m_memory);
}

}  // namespace cordreach::network::detail
