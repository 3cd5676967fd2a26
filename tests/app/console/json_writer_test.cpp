// SPDX-License-Identifier: GPL-3.0-or-later
// The JSON that the verbs write, read back by another reader.
#include "console/json_writer.h"

#include <gtest/gtest.h>

#include <limits>
#include <nlohmann/json.hpp>

namespace cordreach::console {
namespace {

TEST(JsonWriter, WritesOneCompactLineInTheOrderGiven) {
  JsonWriter json;
  json.openObject().number("b_a", 1.5).text("a", "x").openArray("c").number("", 2.0).number("", 3.0).closeArray();
  json.openObject("d").closeObject().truth("e", false).null("f").closeObject();
  EXPECT_EQ(json.line(), "{\"b_a\":1.5,\"a\":\"x\",\"c\":[2,3],\"d\":{},\"e\":false,\"f\":null}\n");
}

TEST(JsonWriter, SetsTheBandBeforeTheUnit) {
  JsonWriter json;
  json.openObject().band("drop_percent", study::Band<double>{2, 1, 3}).band("speed_rpm", std::nullopt).closeObject();
  EXPECT_EQ(json.line(),
            "{\"drop_percent\":2,\"drop_low_percent\":1,\"drop_high_percent\":3,"
            "\"speed_rpm\":null,\"speed_low_rpm\":null,\"speed_high_rpm\":null}\n");
}

TEST(JsonWriter, WritesNoNumberThatIsNotFinite) {
  JsonWriter json;
  json.openArray().number("", std::numeric_limits<double>::infinity()).number("", std::nan("")).closeArray();
  EXPECT_EQ(json.line(), "[null,null]\n");
}

TEST(JsonWriter, RoundsToSixSignificantDigits) {
  EXPECT_EQ(jsonNumber(14.600000000000001), "14.6");
  EXPECT_EQ(jsonNumber(123456.789), "123457");
  EXPECT_EQ(jsonNumber(-0.000012345678), "-1.23457e-05");
  EXPECT_EQ(jsonNumber(-0.0), "0");
}

TEST(JsonWriter, EscapesWhatJsonCannotHoldAndReplacesBrokenBytes) {
  JsonWriter json;
  json.openArray().text("", "a\"b\\c\nd\x01\xFF\xED\xA0\x80 é").closeArray();
  const nlohmann::json read = nlohmann::json::parse(json.line());
  EXPECT_EQ(read[0], "a\"b\\c\nd\x01\uFFFD\uFFFD\uFFFD\uFFFD é");
}

}  // namespace
}  // namespace cordreach::console
