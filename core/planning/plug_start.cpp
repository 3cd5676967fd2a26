// SPDX-License-Identifier: GPL-3.0-or-later
#include "planning/plug_start.h"

#include "rules/sockets.h"
#include "site/queries.h"
#include "tables/receptacles.h"

namespace cordreach::planning {

bool isUsable(const site::Contact& contact, const std::optional<site::Hours>& hours) {
  if (contact.dead || contact.switched || contact.loose || contact.blocked || contact.lockedCover) return false;
  return rules::isPoweredThrough(contact, hours);
}

PlugStart plugStartAt(const site::Site& site, const std::string& plug, const site::Contact& contact) {
  const site::Circuit* circuit = contact.assignment ? site.find<site::Circuit>(contact.assignment->circuit) : nullptr;
  const site::UseClass use = site::useOf(contact, circuit);
  if (use == site::UseClass::Never) return PlugStart::Never;
  if (!isUsable(contact, {})) return PlugStart::Unusable;
  if (!tables::plugFits(plug, contact.receptacle).value_or(true)) return PlugStart::DoesNotFit;
  return use == site::UseClass::AskFirst ? PlugStart::AskFirst : PlugStart::Free;
}

std::pair<PlugStart, const site::Contact*> bestPlugStart(const site::Site& site, const std::string& plug,
                                                         const site::Outlet& outlet) {
  std::pair<PlugStart, const site::Contact*> best{PlugStart::Unusable, nullptr};
  for (const site::Contact& contact : outlet.contacts) {
    const PlugStart start = plugStartAt(site, plug, contact);
    if (best.second == nullptr || start < best.first) best = {start, &contact};
  }
  return best;
}

std::string_view nameOf(PlugStart start) {
  switch (start) {
    case PlugStart::Free:
      return "free";
    case PlugStart::AskFirst:
      return "ask_first";
    case PlugStart::DoesNotFit:
      return "does_not_fit";
    case PlugStart::Unusable:
      return "unusable";
    case PlugStart::Never:
      break;
  }
  return "never";
}

}  // namespace cordreach::planning
