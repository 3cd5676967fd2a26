// SPDX-License-Identifier: GPL-3.0-or-later
// The place Cord and the console are two faces of one answer: over a grid of questions both must say the same, word for
// number. The place's side goes through its inputs, the memory of its service and its field; the console's is run in
// this process and read back from its JSON.
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "app/console/support.h"
#include "app/support/demo.h"
#include "compute/cord_answer.h"
#include "desk/cord_inputs.h"
#include "text/severity_text.h"

namespace cordreach::app {
namespace {

using Json = nlohmann::json;
using units::ampere;
using units::foot;

Json consoleAnswer(const std::vector<std::string>& arguments) {
  const console::Ran ran = console::ran(arguments);
  EXPECT_TRUE(ran.exit == console::kSound || ran.exit == console::kUnsound) << ran.error;
  return Json::parse(ran.out);
}

// One question, told to both.
struct Asked {
  double amps;
  const char* word;  // of the class, for the console
  tables::LoadClass loadClass;
  int gauge;
  double distanceFeet;
  int breaker;        // 0: unknown
  double runFeet;     // 0: unknown
  int whatIf;         // index into the table below
  int cordGauge = 0;  // of the one cord that may be taken; 0: common stock
};

struct WhatIf {
  const char* option;
  bool planning::CordWhatIf::*member;
};
const std::vector<WhatIf>& whatIfs() {
  static const std::vector<WhatIf> all{{"", nullptr},
                                       {"--coiled", &planning::CordWhatIf::coiled},
                                       {"--hot-day", &planning::CordWhatIf::hotDay},
                                       {"--tired-breaker", &planning::CordWhatIf::tiredBreaker},
                                       {"--low-supply", &planning::CordWhatIf::lowSupply},
                                       {"--chained", &planning::CordWhatIf::chained},
                                       {"--second-machine", &planning::CordWhatIf::secondMachine}};
  return all;
}

std::string plain(double value) {
  std::string text = std::to_string(value);
  text.erase(text.find_last_not_of('0') + 1);
  if (text.back() == '.') text.pop_back();
  return text;
}

std::vector<std::string> argumentsOf(const Asked& asked) {
  std::vector<std::string> arguments{
      "cord",       "--json",
      "--machine",  plain(asked.amps) + "A " + asked.word + " " + std::to_string(asked.gauge) + "AWG/50ft",
      "--distance", plain(asked.distanceFeet) + "ft",
      "--breaker",  asked.breaker == 0 ? "unknown" : std::to_string(asked.breaker) + "A"};
  if (asked.runFeet > 0) {
    arguments.insert(arguments.end(), {"--run", plain(asked.runFeet) + "ft/12AWG"});
  }
  if (asked.cordGauge > 0) {
    arguments.insert(arguments.end(), {"--cord", "SJTW " + std::to_string(asked.cordGauge) + "/3 100ft"});
  }
  const std::string option = whatIfs()[static_cast<std::size_t>(asked.whatIf)].option;
  if (!option.empty()) arguments.push_back(option);
  return arguments;
}

CordInputs inputsOf(const Asked& asked) {
  CordInputs inputs = startInputs(site::Site{site::SiteId("none")});
  inputs.machineBy = MachineBy::Plate;
  inputs.plate.name = "A";
  inputs.plate.loadClass = asked.loadClass;
  inputs.plate.plate = site::known(asked.amps * ampere);
  inputs.plate.cord.size = site::known(units::WireSize::awg(asked.gauge));
  inputs.plate.cord.length = site::known(50.0 * foot);
  inputs.distance = asked.distanceFeet * foot;
  inputs.outletBy = OutletBy::Hand;
  inputs.breaker = asked.breaker == 0 ? std::nullopt : std::optional(asked.breaker * ampere);
  if (asked.runFeet > 0) {
    inputs.run = site::known(asked.runFeet * foot);
    inputs.runSize = site::known(units::WireSize::awg(12));
  }
  inputs.cordsBy = asked.cordGauge > 0 ? CordsBy::Jacket : CordsBy::Stock;
  if (asked.cordGauge > 0) {
    inputs.jacket.legend = "SJTW " + std::to_string(asked.cordGauge) + "/3";
    inputs.jacket.type = "SJTW";
    inputs.jacket.size = site::known(units::WireSize::awg(asked.cordGauge));
    inputs.jacket.conductors = site::known(3);
    inputs.jacket.length = site::known(100.0 * foot);
  }
  const auto member = whatIfs()[static_cast<std::size_t>(asked.whatIf)].member;
  if (member != nullptr) inputs.whatIf.*member = true;
  return inputs;
}

const std::vector<std::pair<const char*, tables::LoadClass>>& classes() {
  static const std::vector<std::pair<const char*, tables::LoadClass>> all{{"induction", tables::LoadClass::Induction},
                                                                          {"dc", tables::LoadClass::RectifiedDc},
                                                                          {"universal", tables::LoadClass::Universal}};
  return all;
}

// One cord in hand each: the wide grid. The distance moves by itself between two that are otherwise the same, as a hand
// would move it, so that what is kept from one to the next is put to the test.
std::vector<Asked> wideGrid() {
  std::vector<Asked> all;
  for (const auto& [word, loadClass] : classes()) {
    for (const auto& [amps, gauge] : std::vector<std::pair<double, int>>{{8, 16}, {14.5, 14}}) {
      for (const int breaker : {0, 15, 20}) {
        for (const int whatIf : {0, 1, 2, 3, 4, 5, 6}) {
          for (const int cord : {16, 12}) {
            const double run = (breaker + whatIf) % 2 == 0 ? 60.0 : 0.0;
            all.push_back({amps, word, loadClass, gauge, 90.0, breaker, run, whatIf, cord});
            all.push_back({amps, word, loadClass, gauge, 40.0 + 70.0 * (whatIf % 2), breaker, run, whatIf, cord});
          }
        }
      }
    }
  }
  return all;
}

// Common stock, of which each answer has up to sixteen cords.
std::vector<Asked> stockGrid() {
  std::vector<Asked> all;
  for (const auto& [word, loadClass] : classes()) {
    for (const int breaker : {0, 20}) {
      for (const double feet : {30.0, 90.0}) all.push_back({12, word, loadClass, 14, feet, breaker, 60.0, 0});
    }
  }
  return all;
}

// Six significant digits, as the console writes.
void expectSame(double a, double b, const std::string& what) {
  EXPECT_NEAR(a, b, 1e-5 * std::max(1.0, std::abs(b))) << what;
}

void expectSame(const planning::CordCandidate& ours, const Json& theirs, const std::string& what) {
  EXPECT_EQ(std::string(text::severityCode(ours.verdict)), theirs["verdict"]) << what;
  EXPECT_EQ(ours.limit, theirs["limit"].is_null() ? "" : theirs["limit"].get<std::string>()) << what;
  expectSame(ours.voltage.likely.si(), theirs["voltage_v"], what);
  expectSame(ours.voltage.low.si(), theirs["voltage_low_v"], what);
  ASSERT_EQ(ours.conductor.has_value(), theirs["conductor_c"].is_number()) << what;
  if (ours.conductor) expectSame(ours.conductor->likely.celsius(), theirs["conductor_c"], what);
  ASSERT_EQ(ours.limits.size(), theirs["limits"].size()) << what;
  for (std::size_t i = 0; i < ours.limits.size(); ++i) {
    EXPECT_EQ(planning::nameOf(ours.limits[i].limit), theirs["limits"][i]["limit"].get<std::string>()) << what;
    ASSERT_EQ(ours.limits[i].used.has_value(), theirs["limits"][i]["used_percent"].is_number()) << what;
    if (ours.limits[i].used) expectSame(100.0 * *ours.limits[i].used, theirs["limits"][i]["used_percent"], what);
  }
}

const planning::CordCandidate* cellOf(const CordGrid& grid, const planning::CordCandidate& candidate) {
  for (const planning::CordCandidate& cell : grid.cells) {
    if (cell.size == candidate.size && cell.length == candidate.length) return &cell;
  }
  return nullptr;
}

TEST(CordPlaceAndConsole, SayTheSameOverAGridOfQuestions) {
  const text::Phrasebook book = text::Phrasebook::load("en").value();
  const auto site = std::make_shared<const site::Site>(site::Site{site::SiteId("none")});
  std::vector<Asked> questions = wideGrid();
  ASSERT_GE(questions.size(), 500U);
  for (const Asked& asked : stockGrid()) questions.push_back(asked);
  CordMemory memory;
  int chosen = 0;
  int needless = 0;
  int none = 0;
  for (const Asked& asked : questions) {
    const auto arguments = argumentsOf(asked);
    std::string what;
    for (const std::string& word : arguments) what += word + " ";
    const Json theirs = consoleAnswer(arguments);
    const planning::CordAdvice ours = memory.advise(askedOf(inputsOf(asked), site, book), {});
    EXPECT_EQ(ours.extensionNeeded, theirs["extension_needed"]) << what;
    EXPECT_EQ(std::string(text::severityCode(ours.verdict)), theirs["verdict"]) << what;
    EXPECT_EQ(ours.findOut.empty(), theirs["find_out"].is_null()) << what;
    ASSERT_EQ(ours.choice.has_value(), theirs["choice"].is_object()) << what;
    if (ours.choice) {
      EXPECT_EQ(*ours.candidates[*ours.choice].size.awgNumber(), theirs["choice"]["gauge_awg"]) << what;
      expectSame(ours.candidates[*ours.choice].length.si(), theirs["choice"]["length_m"], what);
    }
    ASSERT_EQ(ours.candidates.size(), theirs["candidates"].size()) << what;
    for (std::size_t i = 0; i < ours.candidates.size(); ++i) {
      ASSERT_NO_FATAL_FAILURE(expectSame(ours.candidates[i], theirs["candidates"][i], what));
    }
    chosen += ours.choice ? 1 : 0;
    needless += ours.extensionNeeded ? 0 : 1;
    none += ours.extensionNeeded && !ours.choice ? 1 : 0;
  }
  // Every kind of answer was among them.
  EXPECT_GT(chosen, 50);
  EXPECT_GT(needless, 50);
  EXPECT_GT(none, 50);
}

TEST(CordPlaceAndConsole, AndSoDoesTheField) {
  const text::Phrasebook book = text::Phrasebook::load("en").value();
  const auto site = std::make_shared<const site::Site>(site::Site{site::SiteId("none")});
  CordMemory memory;
  for (const Asked& asked : {Asked{14.5, "induction", tables::LoadClass::Induction, 14, 90, 20, 60, 0},
                             Asked{12, "dc", tables::LoadClass::RectifiedDc, 14, 90, 0, 0, 1}}) {
    const CordAsked question = askedOf(inputsOf(asked), site, book);
    const planning::CordAdvice advice = memory.advise(question, {});
    const CordGrid grid = memory.grid(question, {});
    ASSERT_EQ(grid.cells.size(), 40U);
    const Json theirs = consoleAnswer(argumentsOf(asked));
    ASSERT_EQ(advice.candidates.size(), theirs["candidates"].size());
    ASSERT_FALSE(advice.candidates.empty());
    for (std::size_t i = 0; i < advice.candidates.size(); ++i) {
      const planning::CordCandidate* cell = cellOf(grid, advice.candidates[i]);
      ASSERT_NE(cell, nullptr);
      expectSame(*cell, theirs["candidates"][i], "cell");
    }
  }
}

// An outlet of a building and its cart, as the place asks about them.
TEST(CordPlaceAndConsole, SayTheSameOfAnOutletOfABuilding) {
  const text::Phrasebook book = text::Phrasebook::load("en").value();
  const auto site = std::make_shared<const site::Site>(testing::demoBuilding());
  for (const char* label : {"1-13", "1-31", "2-22", "1-05"}) {
    Asked asked{12, "universal", tables::LoadClass::Universal, 14, 80, 0, 0, 0};
    CordInputs inputs = inputsOf(asked);
    inputs.outletBy = OutletBy::Site;
    inputs.outlet = site::OutletSocket{site::OutletId(label), "upper"};
    inputs.cordsBy = CordsBy::Cart;
    const std::string file = "resources/demo/building.json";
    const Json theirs = consoleAnswer({"cord", "--json", "--machine", "12A universal 14AWG/50ft", "--distance", "80ft",
                                       "--site", file, "--at", std::string(label) + "/upper", "--cart", file});
    CordMemory memory;
    const planning::CordAdvice ours = memory.advise(askedOf(inputs, site, book), {});
    ASSERT_EQ(ours.candidates.size(), theirs["candidates"].size()) << label;
    ASSERT_FALSE(ours.candidates.empty()) << label;
    for (std::size_t i = 0; i < ours.candidates.size(); ++i) {
      EXPECT_EQ(ours.candidates[i].cord->text(), theirs["candidates"][i]["id"]) << label;
      ASSERT_NO_FATAL_FAILURE(expectSame(ours.candidates[i], theirs["candidates"][i], label));
    }
    EXPECT_EQ(ours.choice.has_value(), theirs["choice"].is_object()) << label;
  }
}

// The plan's machines at outlets where others are planned at the same hours, and where none are.
TEST(CordPlaceAndConsole, SayTheSameOfThePlan) {
  const text::Phrasebook book = text::Phrasebook::load("en").value();
  const auto site = std::make_shared<const site::Site>(testing::demoBuilding());
  const std::string file = "resources/demo/building.json";
  int crowded = 0;
  int free = 0;
  for (const char* label : {"1-02", "1-05", "1-31", "1-08", "1-13", "2-03", "2-18", "2-22"}) {
    for (const char* named : {"H02", "H03", "H05", "H07", "H10"}) {
      const site::Hookup& hookup = site->at<site::Hookup>(site::HookupId(named));
      CordInputs inputs = startInputs(*site);
      inputs.machineBy = MachineBy::Site;
      inputs.machine = hookup.machine;
      inputs.inletName = hookup.inlet;
      inputs.measure = Measure::Length;
      inputs.distance = 80.0 * foot;
      inputs.outletBy = OutletBy::Site;
      inputs.outlet = site::OutletSocket{site::OutletId(label), "lower"};
      inputs.cordsBy = CordsBy::Jacket;
      inputs.jacket.type = "SJTW";
      inputs.jacket.size = site::known(units::WireSize::awg(10));
      inputs.jacket.conductors = site::known(3);
      inputs.jacket.length = site::known(100.0 * foot);
      const Json theirs =
          consoleAnswer({"cord", "--json", "--site", file, "--hookup", named, "--at", std::string(label) + "/lower",
                         "--distance", "80ft", "--cord", "SJTW 10/3 100ft"});
      CordMemory memory;
      const planning::CordAdvice ours = memory.advise(askedOf(inputs, site, book), {});
      const std::string what = std::string(named) + " at " + label;
      EXPECT_EQ(std::string(text::severityCode(ours.verdict)), theirs["verdict"]) << what;
      ASSERT_EQ(ours.alsoOn.size(), theirs["also_on"].size()) << what;
      EXPECT_EQ(ours.takenBy.has_value(), theirs["taken_by"].is_string()) << what;
      ASSERT_EQ(ours.candidates.size(), theirs["candidates"].size()) << what;
      for (std::size_t i = 0; i < ours.candidates.size(); ++i) {
        ASSERT_NO_FATAL_FAILURE(expectSame(ours.candidates[i], theirs["candidates"][i], what));
      }
      (ours.alsoOn.empty() ? free : crowded) += 1;
    }
  }
  EXPECT_GT(crowded, 10);
  EXPECT_GT(free, 3);
}

}  // namespace
}  // namespace cordreach::app
