// SPDX-License-Identifier: GPL-3.0-or-later
// What decides about a cord on which the machine does not run: that, and not the amps of a machine that stands, which
// fall as the cord gets longer.
#include "planning/cord_judging.h"

#include <gtest/gtest.h>

#include "planning/cord_choice.h"
#include "small_building.h"

namespace cordreach::planning {
namespace {

CordQuestion inductionMachine() {
  CordQuestion asked;
  asked.name = "Burnisher";
  asked.inlet.name = "A";
  asked.inlet.loadClass = tables::LoadClass::Induction;
  asked.inlet.plate = site::known(15.0 * ampere);
  asked.inlet.cord = SmallBuilding::make(14, 50.0);
  asked.distance = 120.0 * foot;
  asked.breaker = 20.0 * ampere;
  asked.run = site::known(60.0 * foot);
  asked.runSize = site::known(units::WireSize::awg(12));
  return asked;
}

TEST(CordJudging, SaysThatTheMachineDoesNotRunHoweverLongTheCord) {
  const CordQuestion asked = inductionMachine();
  std::vector<site::Cord> cords;
  for (const double feet : {100.0, 125.0, 150.0, 200.0}) {
    cords.push_back(stockCord(asked.inlet.cord, units::WireSize::awg(18), feet * foot));
  }
  for (const CordCandidate& candidate : judgeCords(asked, cords, {})) {
    EXPECT_EQ(candidate.limit, "machine.stall") << candidate.length.in(foot);
    EXPECT_EQ(candidate.verdict, rules::Severity::Warning) << candidate.length.in(foot);
    EXPECT_FALSE(limitOfFinding(candidate.limit).has_value());  // no share of anything
  }
}

TEST(CordJudging, IsNeverBetterOnALongerOrThinnerCord) {
  const CordQuestion asked = inductionMachine();
  for (const int gauge : {18, 16, 14, 12, 10}) {
    auto before = rules::Severity::Ok;
    for (const double feet : {25.0, 50.0, 75.0, 100.0, 125.0, 150.0}) {
      const auto cord = stockCord(asked.inlet.cord, units::WireSize::awg(gauge), feet * foot);
      const CordCandidate candidate = judgeCords(asked, {cord}, {}).front();
      EXPECT_GE(candidate.verdict, before) << gauge << " AWG, " << feet << " ft";
      before = candidate.verdict;
    }
  }
}

}  // namespace
}  // namespace cordreach::planning
