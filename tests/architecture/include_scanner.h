// SPDX-License-Identifier: GPL-3.0-or-later
// Finds the #include lines of a source text. It does not run the preprocessor: an include inside #if counts too.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace cordreach::architecture {

struct Include {
  int line = 0;
  std::string path;
  bool quoted = false;  // "path", else <path>

  friend bool operator==(const Include&, const Include&) = default;
};

std::vector<Include> includesOf(std::string_view text);

}  // namespace cordreach::architecture
