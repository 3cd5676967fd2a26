// SPDX-License-Identifier: GPL-3.0-or-later
// The answer of `assess` as a page: the worst first, each with its cause and the change that mends it.
#pragma once

#include <string>

#include "console/site_answer.h"
#include "text/phrasebook.h"

namespace cordreach::console {

[[nodiscard]] std::string assessPage(const SiteAnswer& answer, const text::Phrasebook& book, bool color);

}  // namespace cordreach::console
