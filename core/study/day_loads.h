// SPDX-License-Identifier: GPL-3.0-or-later
// One load's switching within a span of the day: plain, by its cycle, or as a battery fills.
#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "physics/start_machine.h"
#include "site/outlet.h"
#include "timeline/day.h"

namespace cordreach::study {

struct LoadSpan {
  timeline::LoadPlace place;
  std::shared_ptr<const physics::LoadLaw> law;
  units::Duration from;  // since the run's start
  units::Duration until;
  bool untilTheEnd = false;                    // of the run: it is not switched off there
  std::optional<timeline::StartPeak> start{};  // each time that it comes on
  std::optional<site::Cycle> cycle{};          // `firstOn` since the run's start, and known
  std::optional<site::Charge> charge{};        // begun at `from`
};

// Adds its switching; of a cycle or a charge from then to then.
void addChanges(const LoadSpan& span, std::vector<timeline::Change>& changes);

// What a machine draws while it comes up to speed, typically, and for how long; none: no more than running. Its amps as
// stated, by its code letter, else as its class has them.
[[nodiscard]] std::optional<timeline::StartPeak> startPeakOf(const physics::StartMachine& machine);

}  // namespace cordreach::study
