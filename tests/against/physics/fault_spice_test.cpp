// SPDX-License-Identifier: GPL-3.0-or-later
// Random fault loops against ngspice's operating point of the same resistors, all in one run of it.
#include <sys/stat.h>

#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <map>
#include <random>
#include <sstream>
#include <string>
#include <vector>

#include <gtest/gtest.h>

#include "physics/fault_loop.h"
#include "physics/touch_voltage.h"

namespace cordreach::physics {
namespace {

using units::metre;
using units::volt;
using units::WireSize;

struct RandomLoop {
  units::Voltage volts;
  std::vector<FaultLoop> parts;

  [[nodiscard]] FaultLoop whole() const {
    FaultLoop sum{};
    for (const FaultLoop& part : parts) sum = sum + part;
    return sum;
  }
};

std::vector<RandomLoop> randomLoops(std::size_t count) {
  std::mt19937 dice(20260401);
  const auto between = [&](double low, double high) { return std::uniform_real_distribution(low, high)(dice); };
  const std::vector<int> gauges = {18, 16, 14, 12, 10};
  const auto stretch = [&](WireUse use, double mostM) {
    const int gauge = gauges[dice() % gauges.size()];
    return conductorLoop(WireSize::awg(gauge), tables::Metal::Copper, use, between(0.5, mostM) * metre,
                         units::Temperature::fromCelsius(between(0, 150)));
  };
  std::vector<RandomLoop> loops;
  for (std::size_t i = 0; i < count; ++i) {
    RandomLoop loop{(i % 2 == 0 ? 120.0 : 230.0) * volt, {{between(0.005, 0.3), between(0.005, 0.3)}}};
    loop.parts.push_back(stretch(WireUse::Building, 60.0));
    loop.parts.push_back(stretch(WireUse::Cord, 60.0));
    loop.parts.push_back(stretch(WireUse::Cord, 20.0));
    loop.parts.push_back(jointsLoop());
    loops.push_back(std::move(loop));
  }
  return loops;
}

// Line out through nodes a0, a1, ..., the fault a short, back through b's to ground: the frame is where they meet.
std::string netlistOf(const std::vector<RandomLoop>& loops) {
  std::ostringstream text;
  text.precision(15);
  text << "fault loops\n";
  for (std::size_t i = 0; i < loops.size(); ++i) {
    const std::string id = std::to_string(i);
    text << "V" << id << " a" << id << "_0 0 DC " << loops[i].volts.in(volt) << "\n";
    const std::size_t count = loops[i].parts.size();
    for (std::size_t k = 0; k < count; ++k) {
      const FaultLoop& part = loops[i].parts[k];
      const std::string back = k == 0 ? "0" : "b" + id + "_" + std::to_string(k);
      const std::string nextBack = k + 1 == count ? "f" + id : "b" + id + "_" + std::to_string(k + 1);
      const std::string nextOut = k + 1 == count ? "f" + id : "a" + id + "_" + std::to_string(k + 1);
      text << "RL" << id << "_" << k << " a" << id << "_" << k << " " << nextOut << " " << part.lineOhm.real() << "\n"
           << "RR" << id << "_" << k << " " << nextBack << " " << back << " " << part.returnOhm.real() << "\n";
    }
  }
  text << ".control\nset numdgt=12\nop\n";
  for (std::size_t i = 0; i < loops.size(); ++i) text << "print v(f" << i << ") v" << i << "#branch\n";
  text << "quit\n.endc\n.end\n";
  return text.str();
}

std::map<std::string, double> answersOf(const std::string& netlist) {
  std::string folder = (std::filesystem::temp_directory_path() / "cordreach-fault-XXXXXX").string();
  if (mkdtemp(folder.data()) == nullptr) return {};
  const std::filesystem::path place(folder);
  std::ofstream(place / "loops.cir") << netlist;
  const std::string command = "cd '" + folder + "' && ngspice -b loops.cir > answers.txt 2> errors.txt";
  std::map<std::string, double> answers;
  if (std::system(command.c_str()) == 0) {
    std::ifstream file(place / "answers.txt");
    std::string name;
    std::string sign;
    for (std::string line; std::getline(file, line);) {
      std::istringstream words(line);
      double value = 0.0;
      if (words >> name >> sign >> value && sign == "=") answers[name] = value;
    }
  }
  std::filesystem::remove_all(place);
  return answers;
}

TEST(FaultAgainstNgspice, CurrentAndFrameVoltsOfRandomLoops) {
  const auto loops = randomLoops(200);
  const auto answers = answersOf(netlistOf(loops));
  ASSERT_EQ(answers.size(), 2 * loops.size()) << "ngspice did not answer";
  for (std::size_t i = 0; i < loops.size(); ++i) {
    const std::string id = std::to_string(i);
    const FaultLoop whole = loops[i].whole();
    const double amps = -answers.at("v" + id + "#branch");
    EXPECT_NEAR(boltedCurrent(loops[i].volts, whole).si() / amps, 1.0, 1e-6) << id;
    EXPECT_NEAR(touchVoltage(loops[i].volts, whole).si() / answers.at("v(f" + id + ")"), 1.0, 1e-6) << id;
  }
}

}  // namespace
}  // namespace cordreach::physics
