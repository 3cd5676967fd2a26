// SPDX-License-Identifier: GPL-3.0-or-later
// Switching on a hookup's machine in one state of its panels: its run-up behind all that stands in front of it, the dip
// everywhere else, and the breaker through it.
#pragma once

#include <optional>
#include <vector>

#include "physics/start_machine.h"
#include "physics/start_run.h"
#include "physics/thevenin.h"
#include "site/site.h"
#include "study/answer.h"
#include "study/panel_states.h"
#include "study/start_answer.h"

namespace cordreach::study {

struct StartStudy {
  StartAnswer answer;
  physics::Thevenin supply;  // at the machine's terminals, its own cord in front of it
  physics::StartRun likely, easy, hard;
  std::vector<OutletDip> outlets;  // every live contact on the same panels, as the list of outlets; of a whole site's
};

// What starts at a hookup, as the site and the class's table know it.
[[nodiscard]] physics::StartMachine startMachineOf(const site::Site& site, const site::Hookup& hookup,
                                                   units::Voltage nominal);

// None: the machine is not on in that state, or no law fits its plate.
[[nodiscard]] std::optional<StartStudy> startStudyOf(const site::Site& site, const PanelStates& states,
                                                     const PanelState& state, const site::Hookup& hookup);

// The plate of something fixed, as it starts.
[[nodiscard]] physics::StartMachine startMachineOf(const site::FixedLoad& load, units::Voltage nominal);
// The same of something fixed that comes on in that state.
[[nodiscard]] std::optional<StartStudy> startStudyOf(const site::Site& site, const PanelStates& states,
                                                     const PanelState& state, const site::FixedLoad& load);

// Adds its start to the answer of a hookup, at the moment when its volts are lowest.
void addStart(const site::Site& site, const PanelStates& states, HookupAnswer& answer);

// The same of a site, by itself and whole, with every outlet's dip. None: it is never on.
[[nodiscard]] std::optional<StartStudy> startStudyOf(const site::Site& site, const site::Hookup& hookup);

}  // namespace cordreach::study
