// SPDX-License-Identifier: GPL-3.0-or-later
// The table of verbs.
#include "console/verbs.h"

#include <array>

namespace cordreach::console {

namespace {

constexpr std::array<Verb, 0> kVerbs{};

}  // namespace

std::span<const Verb> verbs() { return kVerbs; }

}  // namespace cordreach::console
