// SPDX-License-Identifier: GPL-3.0-or-later
#include "planning/plug.h"

#include <algorithm>
#include <random>
#include <string>

#include "site/events.h"
#include "site/new_id.h"
#include "site/queries.h"

namespace cordreach::planning {

namespace {

void findEnd(Plugging& plugging, const site::Site& site) {
  const auto* end = std::get_if<site::OutletSocket>(plugging.chain.front().socket);
  if (end == nullptr) return;
  plugging.outlet = &site.at<site::Outlet>(end->outlet);
  plugging.contact = site::contactOf(site, *end);
  plugging.circuit = site::circuitOf(site, *end);
}

}  // namespace

Plugging pluggingOf(const site::Hookup& hookup, const site::Site& site) {
  Plugging plugging;
  plugging.hookup = &hookup;
  plugging.chain = rules::chainOf(hookup, site);
  plugging.machine = plugging.chain.back().machine;
  plugging.inlet = plugging.chain.back().inlet;
  if (plugging.chain.size() > 1) {
    const rules::Link& before = plugging.chain[plugging.chain.size() - 2];
    plugging.extension = before.use;
    plugging.cord = before.cord;
  }
  findEnd(plugging, site);
  return plugging;
}

std::vector<const site::Hookup*> usersOf(const site::ExtensionUse& use, const site::Site& site) {
  std::vector<const site::Hookup*> users;
  for (const site::Hookup& hookup : site.all<site::Hookup>()) {
    const auto* socket = std::get_if<site::CordSocket>(&hookup.socket);
    if (socket != nullptr && socket->cord == use.cord && rules::together(hookup.hours, use.hours)) {
      users.push_back(&hookup);
    }
  }
  return users;
}

std::vector<site::AnyChange> replug(const Plugging& plugging, const site::Socket& socket, const site::Site& site) {
  site::Hookup after = *plugging.hookup;
  after.socket = socket;
  std::vector<site::AnyChange> changes{site::Change<site::Hookup>{*plugging.hookup, after}};
  if (plugging.extension != nullptr && usersOf(*plugging.extension, site).size() <= 1) {
    const auto gone = site::eventsGoneWith(site, plugging.extension->id);
    changes.insert(changes.end(), gone.begin(), gone.end());
    changes.emplace_back(site::Change<site::ExtensionUse>{*plugging.extension, std::nullopt});
  }
  return changes;
}

// The same question gives the same id: an offer made twice is one edit.
site::ExtensionUse newUse(const site::Cord& cord, const site::Hookup& hookup, const site::OutletSocket& socket,
                          const site::Site& site) {
  const std::string stem = cord.id.text() + "/" + hookup.id.text();
  std::seed_seq seed(stem.begin(), stem.end());
  std::mt19937_64 engine(seed);
  return {site::newId<site::ExtensionUse>(site, [&] { return engine(); }), cord.id, socket, hookup.hours, {}, {}};
}

}  // namespace cordreach::planning
