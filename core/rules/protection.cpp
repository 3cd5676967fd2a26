// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/protection.h"

#include <algorithm>

namespace cordreach::rules {

namespace {

const site::Run* runTo(const site::OutletId& outlet, const site::CircuitId& circuit, const site::Site& site) {
  for (const site::Run& run : site.all<site::Run>()) {
    if (run.to == outlet && run.circuit == circuit) return &run;
  }
  return nullptr;
}

bool anyDeviceOn(const site::CircuitId& circuit, const site::Site& site) {
  const auto& outlets = site.all<site::Outlet>();
  return std::any_of(outlets.begin(), outlets.end(), [&](const site::Outlet& outlet) {
    return outlet.groundFaultDevice &&
           std::any_of(outlet.contacts.begin(), outlet.contacts.end(), [&](const site::Contact& contact) {
             return contact.assignment && contact.assignment->circuit == circuit;
           });
  });
}

}  // namespace

Protection protectionAt(const site::Outlet& outlet, const site::Contact& contact, const site::Site& site) {
  if (outlet.groundFaultDevice) return Protection::Receptacle;
  if (!contact.assignment) return Protection::Unknown;
  const site::Circuit& circuit = site.at<site::Circuit>(contact.assignment->circuit);
  if (circuit.groundFault) return Protection::Breaker;
  const site::Outlet* at = &outlet;
  for (std::size_t step = 0; step <= site.all<site::Run>().size(); ++step) {
    const site::Run* run = runTo(at->id, circuit.id, site);
    if (run == nullptr) return anyDeviceOn(circuit.id, site) ? Protection::Unknown : Protection::None;
    if (!run->from) return Protection::None;
    at = &site.at<site::Outlet>(*run->from);
    if (at->groundFaultDevice) return Protection::Receptacle;
  }
  return Protection::None;
}

Protection protectionOf(const HookupCase& hookup, const site::Site& site) {
  const bool inLine = std::any_of(hookup.chain.begin(), hookup.chain.end(),
                                  [](const Link& link) { return link.make().groundFaultDevice; });
  if (inLine) return Protection::InLine;
  if (hookup.contact == nullptr) return Protection::Unknown;
  return protectionAt(*hookup.outlet, *hookup.contact, site);
}

}  // namespace cordreach::rules
