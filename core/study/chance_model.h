// SPDX-License-Identifier: GPL-3.0-or-later
// One circuit made ready for being run thousands of times: its inputs with their bands, its network in every state of
// the run, its breaker. For chances.cpp.
#pragma once

#include <array>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "network/network.h"
#include "physics/breaker_curve.h"
#include "physics/load_law.h"
#include "site/site.h"
#include "study/chances.h"
#include "units/quantity.h"

namespace cordreach::study {

inline constexpr std::size_t kNoInput = static_cast<std::size_t>(-1);

// A load of the circuit: its law at the favourable, likely and adverse end of its drag, and its amps' band.
struct ModelLoad {
  std::array<std::shared_ptr<const physics::LoadLaw>, 3> laws;  // low, likely, high
  std::size_t dragInput = kNoInput;
  std::size_t ampsInput = kNoInput;
  double ampsLow = 1.0, ampsHigh = 1.0;  // factors on the likely current
  std::size_t cycle = kNoInput;          // index in the model's cycles; none: on throughout the state
};

struct ModelBranch {
  std::size_t node = 0;
  std::size_t input = kNoInput;
  double low = 1.0, high = 1.0;  // factors on the likely impedance
};

// The same things on, from `start` to `until` of the run.
struct ModelState {
  network::Circuit circuit;            // likely, warm
  std::vector<network::Phasor> busV;   // behind each pole, likely
  std::vector<ModelLoad> loads;        // of circuit.loads, in order
  std::vector<ModelBranch> branches;   // those with a band
  std::vector<std::size_t> cordNodes;  // [cord of the model]; kNoInput: not there
};

struct ModelSpan {
  double startS = 0.0, untilS = 0.0;  // of the run
  std::size_t state = 0;
};

struct ModelCycle {
  double onS = 0.0, offS = 0.0;
  std::optional<double> firstOnS;  // of the run; none: its phase is an input
  std::size_t input = kNoInput;
};

// A cord's hottest conductor at the end of its run over the current through it, at three corners of its heat.
struct ModelCord {
  CordChance answer;
  std::size_t input = kNoInput;
  double limitC = 0.0;
  double stepA = 0.0;                       // between the points
  std::array<std::vector<double>, 3> endC;  // low, likely, high; beyond the model as its end
};

struct ModelInput {
  UnknownKind kind = UnknownKind::Breaker;
  std::string id;
};

struct ChanceModel {
  std::vector<ModelInput> inputs;
  std::size_t breakerInput = kNoInput, airInput = kNoInput, voltsInput = kNoInput;
  double voltsLow = 1.0, voltsHigh = 1.0;                          // factors; low is the adverse end
  std::array<std::array<physics::ThermalCurve, 3>, 3> curves;      // [earliest, likely, latest][air low, likely, high]
  std::array<std::optional<physics::InstantaneousTrip>, 3> quick;  // of these curves
  std::size_t firstPole = 0, poleCount = 1;
  std::vector<ModelState> states;
  std::optional<std::size_t> before;  // the state just before the run; none: cold
  std::vector<ModelSpan> spans;       // in order of time, without gaps
  std::vector<ModelCycle> cycles;
  std::vector<ModelCord> cords;
};

// None: the breaker's rating is unknown.
[[nodiscard]] std::optional<ChanceModel> chanceModelOf(const site::Site& site, const site::CircuitId& circuit,
                                                       const base::Progress& progress);

}  // namespace cordreach::study
