// SPDX-License-Identifier: GPL-3.0-or-later
#include "study/chance_sample.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "network/partial.h"

namespace cordreach::study {

namespace {

constexpr std::size_t kMostCycles = 6;   // own: cycling loads in every combination; further ones go with the sixth
constexpr double kShortestStepS = 1e-3;  // so that rounding can not hold the clock

double within(double low, double high, double w) { return w < 0.0 ? 1.0 + w * (1.0 - low) : 1.0 + w * (high - 1.0); }

// Between three values given at w of -1, 0 and 1.
double between(double low, double middle, double high, double w) {
  return w < 0.0 ? middle + w * (middle - low) : middle + w * (high - middle);
}

double logBetween(double low, double middle, double high, double w) {
  return std::exp(between(std::log(low), std::log(middle), std::log(high), w));
}

// Between the law of a machine at its likely drag and that at one end of it, and more or less of the whole.
class DrawnLaw : public physics::LoadLaw {
 public:
  void set(const ModelLoad& load, double drag, double factor) {
    m_likely = load.laws[1].get();
    m_end = load.laws[drag < 0.0 ? 0 : 2].get();
    m_weight = std::abs(drag);
    m_factor = factor;
  }
  void switchTo(bool on) { m_on = on; }
  [[nodiscard]] physics::LoadPoint at(double voltageV) const override {
    if (!m_on) return {};
    physics::LoadPoint point = m_likely->at(voltageV);
    if (m_weight > 0.0 && m_end != m_likely) point = mixed(point, m_end->at(voltageV));
    return scaled(point);
  }
  [[nodiscard]] physics::LoadPoint stalledAt(double voltageV) const override {
    return m_on ? scaled(m_likely->stalledAt(voltageV)) : physics::LoadPoint{};
  }
  [[nodiscard]] double pullOutVoltageV() const override {
    if (!m_on) return 0.0;
    return m_likely->pullOutVoltageV() + m_weight * (m_end->pullOutVoltageV() - m_likely->pullOutVoltageV());
  }

 private:
  [[nodiscard]] physics::LoadPoint mixed(const physics::LoadPoint& likely, const physics::LoadPoint& end) const {
    const auto mix = [&](auto a, auto b) { return a + m_weight * (b - a); };
    physics::LoadPoint point = likely;
    point.admittanceS = mix(likely.admittanceS, end.admittanceS);
    point.admittanceSlopeSPerV = mix(likely.admittanceSlopeSPerV, end.admittanceSlopeSPerV);
    point.distortionA = mix(likely.distortionA, end.distortionA);
    point.thirdHarmonicA = mix(likely.thirdHarmonicA, end.thirdHarmonicA);
    point.hasRunningPoint = m_weight < 0.5 ? likely.hasRunningPoint : end.hasRunningPoint;
    return point;
  }
  [[nodiscard]] physics::LoadPoint scaled(physics::LoadPoint point) const {
    point.admittanceS *= m_factor;
    point.admittanceSlopeSPerV *= m_factor;
    point.distortionA *= m_factor;
    point.thirdHarmonicA *= m_factor;
    return point;
  }

