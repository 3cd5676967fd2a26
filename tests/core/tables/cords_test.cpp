// SPDX-License-Identifier: GPL-3.0-or-later
// Cord types and how the cords are built.
#include <gtest/gtest.h>

#include "tables/cord_construction.h"
#include "tables/cord_types.h"
#include "tables/dc_resistance.h"

namespace cordreach::tables {
namespace {

using units::millimetre;
using units::WireSize;

TEST(CordTypes, KnowTheirFamilyAndRating) {
  const CordType* sjtw = cordType("sjtw");
  ASSERT_NE(sjtw, nullptr);
  EXPECT_EQ(sjtw->family, CordFamily::Hard);
  EXPECT_EQ(sjtw->usage, CordUsage::Hard);
  EXPECT_EQ(sjtw->material, CordMaterial::Thermoplastic);
  EXPECT_TRUE(sjtw->outdoor);
  EXPECT_NEAR(sjtw->rating.celsius(), 60.0, 1e-9);
  EXPECT_EQ(sjtw->optionalRatings.size(), 3u);
  EXPECT_TRUE(sjtw->allows(WireSize::awg(10)));
  EXPECT_FALSE(sjtw->allows(WireSize::awg(8)));
  EXPECT_FALSE(sjtw->allows(WireSize::awg(20)));
  EXPECT_EQ(cordType("SOOW")->usage, CordUsage::ExtraHard);
  EXPECT_FALSE(cordType("SJT")->outdoor);
  EXPECT_TRUE(cordType("HSJO")->heater);
  EXPECT_EQ(cordType("H07RN-F")->family, CordFamily::MetricHeavy);
  EXPECT_EQ(cordType("THHN"), nullptr);
  EXPECT_EQ(cordType(""), nullptr);
}

TEST(CordTypes, RateNoCordHotterThanItsSourceSaysUnlessMarked) {
  for (const CordType& type : cordTypes()) {
    EXPECT_LE(type.lightest, type.heaviest) << type.letters;
    const bool seenHotter = type.letters == "SJE" || type.heater || type.letters.starts_with("H0");
    EXPECT_TRUE(seenHotter || type.rating == units::Temperature::fromCelsius(60.0)) << type.letters;
    for (const auto& optional : type.optionalRatings) EXPECT_GT(optional, type.rating) << type.letters;
    EXPECT_TRUE(nearestCordConstruction(type.family, type.heaviest, 3)) << type.letters;
  }
}

TEST(CordConstruction, FitsItsPartsIntoItsDiameter) {
  int seen = 0;
  for (const CordFamily family : {CordFamily::Hard, CordFamily::ExtraHard, CordFamily::Vacuum, CordFamily::MetricLight,
                                  CordFamily::MetricHeavy}) {
    for (const auto& size :
         {WireSize::awg(18), WireSize::awg(17), WireSize::awg(16), WireSize::awg(14), WireSize::awg(12),
          WireSize::awg(10), WireSize::squareMillimetres(0.75), WireSize::squareMillimetres(1.0),
          WireSize::squareMillimetres(1.5), WireSize::squareMillimetres(2.5)}) {
      for (const int conductors : {2, 3}) {
        const auto cord = cordConstruction(family, size, conductors);
        if (!cord) continue;
        ++seen;
        const auto core = cord->strandBundle.value + 2.0 * cord->insulation.value;
        // Circle round two or three equal circles, with the jacket round it: no more than a tenth of air or filler.
        const auto least = (conductors == 2 ? 2.0 : 2.1547) * core + 2.0 * cord->jacket.value;
        EXPECT_GE(cord->outerDiameter.value, 0.99 * least) << familyKey(family) << size.name() << conductors;
        EXPECT_LE(cord->outerDiameter.value, 1.12 * least) << familyKey(family) << size.name() << conductors;
        // A strand bundle holds its copper: solid wire of that area is thinner, and 1.3 times is loose.
        EXPECT_GT(cord->strandBundle.value, size.solidDiameter());
        EXPECT_LT(cord->strandBundle.value, 1.3 * size.solidDiameter());
      }
    }
  }
  EXPECT_EQ(seen, 38);
}

TEST(CordConstruction, GrowsWithCopperWithinAFamily) {
  for (const CordFamily family : {CordFamily::Hard, CordFamily::ExtraHard, CordFamily::Parallel3}) {
    for (const int conductors : {2, 3}) {
      std::optional<CordConstruction> lighter;
      for (const int n : {18, 16, 14, 12, 10}) {
        const auto cord = cordConstruction(family, WireSize::awg(n), conductors);
        ASSERT_TRUE(cord) << n;
        if (lighter) {
          EXPECT_GT(cord->outerDiameter.value, lighter->outerDiameter.value);
          EXPECT_LT(cord->resistance20.value, lighter->resistance20.value);
        }
        lighter = cord;
      }
    }
  }
}

TEST(CordConstruction, HasNothingForWhatIsNotTabulated) {
  EXPECT_FALSE(cordConstruction(CordFamily::Vacuum, WireSize::awg(14), 3));
  EXPECT_FALSE(cordConstruction(CordFamily::Hard, WireSize::awg(13), 3));
  EXPECT_FALSE(cordConstruction(CordFamily::Hard, WireSize::awg(14), 4));
  EXPECT_FALSE(cordConstruction(CordFamily::Hard, WireSize::squareMillimetres(1.5), 3));
}

TEST(NearestCordConstruction, StandsInOnTheHotSide) {
  const auto thinner = nearestCordConstruction(CordFamily::Hard, WireSize::awg(13), 3);
  ASSERT_TRUE(thinner);
  EXPECT_EQ(thinner->size, WireSize::awg(14));
  EXPECT_EQ(nearestCordConstruction(CordFamily::ExtraHard, WireSize::awg(2), 4)->size, WireSize::awg(10));
  EXPECT_EQ(nearestCordConstruction(CordFamily::Vacuum, WireSize::awg(14), 3)->size, WireSize::awg(17));
  EXPECT_EQ(nearestCordConstruction(CordFamily::Hard, WireSize::squareMillimetres(2.5), 2)->size, WireSize::awg(14));
  const auto otherFamily = nearestCordConstruction(CordFamily::MetricHeavy, WireSize::awg(18), 3);
  EXPECT_EQ(otherFamily->family, CordFamily::Hard);
  EXPECT_FALSE(nearestCordConstruction(CordFamily::Hard, WireSize::awg(22), 3));
}

}  // namespace
}  // namespace cordreach::tables
