// SPDX-License-Identifier: GPL-3.0-or-later
// What can be done about a finding: its remedy, tried again on the site as it now is, or a CAUTION taken by name.
#pragma once

#include <optional>
#include <string>

#include "base/result.h"
#include "compute/verdict.h"
#include "site/edit.h"

namespace cordreach::app {

// The remedy's edit, when it still mends its finding on this site and makes nothing else worse. What was tried on just
// this site is not tried again. Error: remedy.no_longer.
[[nodiscard]] base::Result<site::Edit> triedAgain(const site::Site& present, const Verdict& verdict,
                                                  std::size_t finding, std::size_t remedy);

struct AcceptanceNote {
  std::string who;
  std::string reason;
  std::string when{};  // ISO 8601 date
};

[[nodiscard]] bool mayBeAccepted(const rules::Finding& finding);  // a CAUTION that is not yet

// "finding.accept". Errors: accept.not_a_caution, accept.no_name, accept.no_reason.
[[nodiscard]] base::Result<site::Edit> acceptEdit(const site::Site& site, const rules::Finding& finding,
                                                  const AcceptanceNote& note);

[[nodiscard]] const site::Acceptance* acceptanceOf(const site::Site& site, const rules::Finding& finding);

// "finding.take_back". Error: field.gone.
[[nodiscard]] base::Result<site::Edit> takeBackEdit(const site::Site& site, const site::AcceptanceId& id);

}  // namespace cordreach::app