  const physics::LoadLaw* m_likely = nullptr;
  const physics::LoadLaw* m_end = nullptr;
  double m_weight = 0.0;
  double m_factor = 1.0;
  bool m_on = true;
};

struct DrawnBreaker {
  double ultimateA = 0.0, timeConstantS = 0.0, pickUpA = std::numeric_limits<double>::infinity();
};

double drawOf(std::span<const float> draws, std::size_t input) {
  return input == kNoInput ? 0.0 : static_cast<double>(draws[input]);
}

DrawnBreaker breakerOf(const ChanceModel& model, std::span<const float> draws) {
  const double place = drawOf(draws, model.breakerInput);
  const double air = drawOf(draws, model.airInput);
  std::array<double, 3> ultimateA{};
  std::array<double, 3> timeConstantS{};
  for (std::size_t i = 0; i < 3; ++i) {
    const auto& curve = model.curves[i];
    ultimateA[i] = between(curve[0].ultimate.si(), curve[1].ultimate.si(), curve[2].ultimate.si(), air);
    timeConstantS[i] = curve[1].timeConstant.si();
  }
  DrawnBreaker breaker;
  breaker.ultimateA = logBetween(ultimateA[0], ultimateA[1], ultimateA[2], place);
  breaker.timeConstantS = logBetween(timeConstantS[0], timeConstantS[1], timeConstantS[2], place);
  if (model.quick[0]) {
    breaker.pickUpA =
        logBetween(model.quick[0]->pickUp.si(), model.quick[1]->pickUp.si(), model.quick[2]->pickUp.si(), place);
  }
  return breaker;
}

// Whether it is on at a time, and when that next changes.
struct CyclePlace {
  bool on = true;
  double untilS = std::numeric_limits<double>::infinity();
};

CyclePlace placeOf(const ModelCycle& cycle, double timeS, std::span<const float> draws) {
  const double periodS = cycle.onS + cycle.offS;
  if (periodS <= 0.0) return {};
  const double firstOnS = cycle.firstOnS.value_or(0.5 * (drawOf(draws, cycle.input) + 1.0) * periodS);
  double since = std::fmod(timeS - firstOnS, periodS);
  if (since < 0.0) since += periodS;
  if (since < cycle.onS) return {true, timeS + cycle.onS - since};
  return {false, timeS + periodS - since};
}

// What a cord's conductor comes to at that current, at one corner.
double endOf(const ModelCord& cord, std::size_t corner, double rmsA) {
  const std::vector<double>& points = cord.endC[corner];
  const double place = rmsA / cord.stepA;
  const std::size_t at = std::min(static_cast<std::size_t>(place), points.size() - 2);
  return points[at] + (place - static_cast<double>(at)) * (points[at + 1] - points[at]);
}

}  // namespace

// The circuit in every state of the run, with this sample's draws in it.
class ChanceSampler::Circuits {
 public:
  explicit Circuits(const ChanceModel& model) : m_model(model) {
    for (const ModelState& state : model.states) {
      State& own = m_states.emplace_back();
      own.circuit = state.circuit;
      own.busV = state.busV;
      for (auto& load : own.circuit.loads) {
        own.drawn.push_back(std::make_shared<DrawnLaw>());
        load.law = own.drawn.back();
      }
      own.currentA.resize(std::size_t{1} << std::min(model.cycles.size(), kMostCycles));
    }
  }

  void draw(std::span<const float> draws) {
    m_cordA.assign(m_model.cords.size(), 0.0);
    const double volts = within(m_model.voltsLow, m_model.voltsHigh, drawOf(draws, m_model.voltsInput));
    for (std::size_t s = 0; s < m_states.size(); ++s) {
      const ModelState& likely = m_model.states[s];
      State& own = m_states[s];
      for (std::size_t i = 0; i < own.busV.size(); ++i) own.busV[i] = likely.busV[i] * volts;
      for (const ModelBranch& branch : likely.branches) {
        const double factor = within(branch.low, branch.high, drawOf(draws, branch.input));
        own.circuit.nodes[branch.node].branch.poleOhm = likely.circuit.nodes[branch.node].branch.poleOhm * factor;
        own.circuit.nodes[branch.node].branch.neutralOhm = likely.circuit.nodes[branch.node].branch.neutralOhm * factor;
      }
      for (std::size_t i = 0; i < likely.loads.size(); ++i) {
        const ModelLoad& load = likely.loads[i];
        const double factor = within(load.ampsLow, load.ampsHigh, drawOf(draws, load.ampsInput));
        own.drawn[i]->set(load, drawOf(draws, load.dragInput), factor);
      }
      std::fill(own.currentA.begin(), own.currentA.end(), -1.0);
    }
  }

  // Of the circuit's largest pole, with those cycling loads on whose bit is set.
  double currentA(std::size_t state, std::size_t combination) {
    double& known = m_states[state].currentA[combination];
    if (known < 0.0) known = solve(state, combination);
    return known;
  }

  [[nodiscard]] double cordA(std::size_t cord) const { return m_cordA[cord]; }

 private:
  struct State {
    network::Circuit circuit;
    std::vector<network::Phasor> busV;
    std::vector<std::shared_ptr<DrawnLaw>> drawn;
    std::vector<double> currentA;  // [combination]; below 0: not solved yet
  };

