// SPDX-License-Identifier: GPL-3.0-or-later
// What people write for a breaker.
#include "physics/breaker_spec.h"

#include <gtest/gtest.h>

namespace cordreach::physics {
namespace {

struct Spelling {
  const char* text;
  double ratingA;
  BreakerKind kind;
};

class BreakerSpelling : public testing::TestWithParam<Spelling> {};

TEST_P(BreakerSpelling, IsRead) {
  const auto breaker = parseBreaker(GetParam().text);
  ASSERT_TRUE(breaker.ok()) << GetParam().text;
  EXPECT_DOUBLE_EQ(breaker.value().rating.in(units::ampere), GetParam().ratingA);
  EXPECT_EQ(breaker.value().kind, GetParam().kind);
}

INSTANTIATE_TEST_SUITE_P(
    BothSystems, BreakerSpelling,
    testing::Values(Spelling{"20A", 20, BreakerKind::ThermalMagnetic}, Spelling{"20", 20, BreakerKind::ThermalMagnetic},
                    Spelling{" 15 amps ", 15, BreakerKind::ThermalMagnetic}, Spelling{"B16", 16, BreakerKind::IecB},
                    Spelling{"c 20", 20, BreakerKind::IecC}, Spelling{"16A B", 16, BreakerKind::IecB},
                    Spelling{"D10A", 10, BreakerKind::IecD}, Spelling{"15A fuse", 15, BreakerKind::Fuse},
                    Spelling{"Fuse 30", 30, BreakerKind::Fuse}));

TEST(BreakerSpec, RefusesWhatIsNoBreakerAndSaysWhere) {
  for (const char* text : {"", "B", "twenty", "20 V", "-20A", "E16", "20A 30A"}) {
    const auto breaker = parseBreaker(text);
    ASSERT_FALSE(breaker.ok()) << text;
    EXPECT_EQ(breaker.error().code, "breaker.unreadable") << text;
    EXPECT_EQ(breaker.error().place, text);
  }
}

TEST(BreakerSpec, RefusesRatingsOutsideTheCalibrationTables) {
  for (const char* text : {"0.5A", "200A", "0"}) {
    const auto breaker = parseBreaker(text);
    ASSERT_FALSE(breaker.ok()) << text;
    EXPECT_EQ(breaker.error().code, "breaker.out_of_range");
  }
}

}  // namespace
}  // namespace cordreach::physics
