// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/sockets.h"

namespace cordreach::rules {

namespace {

std::string nth(const std::vector<std::string>& sockets, std::size_t index) {
  return index < sockets.size() ? sockets[index] : std::string();
}

}  // namespace

std::string receptacleOf(const site::Socket& socket, const site::Site& site) {
  if (const auto* cord = std::get_if<site::CordSocket>(&socket)) {
    return nth(site.at<site::Cord>(cord->cord).sockets, cord->socket);
  }
  if (const auto* machine = std::get_if<site::MachineSocket>(&socket)) {
    return nth(site.at<site::Machine>(machine->machine).sockets, machine->socket);
  }
  const auto& place = std::get<site::OutletSocket>(socket);
  for (const site::Contact& contact : site.at<site::Outlet>(place.outlet).contacts) {
    if (contact.name == place.contact) return contact.receptacle;
  }
  return {};
}

std::size_t receptaclesOn(const site::Site& site, const site::CircuitId& circuit) {
  std::size_t count = 0;
  for (const site::Outlet& outlet : site.all<site::Outlet>()) {
    for (const site::Contact& contact : outlet.contacts) {
      if (contact.assignment && contact.assignment->circuit == circuit) ++count;
    }
  }
  return count;
}

bool isPoweredThrough(const site::Contact& contact, const std::optional<site::Hours>& hours) {
  if (!contact.poweredHours) return true;
  return hours && contact.poweredHours->from <= hours->from && hours->until <= contact.poweredHours->until;
}

}  // namespace cordreach::rules
