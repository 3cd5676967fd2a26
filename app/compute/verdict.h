// SPDX-License-Identifier: GPL-3.0-or-later
// One numbered result of one snapshot: answer, findings, remedies. Nothing in it changes any more.
#pragma once

#include <cstdint>
#include <memory>
#include <vector>

#include "planning/remedy.h"
#include "rules/finding.h"
#include "site/site.h"
#include "study/answer.h"

namespace cordreach::app {

struct Verdict {
  std::uint64_t number = 0;  // of its request
  bool supposed = false;     // of a site that is only being tried
  std::shared_ptr<const site::Site> site;
  study::Answer answer;
  std::vector<rules::Finding> findings;                 // worst first
  std::vector<std::vector<planning::Remedy>> remedies;  // of each finding; empty while supposed
};

}  // namespace cordreach::app
