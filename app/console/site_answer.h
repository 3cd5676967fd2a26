// SPDX-License-Identifier: GPL-3.0-or-later
// One site read, studied, judged, with remedies: what `assess` prints as JSON or as a page.
#pragma once

#include <string>
#include <vector>

#include "base/result.h"
#include "planning/remedy.h"
#include "rules/finding.h"
#include "site/site.h"
#include "study/answer.h"

namespace cordreach::console {

struct SiteAnswer {
  site::Site site;
  study::Answer answer;
  std::vector<rules::Finding> findings;                 // worst first
  std::vector<std::vector<planning::Remedy>> remedies;  // of each finding

  [[nodiscard]] rules::Severity worst() const;
};

// Errors: those of io::loadSite.
[[nodiscard]] base::Result<SiteAnswer> answerSite(const std::string& path);

// From a site that holds its invariants.
[[nodiscard]] SiteAnswer answerOf(site::Site site);

}  // namespace cordreach::console
