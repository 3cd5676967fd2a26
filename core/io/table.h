// SPDX-License-Identifier: GPL-3.0-or-later
// A table of texts, as it comes out of a spreadsheet or goes into one.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace cordreach::io {

using TableRow = std::vector<std::string>;

// Rows as they stand in the file, the heading among them; an empty line is a row without cells, so that row numbers are
// those that people see. Rows may be of different lengths.
using Table = std::vector<TableRow>;

// A cell that a spreadsheet could take for a formula (it begins with = + - @, a tab or a carriage return) behind an
// apostrophe, so that it stays a text; one that begins with apostrophes and such a mark gets one more; every other as
// it is.
[[nodiscard]] std::string inertCell(std::string_view cell);
// The cell that inertCell() was given.
[[nodiscard]] std::string plainCell(std::string_view cell);

}  // namespace cordreach::io
