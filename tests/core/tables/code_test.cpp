// SPDX-License-Identifier: GPL-3.0-or-later
// Code limits and receptacles.
#include <gtest/gtest.h>

#include "tables/code_limits.h"
#include "tables/receptacles.h"

namespace cordreach::tables {
namespace {

using units::ampere;

TEST(CodeLimits, AreFoundByRating) {
  EXPECT_EQ(cordAndPlugLimit(15.0 * ampere)->value, 12.0 * ampere);
  EXPECT_EQ(cordAndPlugLimit(20.0 * ampere)->value, 16.0 * ampere);
  EXPECT_EQ(cordAndPlugLimit(30.0 * ampere)->value, 24.0 * ampere);
  EXPECT_FALSE(cordAndPlugLimit(40.0 * ampere));
  EXPECT_FALSE(cordAndPlugLimit(15.5 * ampere));
  EXPECT_EQ(receptacleRange(20.0 * ampere)->least.value, 15.0 * ampere);
  EXPECT_EQ(receptacleRange(20.0 * ampere)->most.value, 20.0 * ampere);
  EXPECT_EQ(receptacleRange(15.0 * ampere)->most.value, 15.0 * ampere);
  EXPECT_FALSE(receptacleRange(25.0 * ampere));
}

TEST(CodeLimits, AgreeWithEachOther) {
  // Cord-and-plug limits are the portable share of the receptacle; continuous load is 125 % the other way round.
  for (const double rating : {15.0, 20.0, 30.0}) {
    EXPECT_NEAR(cordAndPlugLimit(rating * ampere)->value / (rating * ampere), portableShare().value, 1e-12);
  }
  EXPECT_NEAR(continuousShare().value, 1.0 / 1.25, 1e-12);
  EXPECT_LT(branchDropAdvisory().value, totalDropAdvisory().value);
  EXPECT_LT(fastenedShare().value, portableShare().value);
  EXPECT_EQ(singleReceptacleShare().value, 1.0);
  EXPECT_NEAR(continuousFrom().value.in(units::hour), 3.0, 1e-12);
  EXPECT_NEAR(groundFaultHolds().value.in(units::milliampere), 4.0, 1e-12);
  EXPECT_NEAR(groundFaultTrips().value.in(units::milliampere), 6.0, 1e-12);
  EXPECT_NEAR(unmarkedCordRating().value.celsius(), 60.0, 1e-9);
  EXPECT_EQ(lightestFieldMadeExtension().value, units::WireSize::awg(16));
}

TEST(StandardDevices, RiseAndAreFoundFromBelow) {
  const auto all = standardDeviceRatings();
  ASSERT_GE(all.size(), 9u);
  for (std::size_t i = 1; i < all.size(); ++i) EXPECT_LT(all[i - 1].value, all[i].value);
  EXPECT_EQ(standardDeviceFor(15.0 * ampere)->value, 15.0 * ampere);
  EXPECT_EQ(standardDeviceFor(15.1 * ampere)->value, 20.0 * ampere);
  EXPECT_EQ(standardDeviceFor(55.0 * ampere)->value, 60.0 * ampere);
  EXPECT_FALSE(standardDeviceFor(401.0 * ampere));
}

TEST(Receptacles, TakeThePlugsThatFit) {
  EXPECT_EQ(plugFits("5-15", "5-20"), true);
  EXPECT_EQ(plugFits("5-20", "5-15"), false);
  EXPECT_EQ(plugFits("1-15", "5-20"), true);
  EXPECT_EQ(plugFits("5-15", "1-15"), false);
  EXPECT_EQ(plugFits("5-15", "6-15"), false);
  EXPECT_EQ(plugFits("6-15", "6-20"), true);
  EXPECT_EQ(plugFits("5-20", "L5-20"), false);
  EXPECT_EQ(plugFits("5-15", "7-99"), std::nullopt);
  EXPECT_EQ(plugFits("", "5-15"), std::nullopt);
}

TEST(Receptacles, LetNoPlugIntoALesserOrOtherSupply) {
  for (const ReceptacleType& plug : receptacleTypes()) {
    EXPECT_EQ(plugFits(plug.key, plug.key), true) << plug.key;
    for (const std::string& key : plug.plugFits) {
      const ReceptacleType* receptacle = receptacleType(key);
      ASSERT_NE(receptacle, nullptr) << plug.key << " names " << key;
      EXPECT_GE(receptacle->rating, plug.rating) << plug.key << " in " << key;
      EXPECT_EQ(receptacle->voltage, plug.voltage) << plug.key << " in " << key;
      EXPECT_EQ(receptacle->hotPoles, plug.hotPoles) << plug.key << " in " << key;
      EXPECT_TRUE(receptacle->earth || !plug.earth) << plug.key << " in " << key;
      EXPECT_EQ(receptacle->locking, plug.locking) << plug.key << " in " << key;
    }
  }
  EXPECT_FALSE(receptacleType("1-15")->earth);
  EXPECT_FALSE(receptacleType("6-20")->neutral);
  EXPECT_TRUE(receptacleType("L14-30")->neutral);
}

}  // namespace
}  // namespace cordreach::tables
