// SPDX-License-Identifier: GPL-3.0-or-later
// An edit that might mend a finding, before it is tried. One kind of edit a file: candidate_<kind>.cpp.
#pragma once

#include <string>
#include <vector>

#include "rules/case.h"
#include "rules/finding.h"
#include "site/edit.h"

namespace cordreach::planning {

struct Candidate {
  std::string code;
  base::Arguments arguments;
  site::Edit edit;
  std::vector<site::HookupId> hookups;  // whose plug, cord or hours it changes; the first speaks for it afterwards
};

using Candidates = std::vector<Candidate>;

// What a kind of edit is made from: one of the hookups that a finding colours.
struct Trouble {
  const site::Site& site;
  const site::Hookup& hookup;
  const rules::Finding& finding;
};

// Each in its own order of merit, at most a few.
[[nodiscard]] Candidates movesToOutlet(const Trouble& trouble);  // "move.outlet": no extension
[[nodiscard]] Candidates otherCords(const Trouble& trouble);     // "use.cord", "out_of_service": same outlet
[[nodiscard]] Candidates unrollings(const Trouble& trouble);     // "unroll"
[[nodiscard]] Candidates otherPads(const Trouble& trouble);      // "use.pad"
[[nodiscard]] Candidates movesWithCord(const Trouble& trouble);  // "move.outlet_with_cord"
[[nodiscard]] Candidates throughDevice(const Trouble& trouble);  // the same: an in-line device at the outlet it is at
[[nodiscard]] Candidates laterHours(const Trouble& trouble);     // "later"

}  // namespace cordreach::planning
