// SPDX-License-Identifier: GPL-3.0-or-later
// The answer of `assess` as one line of JSON; docs/console.md names every key.
#pragma once

#include <string>

#include "base/error.h"
#include "console/site_answer.h"
#include "text/phrasebook.h"

namespace cordreach::console {

[[nodiscard]] std::string assessJson(const std::string& path, const SiteAnswer& answer, const text::Phrasebook& book);

// The line of a site that could not be answered.
[[nodiscard]] std::string assessErrorJson(const std::string& path, const base::Error& error,
                                          const text::Phrasebook& book);

}  // namespace cordreach::console
