// SPDX-License-Identifier: GPL-3.0-or-later
// Reading what somebody once wrote in a panel's directory: which breaker it names, if any.
#pragma once

#include <set>
#include <string>
#include <string_view>

namespace cordreach::rules {

struct DirectoryText {
  std::string panel;              // one of those offered, in their spelling; empty: none named
  std::set<std::string> numbers;  // breaker numbers without leading zeros; empty: names none
};

// Understands "2A-8", "2A8", "panel 2A, breaker 8", "#8", "5/7". A text without a number names no breaker.
[[nodiscard]] DirectoryText readDirectory(std::string_view text, const std::set<std::string>& panels);

}  // namespace cordreach::rules
