// SPDX-License-Identifier: GPL-3.0-or-later
#include "site/pointer_step.h"

namespace cordreach::site {

std::string pointerStep(std::string_view key) {
  std::string step = "/";
  for (const char c : key) {
    if (c == '~') {
      step += "~0";
    } else if (c == '/') {
      step += "~1";
    } else {
      step += c;
    }
  }
  return step;
}

std::string keyOfStep(std::string_view step) {
  std::string key;
  for (std::size_t i = 0; i < step.size(); ++i) {
    if (step[i] == '~' && i + 1 < step.size()) {
      key += step[++i] == '1' ? '/' : '~';
    } else {
      key += step[i];
    }
  }
  return key;
}

}  // namespace cordreach::site
