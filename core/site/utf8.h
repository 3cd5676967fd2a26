// SPDX-License-Identifier: GPL-3.0-or-later
// Whether bytes are text.
#pragma once

#include <cstddef>
#include <string_view>

namespace cordreach::site {

// How many bytes from the start are well-formed UTF-8 (Unicode standard, table 3-7); all of them: the text's size.
[[nodiscard]] std::size_t validUtf8Length(std::string_view text);

}  // namespace cordreach::site
