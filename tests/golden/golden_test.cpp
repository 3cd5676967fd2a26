// SPDX-License-Identifier: GPL-3.0-or-later
// Runs every case folder found beside this file through the real verb; README.md has the format.
#include <gtest/gtest.h>

#include <cmath>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <set>
#include <sstream>

#include "console/console.h"

namespace cordreach::console {
namespace {

namespace fs = std::filesystem;
using Json = nlohmann::json;

const fs::path kRoot = "tests/golden";

std::string textOf(const fs::path& path) {
  std::ifstream file(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

std::vector<std::string> cases() {
  std::vector<std::string> found;
  for (const auto& group : fs::directory_iterator(kRoot)) {
    if (!group.is_directory()) continue;
    for (const auto& folder : fs::directory_iterator(group)) {
      if (folder.is_directory()) found.push_back(fs::relative(folder.path(), kRoot).generic_string());
    }
  }
  std::sort(found.begin(), found.end());
  return found;
}

struct Outcome {
  int exit = -1;
  std::string out;
  std::string error;
};

std::vector<std::string> argumentsOf(const fs::path& folder) {
  if (!fs::exists(folder / "args.txt")) return {"assess", (folder / "site.json").generic_string(), "--json"};
  std::vector<std::string> arguments;
  std::istringstream lines(textOf(folder / "args.txt"));
  for (std::string line; std::getline(lines, line);) {
    const std::size_t at = line.find("{case}");
    if (at != std::string::npos) line.replace(at, 6, folder.generic_string());
    if (!line.empty()) arguments.push_back(line);
  }
  return arguments;
}

Outcome outcomeOf(const fs::path& folder) {
  StringOutput out;
  StringOutput error;
  const Console console{out, error, false, text::Phrasebook::load("en").value(), {}};
  const int exit = run(argumentsOf(folder), console).value_or(-1);
  return {exit, out.text(), error.text()};
}

// A JSON pointer whose steps may also pick an element by its id or code.
const Json* stepInto(const Json& value, const std::string& step) {
  const std::size_t equals = step.find('=');
  if (value.is_array() && equals != std::string::npos) {
    const std::string key = step.substr(0, equals);
    for (const Json& item : value) {
      if (item.is_object() && item.value(key, Json()) == Json(step.substr(equals + 1))) return &item;
    }
    return nullptr;
  }
  if (value.is_array()) {
    if (step.empty() || step.find_first_not_of("0123456789") != std::string::npos) return nullptr;
    const std::size_t index = std::stoul(step);
    return index < value.size() ? &value[index] : nullptr;
  }
  return value.is_object() && value.contains(step) ? &value[step] : nullptr;
}

const Json* valueAt(const Json& answer, const std::string& pointer) {
  const Json* at = &answer;
  std::istringstream steps(pointer);
  std::string step;
  std::getline(steps, step, '/');
  while (at != nullptr && std::getline(steps, step, '/')) at = stepInto(*at, step);
  return at;
}

void checkNumber(const Json& answer, const Json& expected) {
  const std::string pointer = expected.at("at");
  EXPECT_FALSE(expected.at("reason").get<std::string>().empty()) << pointer << ": no reason given";
  const Json* value = valueAt(answer, pointer);
  ASSERT_NE(value, nullptr) << pointer << " is not in the answer";
  if (!expected.at("value").is_number()) {
    EXPECT_EQ(*value, expected.at("value")) << pointer;
    return;
  }
  ASSERT_TRUE(value->is_number()) << pointer << " is " << value->dump();
  EXPECT_NEAR(value->get<double>(), expected.at("value").get<double>(), expected.at("within").get<double>())
      << pointer << ": " << expected.at("reason");
}

void checkFindings(const Json& answer, const Json& expected) {
  std::set<std::string> found;
  for (const Json& finding : answer.at("findings")) {
    found.insert(finding.at("code").get<std::string>());
    EXPECT_FALSE(finding.at("why").empty()) << finding.at("code");
  }
  EXPECT_EQ(found, expected.at("codes").get<std::set<std::string>>());
  const Json remedies = expected.value("remedies", Json::object());
  for (const auto& [code, remedy] : remedies.items()) {
    const Json* first = valueAt(answer, "/findings/code=" + code + "/remedies/0/code");
    EXPECT_EQ(first == nullptr ? Json() : *first, remedy) << "first remedy of " << code;
  }
  const Json verdicts = expected.value("verdicts", Json::object());
  for (const auto& [hookup, verdict] : verdicts.items()) {
    const Json* said = valueAt(answer, "/hookups/id=" + hookup + "/verdict");
    EXPECT_EQ(said == nullptr ? Json() : *said, verdict) << "verdict of " << hookup;
  }
}

void checkRefusal(const Outcome& outcome, const Json& expected) {
  EXPECT_EQ(outcome.out, "");
  EXPECT_EQ(outcome.error.find('\n'), outcome.error.size() - 1) << outcome.error;
  EXPECT_NE(outcome.error.find(expected.at("error").get<std::string>()), std::string::npos) << outcome.error;
}

class Golden : public testing::TestWithParam<std::string> {};

TEST_P(Golden, ComesOutAsExpected) {
  const fs::path folder = kRoot / GetParam();
  const Json expected = Json::parse(textOf(folder / "expect.json"));
  static const std::set<std::string> kKeys{"exit", "codes", "numbers", "verdicts", "remedies", "error"};
  for (const auto& item : expected.items()) EXPECT_EQ(kKeys.count(item.key()), 1U) << "unknown key " << item.key();
  const Outcome outcome = outcomeOf(folder);
  EXPECT_EQ(outcome.exit, expected.at("exit").get<int>()) << outcome.error;
  if (expected.contains("error")) {
    checkRefusal(outcome, expected);
    return;
  }
  EXPECT_EQ(outcome.error, "");
  const Json answer = Json::parse(outcome.out, nullptr, false);
  ASSERT_FALSE(answer.is_discarded()) << outcome.out;
  if (answer.contains("findings")) checkFindings(answer, expected);
  for (const Json& number : expected.value("numbers", Json::array())) checkNumber(answer, number);
}

std::string nameOf(const testing::TestParamInfo<std::string>& info) {
  std::string name = info.param;
  for (char& c : name) {
    if (std::isalnum(static_cast<unsigned char>(c)) == 0) c = '_';
  }
  return name;
}

INSTANTIATE_TEST_SUITE_P(Folders, Golden, testing::ValuesIn(cases()), nameOf);

// The runner itself: what it takes for a pointer.
TEST(GoldenPointer, PicksByIndexKeyIdAndCode) {
  const Json answer = Json::parse(R"({"a": [{"id": "x", "v": 1}, {"code": "c.d", "v": 2}]})");
  EXPECT_EQ(*valueAt(answer, "/a/0/v"), 1);
  EXPECT_EQ(*valueAt(answer, "/a/id=x/v"), 1);
  EXPECT_EQ(*valueAt(answer, "/a/code=c.d/v"), 2);
  EXPECT_EQ(valueAt(answer, "/a/2/v"), nullptr);
  EXPECT_EQ(valueAt(answer, "/a/id=y/v"), nullptr);
  EXPECT_EQ(valueAt(answer, "/b"), nullptr);
}

}  // namespace
}  // namespace cordreach::console
