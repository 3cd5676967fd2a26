// SPDX-License-Identifier: GPL-3.0-or-later
// Flushed at once: a job runner reads one line a site while the next is computed, and a full disk is noticed in time.
#include "console/output.h"

#include <cerrno>
#include <system_error>

namespace cordreach::console {

bool StreamOutput::write(std::string_view text) {
  if (std::fwrite(text.data(), 1, text.size(), m_stream) == text.size() && std::fflush(m_stream) == 0) return true;
  m_fault = std::generic_category().message(errno);
  return false;
}

}  // namespace cordreach::console
