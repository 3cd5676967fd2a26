// SPDX-License-Identifier: GPL-3.0-or-later
#include "site/events.h"

namespace cordreach::site {

namespace {

template <class Id>
std::vector<AnyChange> goneWith(const Site& site, std::optional<Id> Event::*about, const Id& id) {
  std::vector<AnyChange> changes;
  for (const Event& event : site.all<Event>()) {
    if (event.*about == id) changes.emplace_back(Change<Event>{event, std::nullopt});
  }
  return changes;
}

}  // namespace

std::vector<AnyChange> eventsGoneWith(const Site& site, const HookupId& id) {
  return goneWith(site, &Event::hookup, id);
}

std::vector<AnyChange> eventsGoneWith(const Site& site, const ExtensionUseId& id) {
  return goneWith(site, &Event::extension, id);
}

}  // namespace cordreach::site