  double solve(std::size_t stateIndex, std::size_t combination) {
    const ModelState& model = m_model.states[stateIndex];
    State& own = m_states[stateIndex];
    for (std::size_t i = 0; i < model.loads.size(); ++i) {
      const std::size_t cycle = std::min(model.loads[i].cycle, kMostCycles - 1);
      own.drawn[i]->switchTo(model.loads[i].cycle == kNoInput || ((combination >> cycle) & 1U) != 0U);
    }
    // A hundredth of a volt is a thousandth of what the draws are good for.
    const network::CircuitAlone solved = network::solveCircuit(own.circuit, own.busV, {.toleranceV = 1e-2});
    for (std::size_t c = 0; c < m_cordA.size(); ++c) {
      if (model.cordNodes[c] == kNoInput) continue;
      const auto& through = solved.circuit.branches[model.cordNodes[c]].poleRmsA;
      m_cordA[c] = std::max(m_cordA[c], *std::max_element(through.begin(), through.end()));
    }
    const auto& poles = solved.circuit.branches.front().poleRmsA;
    const auto first = poles.begin() + static_cast<std::ptrdiff_t>(m_model.firstPole);
    return *std::max_element(first, first + static_cast<std::ptrdiff_t>(m_model.poleCount));
  }

  const ChanceModel& m_model;
  std::vector<State> m_states;
  std::vector<double> m_cordA;  // [cord]: largest rms through it in what was solved
};

ChanceSampler::ChanceSampler(const ChanceModel& model)
    : m_model(model), m_circuits(std::make_unique<Circuits>(model)) {}

ChanceSampler::~ChanceSampler() = default;

SampleResult ChanceSampler::run(std::span<const float> draws) {
  m_circuits->draw(draws);
  SampleResult result;
  result.nearness = breakerNearness(draws);
  result.trips = result.nearness >= 1.0;
  for (std::size_t c = 0; c < m_model.cords.size(); ++c) {
    const ModelCord& cord = m_model.cords[c];
    const double rmsA = m_circuits->cordA(c);
    const double endC =
        between(endOf(cord, 0, rmsA), endOf(cord, 1, rmsA), endOf(cord, 2, rmsA), drawOf(draws, cord.input));
    result.cordIsOver.push_back(endC > cord.limitC);
  }
  return result;
}

double ChanceSampler::breakerNearness(std::span<const float> draws) {
  const DrawnBreaker breaker = breakerOf(m_model, draws);
  const auto target = [&](double rmsA) { return rmsA * rmsA / (breaker.ultimateA * breaker.ultimateA); };
  const std::size_t cycles = std::min(m_model.cycles.size(), kMostCycles);
  double theta = m_model.before ? target(m_circuits->currentA(*m_model.before, 0)) : 0.0;
  double nearest = theta;
  for (const ModelSpan& span : m_model.spans) {
    for (double timeS = span.startS; timeS < span.untilS;) {
      std::size_t combination = 0;
      double untilS = span.untilS;
      for (std::size_t c = 0; c < cycles; ++c) {
        const CyclePlace place = placeOf(m_model.cycles[c], timeS, draws);
        if (place.on) combination |= std::size_t{1} << c;
        untilS = std::min(untilS, place.untilS);
      }
      untilS = std::max(untilS, timeS + kShortestStepS);
      const double rmsA = m_circuits->currentA(span.state, combination);
      theta = target(rmsA) + (theta - target(rmsA)) * std::exp(-(untilS - timeS) / breaker.timeConstantS);
      nearest = std::max({nearest, theta, rmsA / breaker.pickUpA});
      timeS = untilS;
    }
  }
  return nearest;
}

double uniformOf(std::uint64_t seed, std::uint64_t sample, std::uint64_t input) {
  std::uint64_t z = seed * 0x9E3779B97F4A7C15ULL + sample * 0xBF58476D1CE4E5B9ULL + input * 0x94D049BB133111EBULL;
  for (int round = 0; round < 2; ++round) {
    z += 0x9E3779B97F4A7C15ULL;
    z = (z ^ (z >> 30U)) * 0xBF58476D1CE4E5B9ULL;
    z = (z ^ (z >> 27U)) * 0x94D049BB133111EBULL;
    z ^= z >> 31U;
  }
  return static_cast<double>(z >> 11U) * 0x1.0p-53;
}

double triangleOf(double uniform) {
  const double side = uniform < 0.5 ? 2.0 * uniform : 2.0 * uniform - 1.0;
  const double w = 1.0 - std::sqrt(1.0 - side);
  return uniform < 0.5 ? -w : w;
}

}  // namespace cordreach::study
