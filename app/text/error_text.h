// SPDX-License-Identifier: GPL-3.0-or-later
// An error as one sentence, without its full stop.
#pragma once

#include <string>

#include "base/error.h"
#include "text/phrasebook.h"

namespace cordreach::text {

// What is wrong. The error's place is at hand for its phrase as {place}.
[[nodiscard]] std::string errorSentence(const Phrasebook& book, const base::Error& error);

// The same with the file and the place in it before: "tower.json at /outlets/3/id: ...".
[[nodiscard]] std::string errorSentenceIn(const Phrasebook& book, const std::string& file, const base::Error& error);

}  // namespace cordreach::text
