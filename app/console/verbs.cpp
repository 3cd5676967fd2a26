// SPDX-License-Identifier: GPL-3.0-or-later
// The table of verbs.
#include "console/verbs.h"

#include <array>

#include "console/verb_assess.h"
#include "console/verb_cord.h"
#include "console/verb_fault.h"
#include "console/verb_heat.h"
#include "console/verb_run.h"
#include "console/verb_site.h"
#include "console/verb_start.h"
#include "console/verb_trip.h"

namespace cordreach::console {

namespace {

constexpr std::array kVerbs{
    Verb{"assess", "What a building's plan comes to, and what to change", declareAssess},
    Verb{"cord", "The one cord to take for a machine, a distance and an outlet", declareCord},
    Verb{"heat", "How hot a cord gets at a current", declareHeat},
    Verb{"run", "A building's plan through time: what trips and heats when", declareRun},
    Verb{"start", "What switching a machine on does, to it and to all else", declareStart},
    Verb{"trip", "When a breaker trips at a current", declareTrip},
    Verb{"fault", "What a fault at a cord's end does, and what cuts it off", declareFault},
    Verb{"site", "Begins a site file, or says whether files are in order", declareSite},
};

}  // namespace

std::span<const Verb> verbs() { return kVerbs; }

}  // namespace cordreach::console
