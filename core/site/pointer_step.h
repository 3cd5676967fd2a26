// SPDX-License-Identifier: GPL-3.0-or-later
// Spelling of keys and JSON pointers, shared by the checks and the file so that their pointers agree.
#pragma once

#include <string>
#include <string_view>
#include <type_traits>

#include "site/file_form.h"
#include "units/wire_size.h"

namespace cordreach::site {

// A key as one step of a JSON pointer: "/" and the key, with ~ as ~0 and / as ~1 (RFC 6901).
[[nodiscard]] std::string pointerStep(std::string_view key);
// The key that a step, without its "/", stands for.
[[nodiscard]] std::string keyOfStep(std::string_view step);

// "_m" for a length; nothing for what has no unit.
template <class T>
[[nodiscard]] std::string unitEnding() {
  if constexpr (std::is_same_v<T, units::WireSize> || std::is_same_v<T, int> || std::is_same_v<T, double>) {
    return {};
  } else {
    return "_" + std::string(FileForm<T>::kUnit);
  }
}

template <class T>
[[nodiscard]] std::string keyWithUnit(std::string_view base) {
  return std::string(base) + unitEnding<T>();
}

}  // namespace cordreach::site
