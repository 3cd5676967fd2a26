// SPDX-License-Identifier: GPL-3.0-or-later
// The files of resources/lessons, compiled in.
#pragma once

#include <span>
#include <string_view>
#include <utility>

namespace cordreach::app {

[[nodiscard]] std::span<const std::pair<std::string_view, std::string_view>> embeddedLessons();

}  // namespace cordreach::app
