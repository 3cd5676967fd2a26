// SPDX-License-Identifier: GPL-3.0-or-later
// The answer of `start` as a page and as JSON.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "console/start_question.h"
#include "rules/finding.h"
#include "study/start_study.h"
#include "text/phrasebook.h"

namespace cordreach::console {

struct StartReply {
  const StartQuestion& question;
  const study::StartStudy& study;
  std::vector<rules::Finding> findings;  // about this start, worst first

  // A machine that never comes up is a WARNING whether or not it would run on; one that may not, a NOTICE.
  [[nodiscard]] rules::Severity severity() const;
};

[[nodiscard]] std::string startJson(const StartReply& reply);
[[nodiscard]] std::string startPage(const StartReply& reply, const text::Phrasebook& book, bool color);

}  // namespace cordreach::console
