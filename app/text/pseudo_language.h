// SPDX-License-Identifier: GPL-3.0-or-later
// A language nobody speaks, 40 % longer than the book it is made of: shows what is too narrow and what was never
// worded.
#pragma once

#include "text/phrasebook.h"

namespace cordreach::text {

// Units, signal words and number marks stay as they are; every other phrase is lengthened and its vowels are accented.
[[nodiscard]] Phrasebook pseudoLanguage(const Phrasebook& book);

}  // namespace cordreach::text
