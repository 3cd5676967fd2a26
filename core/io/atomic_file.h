// SPDX-License-Identifier: GPL-3.0-or-later
// Whole files in and out: a written file is whole or the old one stands, whatever happens in between.
#pragma once

#include <cstddef>
#include <filesystem>
#include <string>
#include <string_view>

#include "base/result.h"

namespace cordreach::io {

// Reads at most `limitBytes`, from pipes too. Errors, the place the path: io.not_found, io.is_folder, io.no_permission,
// io.too_large {limit_mb}, io.cannot_read {reason}.
[[nodiscard]] base::Result<std::string> readWholeFile(const std::filesystem::path& path, std::size_t limitBytes);

// Writes a new file beside the old one, makes it safe on the disk, then gives it the old one's name. Keeps the old
// file's permissions; follows a symbolic link to the file it names. Errors, the place the path: io.not_found (its
// folder), io.is_folder, io.not_a_file, io.no_permission, io.disk_full, io.cannot_write {reason}.
[[nodiscard]] base::Result<base::Done> replaceFile(const std::filesystem::path& path, std::string_view content);

}  // namespace cordreach::io
