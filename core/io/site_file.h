// SPDX-License-Identifier: GPL-3.0-or-later
// The site file: a site as JSON text and back, and its load and save. docs/file-format.md describes the format,
// docs/site.schema.json says it to a machine. Error codes: io/error_codes.h.
#pragma once

#include <filesystem>
#include <string>
#include <string_view>

#include "base/result.h"
#include "site/site.h"

namespace cordreach::io {

inline constexpr int kSiteFileVersion = 1;

// A site that holds its invariants. The place of an error is a JSON pointer into `json` as it stands.
[[nodiscard]] base::Result<site::Site> readSite(std::string_view json);

// One object a line, arrays by id. The site holds its invariants; reading the text gives an equal site.
[[nodiscard]] std::string writeSite(const site::Site& site);

// Errors: those of readSite and readWholeFile (io/atomic_file.h).
[[nodiscard]] base::Result<site::Site> loadSite(const std::filesystem::path& path);

// The file is whole or the old one stands. Errors: those of replaceFile (io/atomic_file.h).
[[nodiscard]] base::Result<base::Done> saveSite(const std::filesystem::path& path, const site::Site& site);

}  // namespace cordreach::io
