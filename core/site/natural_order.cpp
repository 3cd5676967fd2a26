// SPDX-License-Identifier: GPL-3.0-or-later
#include "site/natural_order.h"

#include <algorithm>

namespace cordreach::site {
namespace {

bool isDigit(char c) { return c >= '0' && c <= '9'; }

// Takes the digits at the front, without leading noughts.
std::string_view takeNumber(std::string_view& text) {
  const auto end = std::find_if_not(text.begin(), text.end(), isDigit);
  std::string_view digits = text.substr(0, static_cast<std::size_t>(end - text.begin()));
  text.remove_prefix(digits.size());
  digits.remove_prefix(std::min(digits.find_first_not_of('0'), digits.size() - 1));
  return digits;
}

}  // namespace

bool comesBefore(std::string_view a, std::string_view b) {
  while (!a.empty() && !b.empty()) {
    if (isDigit(a.front()) && isDigit(b.front())) {
      const std::string_view left = takeNumber(a);
      const std::string_view right = takeNumber(b);
      if (left != right) return left.size() != right.size() ? left.size() < right.size() : left < right;
    } else {
      if (a.front() != b.front()) return a.front() < b.front();
      a.remove_prefix(1);
      b.remove_prefix(1);
    }
  }
  return a.size() < b.size();
}

}  // namespace cordreach::site
