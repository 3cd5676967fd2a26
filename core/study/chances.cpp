// SPDX-License-Identifier: GPL-3.0-or-later
#include "study/chances.h"

#include <algorithm>
#include <array>
#include <atomic>
#include <cmath>
#include <numeric>
#include <thread>

#include "study/chance_model.h"
#include "study/chance_sample.h"

namespace cordreach::study {

namespace {

constexpr std::size_t kClasses = 20;  // of an input's draws, for the share that it explains

struct Outcome {
  bool trips = false;
  float nearness = 0.0F;
};

// Everything that was drawn and what came of it, sample after sample.
struct Record {
  std::size_t inputs = 0;
  std::vector<float> draws;  // [sample][input]
  std::vector<Outcome> outcomes;
  std::vector<std::vector<bool>> cords;  // [sample][cord]
};

void drawInto(const ChanceModel& model, std::uint64_t seed, std::uint64_t sample, std::span<float> draws) {
  for (std::size_t i = 0; i < draws.size(); ++i) {
    const double uniform = uniformOf(seed, sample, i);
    const bool isPhase = model.inputs[i].kind == UnknownKind::CyclePhase;
    draws[i] = static_cast<float>(isPhase ? 2.0 * uniform - 1.0 : triangleOf(uniform));
  }
}

bool fill(const ChanceModel& model, const ChanceOptions& options, Record& record) {
  record.inputs = model.inputs.size();
  record.draws.resize(options.samples * record.inputs);
  record.outcomes.resize(options.samples);
  record.cords.resize(options.samples);
  std::atomic<std::size_t> done = 0;
  const std::size_t threads = std::max<std::size_t>(1, options.threads);
  const auto work = [&](std::size_t first) {
    ChanceSampler sampler(model);
    for (std::size_t i = first; i < options.samples && !options.progress.stopRequested(); i += threads) {
      const std::span<float> draws(record.draws.data() + i * record.inputs, record.inputs);
      drawInto(model, options.seed, i, draws);
      SampleResult result = sampler.run(draws);
      record.outcomes[i] = {result.trips, static_cast<float>(result.nearness)};
      record.cords[i] = std::move(result.cordIsOver);
      ++done;
    }
  };
  std::vector<std::thread> workers;
  for (std::size_t t = 1; t < threads; ++t) workers.emplace_back(work, t);
  work(0);
  for (std::thread& worker : workers) worker.join();
  return done == options.samples;
}

// Variance of the class means over the variance of all, less what as many classes of pure chance would show.
double shareOf(const Record& record, std::size_t input, const std::vector<double>& outcome, double mean,
               double variance) {
  std::array<double, kClasses> sum{};
  std::array<double, kClasses> count{};
  for (std::size_t i = 0; i < outcome.size(); ++i) {
    const double place = 0.5 * (static_cast<double>(record.draws[i * record.inputs + input]) + 1.0);
    const std::size_t at = std::min(kClasses - 1, static_cast<std::size_t>(place * static_cast<double>(kClasses)));
    sum[at] += outcome[i];
    count[at] += 1.0;
  }
  double between = 0.0;
  double used = 0.0;
  for (std::size_t k = 0; k < kClasses; ++k) {
    if (count[k] == 0.0) continue;
    const double off = sum[k] / count[k] - mean;
    between += count[k] * off * off;
    used += 1.0;
  }
  const double samples = static_cast<double>(outcome.size());
  const double byChance = (used - 1.0) / samples;
  return std::clamp(between / samples / variance - byChance, 0.0, 1.0);
}

std::vector<Influence> influencesOf(const ChanceModel& model, const Record& record, double trips) {
  const bool allAgree = trips <= 0.0 || trips >= 1.0;
  std::vector<double> outcome;
  outcome.reserve(record.outcomes.size());
  for (const Outcome& one : record.outcomes) {
    outcome.push_back(allAgree ? static_cast<double>(one.nearness) : (one.trips ? 1.0 : 0.0));
  }
  const double samples = static_cast<double>(outcome.size());
  const double mean = std::accumulate(outcome.begin(), outcome.end(), 0.0) / samples;
  const double variance = std::accumulate(outcome.begin(), outcome.end(), 0.0,
                                          [&](double sum, double one) { return sum + (one - mean) * (one - mean); }) /
                          samples;
  std::vector<Influence> influences;
  for (std::size_t i = 0; i < model.inputs.size(); ++i) {
    const double share = variance > 0.0 ? shareOf(record, i, outcome, mean, variance) : 0.0;
    influences.push_back({model.inputs[i].kind, model.inputs[i].id, share});
  }
  std::stable_sort(influences.begin(), influences.end(),
                   [](const Influence& a, const Influence& b) { return a.share > b.share; });
  return influences;
}

bool canBeMeasured(UnknownKind kind) { return kind != UnknownKind::Breaker && kind != UnknownKind::CordHeat; }

}  // namespace

std::string_view nameOf(UnknownKind kind) {
  constexpr std::array<std::string_view, 9> kNames{"breaker",    "breaker_air", "supply_volts",
                                                   "run_length", "cord_length", "cord_heat",
                                                   "drag",       "load_amps",   "cycle_phase"};
  return kNames.at(static_cast<std::size_t>(kind));
}

const Influence* Chance::worthMeasuring() const {
  constexpr double kLeast = 0.01;  // own: below that it would change nothing to be seen
  const auto found = std::find_if(influences.begin(), influences.end(),
                                  [](const Influence& one) { return canBeMeasured(one.kind) && one.share >= kLeast; });
  return found == influences.end() ? nullptr : &*found;
}

std::optional<Chance> chanceOf(const site::Site& site, const site::CircuitId& circuit, const ChanceOptions& options) {
  if (options.samples == 0) return std::nullopt;
  const std::optional<ChanceModel> model = chanceModelOf(site, circuit, options.progress);
  if (!model) return std::nullopt;
  Record record;
  if (!fill(*model, options, record)) return std::nullopt;
  Chance chance;
  chance.samples = options.samples;
  const double samples = static_cast<double>(options.samples);
  const auto trips =
      std::count_if(record.outcomes.begin(), record.outcomes.end(), [](const Outcome& one) { return one.trips; });
  chance.trips = static_cast<double>(trips) / samples;
  chance.standardError = std::sqrt(chance.trips * (1.0 - chance.trips) / samples);
  chance.influences = influencesOf(*model, record, chance.trips);
  for (std::size_t c = 0; c < model->cords.size(); ++c) {
    CordChance cord = model->cords[c].answer;
    const auto over = std::count_if(record.cords.begin(), record.cords.end(), [&](const auto& one) { return one[c]; });
    cord.overRating = static_cast<double>(over) / samples;
    chance.cords.push_back(std::move(cord));
  }
  return chance;
}

}  // namespace cordreach::study
