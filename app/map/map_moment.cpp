// SPDX-License-Identifier: GPL-3.0-or-later
#include "map/map_moment.h"

#include <set>

namespace cordreach::app {

void MapMoment::choose(const std::optional<units::Duration>& time) {
  if (time == m_chosen) return;
  m_chosen = time;
  emit changed();
}

std::vector<units::Duration> momentsOf(const site::Site& site) {
  std::set<units::Duration> times;
  for (const site::Hookup& hookup : site.all<site::Hookup>()) {
    if (hookup.hours) times.insert(hookup.hours->from);
  }
  return {times.begin(), times.end()};
}

}  // namespace cordreach::app
