// SPDX-License-Identifier: GPL-3.0-or-later
// A fault at the end of one extension, put into a tiny building that goes through the same study as any site, so that
// every place of the program says the same.
#pragma once

#include <optional>

#include "physics/breaker_trip.h"
#include "physics/fault_arc.h"
#include "rules/finding.h"
#include "site/equipment.h"
#include "site/supply.h"
#include "study/answer.h"

namespace cordreach::planning {

struct FaultQuestion {
  site::CordMake cord;
  physics::Breaker breaker;  // by IEC 60898-1 on 230 V, else on 120 V
  bool mayNotTrip = false;
  site::Known<units::Length> run;         // panel to outlet; none: guessed
  site::Known<units::WireSize> runSize;   // none: by the breaker
  units::Current carrying{};              // through the cord before, for two hours
  std::optional<units::Temperature> air;  // of room, wall and panel
  bool earthBroken = false;
  bool groundFaultDevice = false;
  site::SupplyKindOfSource source = site::SupplyKindOfSource::Utility;
  site::Known<units::Current> sourceLimit;  // of a generator or inverter
};

struct FaultCheck {
  study::FaultAnswer fault;
  std::optional<physics::ArcCurrent> arc;    // instead of a fault without a resistance
  physics::TripTimes arcCleared;             // at its smaller current
  study::Band<units::Voltage> frame;         // of a failed machine at the end
  std::optional<units::Duration> frameLive;  // for how long most likely; at most, for whoever touches it behind a
                                             // ground-fault device without an earth. None: for good
  rules::Severity verdict;
  std::string reason;  // "fault.cleared", "fault.late", "fault.burns", "fault.not_claimed", "fault.frame_live"
};

[[nodiscard]] FaultCheck checkFault(const FaultQuestion& question);

}  // namespace cordreach::planning
