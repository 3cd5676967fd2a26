// SPDX-License-Identifier: GPL-3.0-or-later
// A question about an outlet of a described building, in the light of what is planned there: the building with its
// plan, in which the machine that is asked about is plugged in at that outlet instead of where the plan has it.
#pragma once

#include <optional>
#include <string>

#include "planning/cord_question.h"

namespace cordreach::planning {

// An id that nothing of this kind in the site has, the stem itself if it can be.
template <class T>
[[nodiscard]] decltype(T::id) unusedId(const site::Site& site, std::string stem) {
  while (site.find<T>(decltype(T::id)(stem)) != nullptr) stem += '+';
  return decltype(T::id)(stem);
}

struct CordPlan {
  site::Site site;  // without that hookup and the extension that only it used
  site::OutletSocket wall;
};

// The question must be of a contact of a building. What was accepted for the plan is left out. Where somebody else's
// plug is in that contact then, `wall` is a second one like it.
[[nodiscard]] CordPlan cordPlanOf(const CordQuestion& question);

// What is in that contact then by the plan: a machine's name; none: it is free.
[[nodiscard]] std::optional<std::string> takenBy(const CordQuestion& question);

// Whether the plan has that cord of the cart somewhere else at the same hours. Without hours nobody can say: no.
[[nodiscard]] bool isPlannedElsewhere(const CordQuestion& question, const site::CordId& cord);

// What the question takes from a machine with one of its supply cords.
void askAbout(const site::Machine& machine, const site::Inlet& inlet, CordQuestion& question);
// What it takes from a planned hookup of question.at: its machine, its hours, and that it is that one.
void askAbout(const site::Hookup& hookup, CordQuestion& question);

}  // namespace cordreach::planning
