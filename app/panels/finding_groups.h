// SPDX-License-Identifier: GPL-3.0-or-later
// Findings that are about the same thing, so that one cause is not read as a dozen: what a plugged-in machine brings
// with it stands together, whatever else it is about.
#pragma once

#include <string>
#include <vector>

#include "rules/finding.h"
#include "site/site.h"
#include "text/phrasebook.h"

namespace cordreach::app {

struct FindingGroup {
  rules::Subject about;
  std::vector<std::size_t> findings;  // worst first, as they come
};

// In the order of their worst.
[[nodiscard]] std::vector<FindingGroup> groupsOf(const std::vector<rules::Finding>& findings, std::size_t most);

// "5 more about Burnisher, 1500 rpm: CAUTION 3, NOTICE 2", of those behind the first.
[[nodiscard]] std::string restText(const text::Phrasebook& book, const site::Site& site,
                                   const std::vector<rules::Finding>& findings, const FindingGroup& group);

}  // namespace cordreach::app
