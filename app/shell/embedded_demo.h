// SPDX-License-Identifier: GPL-3.0-or-later
// The demo building as the build compiled it in: file name without ending, and JSON.
#pragma once

#include <span>
#include <string_view>
#include <utility>

namespace cordreach::app {

[[nodiscard]] std::span<const std::pair<std::string_view, std::string_view>> embeddedDemo();

}  // namespace cordreach::app
