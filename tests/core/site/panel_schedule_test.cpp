// SPDX-License-Identifier: GPL-3.0-or-later
#include "site/panel_schedule.h"

#include <gtest/gtest.h>

namespace cordreach::site {
namespace {

Circuit numbered(const std::string& number, std::size_t poles = 1) {
  Circuit circuit{.id = CircuitId("c" + number), .panel = PanelId("P"), .number = number};
  circuit.phases.resize(poles);
  return circuit;
}

Site withCircuits(const std::vector<Circuit>& circuits, std::optional<int> spaces = std::nullopt) {
  Site site{SiteId("s")};
  Panel panel{.id = PanelId("P"), .name = "P"};
  if (spaces) panel.spaces = known(*spaces);
  site.all<Panel>().put(panel);
  for (const Circuit& circuit : circuits) site.all<Circuit>().put(circuit);
  return site;
}

TEST(PanelSchedule, ReadsSpacesOutOfWhatStandsOnThePanel) {
  using Spaces = std::vector<int>;
  EXPECT_EQ(spacesOf(numbered("5")), Spaces{5});
  EXPECT_EQ(spacesOf(numbered("5", 2)), (Spaces{5, 7}));
  EXPECT_EQ(spacesOf(numbered("6", 3)), (Spaces{6, 8, 10}));
  EXPECT_EQ(spacesOf(numbered("1/3", 2)), (Spaces{1, 3}));
  EXPECT_EQ(spacesOf(numbered("1-3", 2)), (Spaces{1, 3}));
  EXPECT_EQ(spacesOf(numbered("5B")), Spaces{5});
  EXPECT_TRUE(spacesOf(numbered("main")).empty());
  EXPECT_TRUE(spacesOf(numbered("0")).empty());
  EXPECT_TRUE(spacesOf(numbered("4000000000000")).empty());
  EXPECT_TRUE(spacesOf(numbered("")).empty());
}

TEST(PanelSchedule, HasAsManySpacesAsSaidAndNoFewerThanUsed) {
  EXPECT_EQ(scheduleOf(withCircuits({}), PanelId("P")).spaces.size(), 0U);
  EXPECT_EQ(scheduleOf(withCircuits({}, 42), PanelId("P")).spaces.size(), 42U);
  EXPECT_EQ(scheduleOf(withCircuits({numbered("13")}, 12), PanelId("P")).spaces.size(), 14U);
}

TEST(PanelSchedule, ShowsTandemsAndFurtherPoles) {
  const Site site = withCircuits({numbered("1A"), numbered("1B"), numbered("2", 2), numbered("sump")});
  const PanelSchedule schedule = scheduleOf(site, PanelId("P"));
  ASSERT_EQ(schedule.spaces.size(), 4U);
  EXPECT_EQ(schedule.spaces[0].circuits, (std::vector{CircuitId("c1A"), CircuitId("c1B")}));
  EXPECT_EQ(schedule.spaces[1].circuits, std::vector{CircuitId("c2")});
  EXPECT_FALSE(schedule.spaces[1].continues);
  EXPECT_TRUE(schedule.spaces[2].circuits.empty());
  EXPECT_EQ(schedule.spaces[3].circuits, std::vector{CircuitId("c2")});
  EXPECT_TRUE(schedule.spaces[3].continues);
  EXPECT_EQ(schedule.elsewhere, std::vector{CircuitId("csump")});
}

TEST(PanelSchedule, PhasesGoRoundFromRowToRow) {
  EXPECT_EQ(phaseOfSpace(1, 2), 0U);
  EXPECT_EQ(phaseOfSpace(2, 2), 0U);
  EXPECT_EQ(phaseOfSpace(3, 2), 1U);
  EXPECT_EQ(phaseOfSpace(5, 2), 0U);
  EXPECT_EQ(phaseOfSpace(6, 3), 2U);
}

}  // namespace
}  // namespace cordreach::site
