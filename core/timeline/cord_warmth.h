// SPDX-License-Identifier: GPL-3.0-or-later
// A flexible cord through time: its thermal ladder where it lies worst, and beside that the ladder of what lies
// otherwise. Both carry the larger of the pole's and the neutral's amps.
#pragma once

#include <functional>
#include <optional>

#include "physics/cord_ladder.h"
#include "timeline/warmth.h"

namespace cordreach::timeline {

// The branch with its conductor that warm where it lies worst and elsewhere.
using BranchOfCord = std::function<network::Branch(units::Temperature worst, units::Temperature elsewhere)>;

class CordWarmth : public Warmth {
 public:
  struct Inputs {
    physics::CordLadder worst;
    std::optional<physics::CordLadder> elsewhere;  // none: all of it lies the same way
    units::Temperature air;
    BranchOfCord branch;
    double toleranceK = 0.02;  // of a step of the ladder
  };
  explicit CordWarmth(const Inputs& inputs);

  [[nodiscard]] std::unique_ptr<Warmth> copy() const override { return std::make_unique<CordWarmth>(*this); }
  std::optional<units::Duration> carry(const BranchAmps& amps, units::Duration duration,
                                       units::Temperature limit) override;
  void layAs(const Warmth& other) override;
  [[nodiscard]] network::Branch branch() const override;
  [[nodiscard]] units::Temperature conductor() const override { return m_worst.now().conductor; }
  [[nodiscard]] units::Temperature surface() const override { return m_worst.now().surface; }
  [[nodiscard]] bool beyondModel() const override { return m_worst.beyondModel(); }

 private:
  Inputs m_inputs;
  physics::LadderRun m_worst;
  std::optional<physics::LadderRun> m_elsewhere;
};

}  // namespace cordreach::timeline
