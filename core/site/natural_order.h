// SPDX-License-Identifier: GPL-3.0-or-later
// The order in which people read numbered names: "1-5" before "1-13".
#pragma once

#include <string_view>

namespace cordreach::site {

// Runs of digits by their number, all else by its bytes. A strict weak order.
[[nodiscard]] bool comesBefore(std::string_view a, std::string_view b);

}  // namespace cordreach::site
