// SPDX-License-Identifier: GPL-3.0-or-later
#include "site/new_id.h"

#include <string_view>

namespace cordreach::site {

std::string randomIdText(const RandomSource& random, int characters) {
  constexpr std::string_view kAlphabet = "23456789abcdefghjkmnpqrstvwxyz";
  std::uint64_t number = random();
  std::string text;
  for (int i = 0; i < characters; ++i) {
    text += kAlphabet[number % kAlphabet.size()];
    number /= kAlphabet.size();
  }
  return text;
}

}  // namespace cordreach::site
