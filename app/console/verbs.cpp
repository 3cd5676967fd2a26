// SPDX-License-Identifier: GPL-3.0-or-later
// The table of verbs.
#include "console/verbs.h"

#include <array>

#include "console/verb_heat.h"
#include "console/verb_trip.h"

namespace cordreach::console {

namespace {

constexpr std::array kVerbs{
    Verb{"heat", "How hot a cord gets at a current", declareHeat},
    Verb{"trip", "When a breaker trips at a current", declareTrip},
};

}  // namespace

std::span<const Verb> verbs() { return kVerbs; }

}  // namespace cordreach::console
