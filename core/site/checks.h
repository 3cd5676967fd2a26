// SPDX-License-Identifier: GPL-3.0-or-later
// The parts of checkInvariants: each looks at the whole site for one sort of fault. For invariants.cpp only.
#pragma once

#include <optional>
#include <string>

#include "base/error.h"
#include "site/kinds.h"
#include "site/pointer_step.h"
#include "site/site.h"

namespace cordreach::site {

using Fault = std::optional<base::Error>;

// Where a thing stands in the written file: "/circuits/3".
template <class T>
[[nodiscard]] std::string pointerTo(const Site& site, const T& thing) {
  const auto at = &thing - &*site.all<T>().begin();
  return "/" + std::string(kKindKey<T>) + "/" + std::to_string(at);
}

// Each of these expects that every id leads somewhere.
[[nodiscard]] Fault wiringFault(const Site& site);    // panels, circuits, phases, runs
[[nodiscard]] Fault socketFault(const Site& site);    // contacts, inlets, sockets that are named are there
[[nodiscard]] Fault pluggingFault(const Site& site);  // one plug a socket, one socket a plug, no loop
[[nodiscard]] Fault eventFault(const Site& site);     // each is about one thing of the right sort

}  // namespace cordreach::site
