// SPDX-License-Identifier: GPL-3.0-or-later
// Numbers as files hold them, and foreign text made safe to repeat.
#include "units/plain.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <charconv>
#include <cmath>
#include <cstring>
#include <limits>

#include "base/contract.h"
#include "units/excerpt.h"

namespace cordreach::units {
namespace {

TEST(Plain, PrintsTheShortestTextWithoutNeedlessExponent) {
  EXPECT_EQ(plain(22.86), "22.86");
  EXPECT_EQ(plain(0.1), "0.1");
  EXPECT_EQ(plain(100000.0), "100000");
  EXPECT_EQ(plain(-0.0), "0");
  EXPECT_EQ(plain(-15.0), "-15");
  EXPECT_EQ(plain(1e-7), "1e-07");
  EXPECT_THROW(static_cast<void>(plain(std::numeric_limits<double>::infinity())), base::ContractFailure);
  EXPECT_THROW(static_cast<void>(plain(std::nan(""))), base::ContractFailure);
}

RC_GTEST_PROP(Plain, ReadsBackToTheSameDouble, (std::uint64_t bits)) {
  double value = 0.0;
  std::memcpy(&value, &bits, sizeof value);
  RC_PRE(std::isfinite(value));
  const std::string text = plain(value);
  double back = 0.0;
  const auto read = std::from_chars(text.data(), text.data() + text.size(), back);
  RC_ASSERT(read.ptr == text.data() + text.size());
  RC_ASSERT(back == value);
}

TEST(Excerpt, CutsAndCleans) {
  EXPECT_EQ(excerpt("75 \u00B0F"), "75 \u00B0F");
  EXPECT_EQ(excerpt("a\xFFz"), "a?z");
  EXPECT_EQ(excerpt("a\xC0\x80z"), "a??z");
  EXPECT_EQ(excerpt("a\xED\xA0\x80z"), "a???z");
  EXPECT_EQ(excerpt("a\nb"), "a b");
  EXPECT_EQ(excerpt(std::string(100, 'x')), std::string(60, 'x') + "...");
  EXPECT_EQ(excerpt(std::string(59, 'x') + "\u00B0"), std::string(59, 'x') + "...");
}

}  // namespace
}  // namespace cordreach::units
