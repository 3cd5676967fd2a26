// SPDX-License-Identifier: GPL-3.0-or-later
// More through a cord than its tag, its table ampacity, its plug or its connector allows. A machine's own cord too.
// Tag, plug and connector are held against nameplate amps, the table against the larger of nameplate and solved amps.
#include <algorithm>

#include "rules/all_rules.h"
#include "rules/finding_builder.h"
#include "rules/ratings.h"
#include "study/assumptions.h"

namespace cordreach::rules {

namespace {

struct Allowance {
  const char* by;
  units::Current rated;
  units::Current used;

  [[nodiscard]] double fraction() const { return used / rated; }
};

void consider(std::vector<Allowance>& all, const char* by, const std::optional<units::Current>& rated,
              units::Current used) {
  if (rated && used.si() > 0.0) all.push_back({by, *rated, used});
}

// The one that is used most.
std::optional<Allowance> tightest(const CordCase& cord, const Case& in) {
  const units::Current plate = cord.answer->plateSum;
  const units::Current larger = std::max(plate, cord.answer->current.likely);
  const site::CordMake& make = cord.link.make();
  std::vector<Allowance> all;
  if (!cord.link.own() && cord.link.cord->tag) consider(all, "tag", cord.link.cord->tag->value, plate);
  consider(all, "table", cordAmpacity(make, study::roomOf(in.site())), larger);
  consider(all, "plug", receptacleRating(make.plug), plate);
  if (!cord.link.own()) {
    for (const std::string& socket : cord.link.cord->sockets) {
      if (cord.link.cord->sockets.size() == 1) consider(all, "connector", receptacleRating(socket), plate);
    }
  }
  const auto at = std::max_element(all.begin(), all.end(),
                                   [](const Allowance& a, const Allowance& b) { return a.fraction() < b.fraction(); });
  if (at == all.end()) return {};
  return *at;
}

}  // namespace

Findings cordOverTag(const Case& in, const Rule& rule) {
  Findings found;
  for (const CordCase& cord : in.cords()) {
    const auto limit = tightest(cord, in);
    if (!limit || !exceeds(limit->fraction(), rule.limitFraction())) continue;
    FindingBuilder finding(rule);
    finding.about(cord.link);
    for (const HookupCase* user : cord.users) {
      finding.about(*user, in);
      const units::Current plate = study::plateOf(*user->inlet);
      finding.why("share.machine",
                  {text("machine", user->machine->name), amperes("plate_a", plate),
                   amperes("current_a", user->answer->current.likely)},
                  std::min(1.0, plate / std::max(cord.answer->plateSum, plate)));
    }
    finding.with(text("rated_by", limit->by)).with(amperes("rated_a", limit->rated));
    finding.with(amperes("used_a", limit->used)).with(amperes("plate_a", cord.answer->plateSum));
    finding.with(amperes("current_a", cord.answer->current.likely));
    found.push_back(finding.done());
  }
  return found;
}

}  // namespace cordreach::rules
