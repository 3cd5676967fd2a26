// SPDX-License-Identifier: GPL-3.0-or-later
// When each extension cord is plugged in: at its hours, or, without any, whenever something is plugged into it.
#pragma once

#include <optional>
#include <unordered_map>
#include <vector>

#include "site/site.h"
#include "site/spans.h"

namespace cordreach::site {

class ExtensionTimes {
 public:
  // An extension on an extension on an extension: more than this is a mistake.
  static constexpr int kLongestChain = 16;

  explicit ExtensionTimes(const Site& site);

  // Follows pluggings down; for a cord that is plugged into itself through others, what lies outside the loop.
  [[nodiscard]] Spans spansOf(const ExtensionUse& use);
  // More than kLongestChain cords hang on this one, one behind the other.
  [[nodiscard]] bool tooLong(const CordId& cord);

 private:
  struct State {
    std::vector<const Hookup*> hookups;
    std::vector<const ExtensionUse*> uses;
    Spans spans;     // of everything plugged into the cord
    int height = 0;  // of the longest chain behind it
    bool open = false;
    bool done = false;
  };
  State& settled(const CordId& cord, int level);

  std::unordered_map<CordId, State> m_states;
};

}  // namespace cordreach::site
