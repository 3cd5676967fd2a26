// SPDX-License-Identifier: GPL-3.0-or-later
// Short random ids: six characters that a person can read out, none that looks like another, none in use.
#pragma once

#include <cstdint>
#include <functional>
#include <string>
#include <utility>

#include "site/site.h"

namespace cordreach::site {

// Gives the next of a row of random numbers, all 64 bits of it random.
using RandomSource = std::function<std::uint64_t()>;

// 30 letters and digits, without 0 o, 1 i l, and u (for v): 729 million ids of six characters.
[[nodiscard]] std::string randomIdText(const RandomSource& random, int characters = 6);

// An id that nothing of this kind in the site has, and that no reference to a removed thing in the history names.
template <class T>
[[nodiscard]] decltype(T::id) newId(const Site& site, const RandomSource& random) {
  const auto wasUsed = [&](const std::string& text) {
    for (const HistoryEntry& entry : site.all<HistoryEntry>()) {
      if (entry.subject == text) return true;
    }
    return site.find<T>(decltype(T::id)(text)) != nullptr;
  };
  // Eight characters after a few tries, so that a poor source of numbers ends too soon rather than never.
  for (int attempt = 0; attempt < 1000; ++attempt) {
    std::string text = randomIdText(random, attempt < 10 ? 6 : 8);
    if (!wasUsed(text)) return decltype(T::id)(std::move(text));
  }
  base::failContract("a random id that is free", __FILE__, __LINE__);
}

}  // namespace cordreach::site
