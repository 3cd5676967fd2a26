// SPDX-License-Identifier: GPL-3.0-or-later
// The table files as the build compiled them in: name (file name without ending) and content.
#pragma once

#include <span>
#include <string_view>
#include <utility>

namespace cordreach::tables {

[[nodiscard]] std::span<const std::pair<std::string_view, std::string_view>> embeddedTables();

}  // namespace cordreach::tables
