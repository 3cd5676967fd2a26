// SPDX-License-Identifier: GPL-3.0-or-later
#include "study/moments.h"

#include <gtest/gtest.h>

#include "support/small_site.h"

namespace cordreach::study {
namespace {

using tables::LoadClass;
using testing::SmallSite;

TEST(Moments, AreOneWhenNothingHasHours) {
  const auto building =
      SmallSite().circuit("1", 20, 60).machine("M", LoadClass::Universal, 9).plug("M", SmallSite::at("1"));
  const auto moments = momentsOf(building.site);
  ASSERT_EQ(moments.size(), 1u);
  EXPECT_FALSE(moments.front().start.has_value());
  EXPECT_EQ(moments.front().hookups.size(), 1u);
}

TEST(Moments, CutTheDayWhereAnythingBeginsOrEnds) {
  const auto building = SmallSite()
                            .circuit("1", 20, 60)
                            .machine("M", LoadClass::Universal, 9)
                            .machine("N", LoadClass::Universal, 9)
                            .plug("M", SmallSite::at("1"), {{18.0, 20.0}})
                            .plug("N", SmallSite::at("1", "lower"), {{19.0, 20.0}});
  const auto moments = momentsOf(building.site);
  ASSERT_EQ(moments.size(), 4u);
  EXPECT_TRUE(moments[0].hookups.empty());
  EXPECT_EQ(moments[1].hookups.size(), 1u);
  EXPECT_EQ(moments[2].hookups.size(), 2u);
  // Half-open: at eight o'clock both are off.
  EXPECT_TRUE(moments[3].hookups.empty());
}

}  // namespace
}  // namespace cordreach::study
