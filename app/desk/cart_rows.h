// SPDX-License-Identifier: GPL-3.0-or-later
// The cart's cords that reach, in the order in which one would take them: the chosen one, what would do as well, what
// would not do or is in use elsewhere. Cords that are alike and fare alike stand in one row.
#pragma once

#include <QString>
#include <vector>

#include "planning/cord_choice.h"
#include "text/phrasebook.h"

namespace cordreach::app {

struct CartRow {
  rules::Severity severity;
  QString words;  // "C03, C04, 12 AWG 25 ft: long way"
};

// `own` is the size of the machine's own cord.
[[nodiscard]] std::vector<CartRow> cartRows(const text::Phrasebook& book, const planning::CordAdvice& advice,
                                            const units::WireSize& own);

}  // namespace cordreach::app
