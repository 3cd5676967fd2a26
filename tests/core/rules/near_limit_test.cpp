// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/near_limit.h"

#include <gtest/gtest.h>

#include "tiny_site.h"

namespace cordreach::rules {
namespace {

site::FixedLoad load(const char* id, double amperes) {
  site::FixedLoad one{.id = site::FixedLoadId(id), .name = id, .circuit = site::CircuitId("c1")};
  one.running = site::known(amperes * ampere);
  return one;
}

std::string reasonFor(const std::vector<site::FixedLoad>& loads) {
  TinySite tiny;
  for (const site::FixedLoad& one : loads) tiny.put(one);
  const auto list = nearLimit(tiny.site);
  return list.empty() ? "" : std::string(nameOf(list.front().reason));
}

TEST(NearLimit, SaysWhyACircuitIsFull) {
  EXPECT_EQ(reasonFor({load("pc", 3.5), load("heater", 12.5)}), "loaded");
  EXPECT_EQ(reasonFor({load("pc", 3.5), load("heater", 6.0)}), "");
  site::FixedLoad oven = load("oven", 12.0);
  oven.cycle = site::Cycle{3.0 * minute, 27.0 * minute};
  EXPECT_EQ(reasonFor({oven, load("cooler", 5.0)}), "together");
  EXPECT_EQ(reasonFor({oven}), "");  // rarely on
  site::FixedLoad vending = load("vending", 8.3);
  vending.cycle = site::Cycle{7.0 * minute, 13.0 * minute};
  EXPECT_EQ(reasonFor({vending, load("snacks", 2.2)}), "before_any");
  site::FixedLoad charger = load("charger", 10.0);
  charger.hours = site::Hours{20.0 * hour, 30.0 * hour};
  EXPECT_EQ(reasonFor({charger}), "all_night");
}

TEST(NearLimit, LeavesOutCircuitsThatNobodyMayUse) {
  TinySite tiny;
  tiny.put(load("server", 18.0));
  EXPECT_EQ(nearLimit(tiny.site).size(), 1u);
  site::Circuit circuit = tiny.circuit();
  circuit.use = site::UseClass::Never;
  tiny.put(circuit);
  EXPECT_TRUE(nearLimit(tiny.site).empty());
}

}  // namespace
}  // namespace cordreach::rules
