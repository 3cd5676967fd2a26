// SPDX-License-Identifier: GPL-3.0-or-later
// What else is on a circuit, in one sentence.
#pragma once

#include <string>
#include <vector>

#include "planning/circuit_users.h"
#include "text/phrasebook.h"

namespace cordreach::text {

// "Burnisher, 1600 rpm 15 A, 18:00 to 19:15".
[[nodiscard]] std::string circuitUserText(const Phrasebook& book, const planning::CircuitUser& user);

// "Also on this breaker: ...; ... and 2 more."; empty: nothing. Tells at most `most` of them.
[[nodiscard]] std::string alsoOnText(const Phrasebook& book, const std::vector<planning::CircuitUser>& users,
                                     std::size_t most);

}  // namespace cordreach::text
