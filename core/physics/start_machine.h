// SPDX-License-Identifier: GPL-3.0-or-later
// Any machine switched on, from its plate: by its torque and inertia where it is an induction or a dc machine, else by
// its class. Inertia, speed, drag and locked-rotor torque that nobody stated come from start_inertia.csv (own, with a
// band): by kind and class of machine, else by class alone.
#pragma once

#include <optional>
#include <string>

#include "base/result.h"
#include "physics/start_class.h"
#include "physics/start_run.h"
#include "physics/thevenin.h"

namespace cordreach::physics {

struct StartMachine {
  Nameplate plate;
  std::string kind{};                   // key of the machine kinds: "burnisher", "slow-machine", ...; may be empty
  std::optional<double> inertiaKgM2{};  // of all that turns, at the plate's speed
  std::optional<char> codeLetter{};     // used with a shaft power, where no locked-rotor amps are stated
};

// Locked-rotor amps at plate volts: stated, by code letter, or the class's multiple; Low the least.
// Error: motor.unknown_code_letter.
[[nodiscard]] base::Result<units::Current> startAmps(const StartMachine& machine, StartEdge edge);

// Low: the easy end of all that is uncertain (little inertia and drag, much torque, few amps), High the hard end.
// Errors: those of makeLoadLaw and startAmps.
[[nodiscard]] base::Result<StartRun> startOf(const StartMachine& machine, StartEdge edge, const Thevenin& supply);

// Whether its pad is to be off the floor while it starts.
[[nodiscard]] bool startsTipped(const StartMachine& machine);

}  // namespace cordreach::physics
