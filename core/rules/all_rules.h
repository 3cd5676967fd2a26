// SPDX-License-Identifier: GPL-3.0-or-later
// The functions behind the rows of the rule table, each in a file of its own name.
#pragma once

#include "rules/rule.h"

namespace cordreach::rules {

[[nodiscard]] Findings earthMissing(const Case&, const Rule&);
[[nodiscard]] Findings serviceOut(const Case&, const Rule&);
[[nodiscard]] Findings padOverspeed(const Case&, const Rule&);
[[nodiscard]] Findings heatBeyondModel(const Case&, const Rule&);

[[nodiscard]] Findings circuitNever(const Case&, const Rule&);
[[nodiscard]] Findings plugMisfit(const Case&, const Rule&);
[[nodiscard]] Findings cordChained(const Case&, const Rule&);
[[nodiscard]] Findings wetUnprotected(const Case&, const Rule&);
[[nodiscard]] Findings cordOverTag(const Case&, const Rule&);
[[nodiscard]] Findings receptacleOverRating(const Case&, const Rule&);
[[nodiscard]] Findings cordConductorOverRating(const Case&, const Rule&);
[[nodiscard]] Findings cordJacketOver60(const Case&, const Rule&);
[[nodiscard]] Findings plugOverRise(const Case&, const Rule&);
[[nodiscard]] Findings machineStall(const Case&, const Rule&);
[[nodiscard]] Findings startNever(const Case&, const Rule&);
[[nodiscard]] Findings faultNotCleared(const Case&, const Rule&);
[[nodiscard]] Findings deviceOverWire(const Case&, const Rule&);

[[nodiscard]] Findings contactDead(const Case&, const Rule&);
[[nodiscard]] Findings circuitAskFirst(const Case&, const Rule&);
[[nodiscard]] Findings breakerUnknown(const Case&, const Rule&);
[[nodiscard]] Findings breakerTrips(const Case&, const Rule&);
[[nodiscard]] Findings startTrips(const Case&, const Rule&);
[[nodiscard]] Findings leakageTrips(const Case&, const Rule&);
[[nodiscard]] Findings circuitOverRating(const Case&, const Rule&);
[[nodiscard]] Findings cordLighterThanMachine(const Case&, const Rule&);
[[nodiscard]] Findings machineVoltage(const Case&, const Rule&);
[[nodiscard]] Findings receptacleTwelveAmps(const Case&, const Rule&);
[[nodiscard]] Findings codeEightyPercent(const Case&, const Rule&);
[[nodiscard]] Findings neutralOverRating(const Case&, const Rule&);
[[nodiscard]] Findings receptacleTwentyOnFifteen(const Case&, const Rule&);
[[nodiscard]] Findings receptacleSingleFifteenOnTwenty(const Case&, const Rule&);

[[nodiscard]] Findings breakerTripsEarly(const Case&, const Rule&);
[[nodiscard]] Findings startTripsEarly(const Case&, const Rule&);
[[nodiscard]] Findings startDips(const Case&, const Rule&);
[[nodiscard]] Findings leakageMayTrip(const Case&, const Rule&);
[[nodiscard]] Findings faultClearedLate(const Case&, const Rule&);
[[nodiscard]] Findings faultOwnCord(const Case&, const Rule&);
[[nodiscard]] Findings dropBranch(const Case&, const Rule&);
[[nodiscard]] Findings dropTotal(const Case&, const Rule&);
[[nodiscard]] Findings outletOtherFloor(const Case&, const Rule&);
[[nodiscard]] Findings directoryDisagrees(const Case&, const Rule&);
[[nodiscard]] Findings unknownMatters(const Case&, const Rule&);

}  // namespace cordreach::rules
