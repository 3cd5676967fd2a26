// SPDX-License-Identifier: GPL-3.0-or-later
// Tables as a spreadsheet file of one sheet (Office Open XML).
#pragma once

#include <string>

#include "base/result.h"
#include "io/table.h"

namespace cordreach::io {

// The file's bytes: every cell a text and inert, the first row bold and kept in sight. The sheet's name is cut to the
// 31 letters that the format allows, without those it forbids. Errors: table_file.not_written {reason}.
[[nodiscard]] base::Result<std::string> tableXlsx(const Table& table, const std::string& sheetName);

}  // namespace cordreach::io
