// SPDX-License-Identifier: GPL-3.0-or-later
// The volts at every outlet if one machine ran there: straight on its own cord, beside the building's fixed loads and
// nothing else that is plugged in. One study of the outlet's panel each; likely values.
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "base/progress.h"
#include "planning/plug_start.h"
#include "site/site.h"

namespace cordreach::planning {

struct TestedOutlet {
  site::OutletId outlet;
  PlugStart start = PlugStart::Free;         // of its best contact; nothing is tried from DoesNotFit on
  std::optional<units::Voltage> atOutlet{};  // none: not tried, or nobody knows its breaker
  units::Voltage atMachine{};                // at its terminals
  bool tooLow = false;                       // less there than the plate allows, or the motor stalls
};

using TestedOutlets = std::vector<TestedOutlet>;

// By the order of the outlets' ids, those of `first` before the others. The machine is in the site and has an inlet; of
// several the hungriest is tried. `tell` hears each outlet as it is done. Stopped early, the rest is missing.
void testEverywhere(const site::Site& site, const site::MachineId& machine, const std::optional<site::FloorId>& first,
                    const base::Progress& progress, const std::function<void(const TestedOutlet&)>& tell);

}  // namespace cordreach::planning
