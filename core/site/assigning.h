// SPDX-License-Identifier: GPL-3.0-or-later
// Saying which breaker feeds a contact, with how that is known, by whom and since when, and a note of it in the
// history.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "site/edit.h"
#include "site/new_id.h"
#include "site/plan.h"
#include "site/site.h"

namespace cordreach::site {

struct HowFound {
  HowKnown how = HowKnown::Assumed;
  std::string who{};
  std::string when{};  // ISO 8601 date

  friend bool operator==(const HowFound&, const HowFound&) = default;
};

// "1A-5": the panel's name and the number on it, or their ids where they have none.
[[nodiscard]] std::string circuitNumberOf(const Site& site, const Circuit& circuit);

// No circuit: unknown. One that is the same as before keeps how it was known unless that is another now; the poles of a
// contact are of its circuit and go with it. What the old directory says stays.
void assign(Contact& contact, const std::optional<CircuitId>& circuit, const HowFound& found);

// "outlet.assign": these contacts are on that circuit, and one history entry for each outlet whose breaker or way of
// knowing it changes. Contacts that are not there are left out; an edit without changes: nothing to do.
[[nodiscard]] Edit assignmentEdit(const Site& site, const std::vector<OutletSocket>& contacts,
                                  const std::optional<CircuitId>& circuit, const HowFound& found,
                                  const RandomSource& random);

// Adds to the edit what the history will say of outlets that it assigns: kind "assignment", the outlet's id as subject,
// "upper: 1A-3 assumed -> 1A-5 traced" as text. `who` and `when` are of the one who assigns.
void noteAssignments(Edit& edit, const Site& site, const HowFound& found, const RandomSource& random);

}  // namespace cordreach::site
