// SPDX-License-Identifier: GPL-3.0-or-later
// The symbol drawings as the build compiled them in: name (file name without ending) and SVG text.
#pragma once

#include <span>
#include <string_view>
#include <utility>

namespace cordreach::app {

[[nodiscard]] std::span<const std::pair<std::string_view, std::string_view>> embeddedSymbols();

}  // namespace cordreach::app
