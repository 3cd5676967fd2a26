// SPDX-License-Identifier: GPL-3.0-or-later
// A site as its events have left it by a time of the planned day.
#pragma once

#include <map>
#include <set>
#include <vector>

#include "site/site.h"
#include "study/moments.h"

namespace cordreach::study {

class DayEvents {
 public:
  explicit DayEvents(const site::Site& site);

  // Goes on to that time, which is no earlier than the last.
  void applyUntil(units::Duration time);
  [[nodiscard]] const site::Site& site() const { return m_site; }
  // What is plugged in and on then.
  [[nodiscard]] Moment momentAt(units::Duration time) const;
  // A fixed load that was switched by an event.
  [[nodiscard]] bool isByHand(const site::FixedLoadId& load) const { return m_byHand.contains(load); }

 private:
  void apply(const site::Event& event);
  void applyToHookup(const site::Event& event);
  void applyToContact(const site::Event& event);

  site::Site m_site;
  std::vector<site::Event> m_ahead;  // the last first
  std::set<site::HookupId> m_pulled;
  std::map<site::FixedLoadId, bool> m_byHand;  // on or off
};

}  // namespace cordreach::study
