// SPDX-License-Identifier: GPL-3.0-or-later
// Text of whatever encoding spreadsheets write, as UTF-8.
#pragma once

#include <string>
#include <string_view>

#include "base/result.h"

namespace cordreach::io {

// UTF-8 and UTF-16 of either byte order, with or without a byte order mark; else, when every byte is a letter there,
// the Western European page (Windows-1252, which holds all printable letters of Latin-1). Error: csv.unknown_encoding.
[[nodiscard]] base::Result<std::string> toUtf8(std::string_view bytes);

}  // namespace cordreach::io
