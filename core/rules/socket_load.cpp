// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/socket_load.h"

#include <algorithm>

#include "study/assumptions.h"

namespace cordreach::rules {

std::vector<SocketLoad> contactLoads(const Case& in) {
  std::vector<SocketLoad> loads;
  for (const HookupCase& hookup : in.hookups()) {
    if (hookup.contact == nullptr) continue;
    const auto known = std::find_if(loads.begin(), loads.end(),
                                    [&](const SocketLoad& load) { return load.worst->contact == hookup.contact; });
    const units::Current sum = hookup.answer->socketPlateSum;
    if (known == loads.end()) {
      loads.push_back({hookup.contact->receptacle, sum, nullptr, &hookup, {&hookup}});
      continue;
    }
    known->users.push_back(&hookup);
    if (sum > known->plateSum) {
      known->plateSum = sum;
      known->worst = &hookup;
    }
  }
  // Only those who share the worst moment share its sum.
  for (SocketLoad& load : loads) {
    std::erase_if(load.users, [&](const HookupCase* user) {
      return user->answer->socketPlateSum < load.plateSum || !together(user->hookup->hours, load.worst->hookup->hours);
    });
  }
  return loads;
}

std::vector<SocketLoad> passThroughLoads(const Case& in) {
  std::vector<SocketLoad> loads;
  for (const CordCase& cord : in.cords()) {
    if (!cord.link.own() || cord.users.size() < 2 || cord.link.machine->sockets.empty()) continue;
    const units::Current beyond = cord.answer->plateSum - study::plateOf(*cord.link.inlet);
    loads.push_back({cord.link.machine->sockets.front(), beyond, cord.link.machine, cord.at, cord.users});
  }
  return loads;
}

}  // namespace cordreach::rules
