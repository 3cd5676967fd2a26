// SPDX-License-Identifier: GPL-3.0-or-later
#include "site/spans.h"

#include <algorithm>

namespace cordreach::site {

Spans merged(Spans spans) {
  std::sort(spans.begin(), spans.end(), [](const Hours& a, const Hours& b) { return a.from < b.from; });
  Spans apart;
  for (const Hours& span : spans) {
    if (apart.empty() || apart.back().until < span.from) {
      apart.push_back(span);
    } else {
      apart.back().until = std::max(apart.back().until, span.until);
    }
  }
  return apart;
}

}  // namespace cordreach::site
