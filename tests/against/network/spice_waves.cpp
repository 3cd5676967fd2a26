// SPDX-License-Identifier: GPL-3.0-or-later
#include "against/network/spice_waves.h"

#include <cmath>
#include <numbers>
#include <sstream>

#include "support/spice_process.h"

namespace cordreach::testing {

namespace {

constexpr double kFrequencyHz = 60.0;
constexpr int kCycles = 6;
constexpr double kStepS = 1.0 / kFrequencyHz / 800.0;

// Lines of time and value in turn, one pair a vector.
std::vector<SpiceWave> readWaves(const std::string& text, std::size_t count) {
  std::vector<SpiceWave> waves(count);
  std::istringstream lines(text);
  std::string line;
  while (std::getline(lines, line)) {
    std::istringstream numbers(line);
    double time = 0;
    double value = 0;
    for (SpiceWave& wave : waves) {
      if (!(numbers >> time >> value)) return {};
      wave.timeS.push_back(time);
      wave.value.push_back(value);
    }
  }
  return waves;
}

// Whole cycles only: the first sample stands for the same instant of its cycle as one after the last.
void trim(SpiceWave& wave) {
  constexpr std::size_t kSamples = 800 * kCycles;
  if (wave.value.size() <= kSamples) return;
  const auto extra = static_cast<std::ptrdiff_t>(wave.value.size() - kSamples);
  wave.timeS.erase(wave.timeS.begin(), wave.timeS.begin() + extra);
  wave.value.erase(wave.value.begin(), wave.value.begin() + extra);
}

}  // namespace

double SpiceWave::rms() const {
  double sum = 0;
  for (const double v : value) sum += v * v;
  return std::sqrt(sum / static_cast<double>(value.size()));
}

double SpiceWave::mean() const {
  double sum = 0;
  for (const double v : value) sum += v;
  return sum / static_cast<double>(value.size());
}

std::complex<double> SpiceWave::harmonic(int order) const {
  std::complex<double> sum = 0;
  for (std::size_t i = 0; i < value.size(); ++i) {
    sum += value[i] * std::polar(1.0, -2.0 * std::numbers::pi * kFrequencyHz * order * timeS[i]);
  }
  return std::numbers::sqrt2 / static_cast<double>(value.size()) * sum;
}

SpiceWave operator-(const SpiceWave& a, const SpiceWave& b) {
  SpiceWave difference = a;
  for (std::size_t i = 0; i < a.value.size(); ++i) difference.value[i] -= b.value[i];
  return difference;
}

std::vector<SpiceWave> spiceWaves(const std::string& circuit, const std::vector<std::string>& vectors,
                                  double durationS) {
  const double fromS = durationS - (kCycles + 1) / kFrequencyHz;
  std::ostringstream netlist;
  netlist.precision(12);
  std::string names;
  for (const std::string& vector : vectors) names += " " + vector;
  netlist << circuit << ".options method=gear reltol=1e-4\n.control\nset numdgt=10\ntran " << kStepS << ' ' << durationS
          << ' ' << fromS << ' ' << kStepS << "\nlinearize" << names << "\nwrdata waves.txt" << names
          << "\nquit\n.endc\n.end\n";
  auto waves = readWaves(spiceOutput(netlist.str(), "waves.txt"), vectors.size());
  for (SpiceWave& wave : waves) trim(wave);
  return waves;
}

}  // namespace cordreach::testing
