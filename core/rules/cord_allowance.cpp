// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/cord_allowance.h"

#include <algorithm>

#include "rules/ratings.h"
#include "study/assumptions.h"

namespace cordreach::rules {

namespace {

void consider(std::vector<CordAllowance>& all, const char* by, const std::optional<units::Current>& rated,
              units::Current used) {
  if (rated && used.si() > 0.0) all.push_back({by, *rated, used});
}

}  // namespace

std::optional<CordAllowance> tightestAllowance(const CordCase& cord, const Case& in) {
  const units::Current plate = cord.answer->plateSum;
  const units::Current larger = std::max(plate, cord.answer->current.likely);
  const site::CordMake& make = cord.link.make();
  std::vector<CordAllowance> all;
  if (!cord.link.own() && cord.link.cord->tag) consider(all, "tag", cord.link.cord->tag->value, plate);
  consider(all, "table", cordAmpacity(make, study::roomOf(in.site())), larger);
  consider(all, "plug", receptacleRating(make.plug), plate);
  if (!cord.link.own()) {
    for (const std::string& socket : cord.link.cord->sockets) {
      if (cord.link.cord->sockets.size() == 1) consider(all, "connector", receptacleRating(socket), plate);
    }
  }
  const auto at = std::max_element(all.begin(), all.end(), [](const CordAllowance& a, const CordAllowance& b) {
    return a.fraction() < b.fraction();
  });
  if (at == all.end()) return {};
  return *at;
}

}  // namespace cordreach::rules
