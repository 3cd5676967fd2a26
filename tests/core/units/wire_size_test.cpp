// SPDX-License-Identifier: GPL-3.0-or-later
// Wire sizes: order, names, and how they are written.
#include "units/wire_size.h"

#include <gtest/gtest.h>

#include "base/contract.h"

namespace cordreach::units {
namespace {

std::string nameOf(std::string_view text) {
  const auto size = parseWireSize(text);
  return size.ok() ? size.value().name() : size.error().code;
}

TEST(WireSize, OrdersByCopperSoThatALowerGaugeIsLarger) {
  EXPECT_GT(WireSize::awg(12), WireSize::awg(14));
  EXPECT_GT(WireSize::awg(-1), WireSize::awg(0));
  EXPECT_LT(WireSize::awg(14), WireSize::squareMillimetres(2.5));
  EXPECT_GT(WireSize::awg(12), WireSize::squareMillimetres(2.5));
  EXPECT_EQ(WireSize::awg(14), WireSize::awg(14));
}

TEST(WireSize, KeepsAMetricSizeApartFromAGaugeOfTheSameArea) {
  const auto gauge = WireSize::awg(14);
  const auto metric = WireSize::squareMillimetres(gauge.area().in(squareMillimetre));
  EXPECT_NE(gauge, metric);
  EXPECT_TRUE(gauge < metric || metric < gauge);
  EXPECT_FALSE(gauge < metric && metric < gauge);
}

TEST(WireSize, HalvesInAreaEveryThreeGauges) {
  for (int n = WireSize::kHeaviestAwg; n + 3 <= WireSize::kLightestAwg; ++n) {
    EXPECT_NEAR(WireSize::awg(n).area() / WireSize::awg(n + 3).area(), 2.005, 0.001);
  }
}

TEST(WireSize, TreatsSizesThatDoNotExistAsOurOwnBug) {
  EXPECT_THROW(static_cast<void>(WireSize::awg(-4)), base::ContractFailure);
  EXPECT_THROW(static_cast<void>(WireSize::awg(41)), base::ContractFailure);
  EXPECT_THROW(static_cast<void>(WireSize::squareMillimetres(0.0)), base::ContractFailure);
}

TEST(ParseWireSize, ReadsGauges) {
  for (const auto text :
       {"14 AWG", "14", "#14", "14AWG", "AWG 14", "awg14", "14 ga", "14-gauge", "No. 14", "# 14 AWG", " 14 "}) {
    EXPECT_EQ(nameOf(text), "14 AWG") << text;
  }
  for (const auto text : {"1/0 AWG", "1/0", "0", "#1/0"}) EXPECT_EQ(nameOf(text), "1/0 AWG") << text;
  EXPECT_EQ(nameOf("4/0"), "4/0 AWG");
  EXPECT_EQ(nameOf("0000"), "4/0 AWG");
}

TEST(ParseWireSize, ReadsMetricSizes) {
  for (const auto text : {"2.5 mm\u00B2", "2.5 mm2", "2,5mm2", "2.5mm^2", "2.5 sq mm", "2.5 MM2"}) {
    EXPECT_EQ(nameOf(text), "2.5 mm\u00B2") << text;
  }
  EXPECT_EQ(nameOf("0,75 mm2"), "0.75 mm\u00B2");
}

TEST(ParseWireSize, ReadsBackEveryName) {
  for (int n = WireSize::kHeaviestAwg; n <= WireSize::kLightestAwg; ++n) {
    EXPECT_EQ(parseWireSize(WireSize::awg(n).name()).value(), WireSize::awg(n));
  }
  for (const double mm2 : {0.5, 0.75, 1.0, 1.25, 1.5, 2.5, 4.0, 6.0, 10.0, 16.0}) {
    EXPECT_EQ(parseWireSize(WireSize::squareMillimetres(mm2).name()).value(), WireSize::squareMillimetres(mm2));
  }
}

TEST(ParseWireSize, RefusesTheRest) {
  EXPECT_EQ(nameOf(""), "units.empty");
  EXPECT_EQ(nameOf("#"), "units.not_a_wire_size");
  EXPECT_EQ(nameOf("14.5 AWG"), "units.not_a_wire_size");
  EXPECT_EQ(nameOf("14 ft"), "units.not_a_wire_size");
  EXPECT_EQ(nameOf("5/0"), "units.not_a_wire_size");
  EXPECT_EQ(nameOf("99"), "units.out_of_range");
  EXPECT_EQ(nameOf("-2.5 mm2"), "units.out_of_range");
  EXPECT_EQ(nameOf("1,500 mm2"), "units.ambiguous_number");
  EXPECT_EQ(nameOf("AWG"), "units.not_a_wire_size");
  EXPECT_EQ(nameOf("nan"), "units.not_a_number");
}

TEST(ParseWireRun, ReadsLengthAndSizeInEitherOrder) {
  const WireRun expected{60.0 * foot, WireSize::awg(12)};
  for (const auto text : {"60ft/12AWG", "60 ft / 12", "60'/#12", "12AWG/60ft", "12/60 ft"}) {
    const auto run = parseWireRun(text);
    ASSERT_TRUE(run.ok()) << text;
    EXPECT_EQ(run.value(), expected) << text;
  }
  EXPECT_EQ(parseWireRun("60ft/1/0 AWG").value().size, WireSize::awg(0));
  EXPECT_EQ(parseWireRun("18 m/2,5 mm2").value().size, WireSize::squareMillimetres(2.5));
}

TEST(ParseWireRun, SaysWhichHalfIsWrong) {
  EXPECT_EQ(parseWireRun("60ft").error(), (base::Error{"units.not_a_run", "60ft", {}}));
  EXPECT_EQ(parseWireRun("60ft/heavy").error().place, "heavy");
  EXPECT_EQ(parseWireRun("1,500 ft/12").error().code, "units.ambiguous_number");
  EXPECT_EQ(parseWireRun("  ").error().code, "units.empty");
}

}  // namespace
}  // namespace cordreach::units
