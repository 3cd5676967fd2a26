// SPDX-License-Identifier: GPL-3.0-or-later
#include "console/site_answer.h"

#include "io/site_file.h"
#include "rules/judge.h"
#include "study/assess.h"

namespace cordreach::console {

rules::Severity SiteAnswer::worst() const { return rules::worstOf(findings); }

SiteAnswer answerOf(site::Site site) {
  SiteAnswer result{std::move(site), {}, {}, {}};
  result.answer = study::assess(result.site);
  result.findings = rules::judge(result.site, result.answer);
  result.remedies = planning::remediesForAll(result.site, result.findings);
  return result;
}

base::Result<SiteAnswer> answerSite(const std::string& path) {
  base::Result<site::Site> site = io::loadSite(path);
  if (!site) return site.error();
  return answerOf(std::move(site).value());
}

}  // namespace cordreach::console
