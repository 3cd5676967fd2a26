// SPDX-License-Identifier: GPL-3.0-or-later
// Text that could not be read, made fit to be an Error's place: short, valid UTF-8, no control characters.
#pragma once

#include <string>
#include <string_view>

namespace cordreach::units {

// At most 60 bytes of `text`, then "..." if cut; each byte that is not part of valid UTF-8 becomes "?".
[[nodiscard]] std::string excerpt(std::string_view text);

}  // namespace cordreach::units
