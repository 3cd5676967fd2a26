// SPDX-License-Identifier: GPL-3.0-or-later
// Labels that end in a number: "1-13", "C07", "104-2".
#pragma once

#include <cstddef>
#include <string>

namespace cordreach::app {

struct NumberedLabel {
  std::string stem;        // "1-"
  int number = 0;          // 0: it ends in none
  std::size_t digits = 0;  // as written, "07" has two
};

[[nodiscard]] NumberedLabel numberedLabel(const std::string& label);
[[nodiscard]] std::string withNumber(const std::string& stem, int number, std::size_t digits);
// The last run of digits anywhere in it; 0 when there is none.
[[nodiscard]] int lastNumber(const std::string& text);

}  // namespace cordreach::app
