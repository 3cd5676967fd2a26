// SPDX-License-Identifier: GPL-3.0-or-later
// Unknown is a value: an absent Known is unknown, a Stated with a band is a guess, without one it is known.
#pragma once

#include <optional>
#include <string>

namespace cordreach::site {

template <class T>
struct Stated {
  T value;
  std::optional<T> low{};  // of a guess: both or neither
  std::optional<T> high{};
  std::string typed{};  // as somebody typed it, "75 ft"; may be empty
  std::string how{};    // how it is known: paced, printed on the jacket, nameplate, ...
  std::string who{};
  std::string when{};  // ISO 8601 date

  [[nodiscard]] bool isGuess() const { return low.has_value(); }
  friend bool operator==(const Stated&, const Stated&) = default;
};

template <class T>
using Known = std::optional<Stated<T>>;

template <class T>
[[nodiscard]] Known<T> known(T value) {
  return Stated<T>{value, {}, {}, {}, {}, {}, {}};
}

}  // namespace cordreach::site
