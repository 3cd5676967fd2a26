// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/circuit_load.h"

#include <algorithm>

namespace cordreach::rules {

units::Current countedLoad(const study::CircuitAnswer& answer, const site::Circuit& circuit) {
  if (circuit.phases.size() > 1) return answer.current.likely;
  return std::max(answer.current.likely, answer.plateSum);
}

std::vector<const HookupCase*> sharing(const study::CircuitAnswer& answer, const Case& in) {
  std::vector<const HookupCase*> found;
  for (const HookupCase& hookup : in.hookups()) {
    const bool shares = std::any_of(answer.shares.begin(), answer.shares.end(),
                                    [&](const study::Share& share) { return share.hookup == hookup.hookup->id; });
    if (shares) found.push_back(&hookup);
  }
  return found;
}

}  // namespace cordreach::rules
