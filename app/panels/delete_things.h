// SPDX-License-Identifier: GPL-3.0-or-later
// Taking things out of a site in one edit, with all that can't be without them, and what goes along said.
#pragma once

#include <string>
#include <vector>

#include "rules/finding.h"
#include "site/edit.h"
#include "site/site.h"

namespace cordreach::app {

struct GoneAlong {
  std::size_t panels = 0;
  std::size_t circuits = 0;
  std::size_t runs = 0;
  std::size_t loads = 0;
  std::size_t hookups = 0;
  std::size_t extensions = 0;   // put away, the cords stay in the cart
  std::size_t unassigned = 0;   // contacts whose breaker is then unknown
  std::size_t acceptances = 0;  // of findings about what is gone

  [[nodiscard]] bool nothing() const { return *this == GoneAlong{}; }
  friend bool operator==(const GoneAlong&, const GoneAlong&) = default;
};

struct Deletion {
  site::Edit edit;  // "thing.delete"; without changes when nothing named is there
  GoneAlong along;  // beyond what was named
};

// A panel takes its circuits and the panels it feeds along; a circuit its runs and fixed loads; an outlet its runs and
// pluggings, while fixed loads that were plugged in there stay on their circuit; a machine or cord its pluggings.
[[nodiscard]] Deletion deletionOf(const site::Site& site, const std::vector<rules::Subject>& subjects);

}  // namespace cordreach::app
