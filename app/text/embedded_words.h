// SPDX-License-Identifier: GPL-3.0-or-later
// The word files as the build compiled them in: language and JSON.
#pragma once

#include <span>
#include <string_view>
#include <utility>

namespace cordreach::text {

[[nodiscard]] std::span<const std::pair<std::string_view, std::string_view>> embeddedWords();

}  // namespace cordreach::text
