// SPDX-License-Identifier: GPL-3.0-or-later
// Edits as JSON on one line: for remedies in console output and for the autosave journal.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "base/result.h"
#include "site/edit.h"

namespace cordreach::io {

// [{"kind": "hookups", "before": {…} or null, "after": {…} or null}], the objects as in the site file. The kind is the
// file's array; "site" for the site's own name and ambient.
[[nodiscard]] std::string writeChanges(const std::vector<site::AnyChange>& changes);
[[nodiscard]] base::Result<std::vector<site::AnyChange>> readChanges(std::string_view json);

// {"code": "hookup.move", "changes": […]}
[[nodiscard]] std::string writeEdit(const site::Edit& edit);
[[nodiscard]] base::Result<site::Edit> readEdit(std::string_view json);

}  // namespace cordreach::io
