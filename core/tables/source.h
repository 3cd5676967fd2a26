// SPDX-License-Identifier: GPL-3.0-or-later
// Where a number comes from, and how sure we are that the source says so.
#pragma once

#include <string>

namespace cordreach::tables {

enum class SourceStatus {
  Seen,      // read in a text that reproduces it
  Memory,    // recalled from the standard, not read again
  Common,    // common practice, no source
  Own,       // our own choice or estimate
  Computed,  // our arithmetic from the source named
};

struct Source {
  std::string text;
  SourceStatus status;

  friend bool operator==(const Source&, const Source&) = default;
};

}  // namespace cordreach::tables
