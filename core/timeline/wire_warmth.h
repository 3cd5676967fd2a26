// SPDX-License-Identifier: GPL-3.0-or-later
// Wire in a wall: it follows what it would come to (`BranchHeat`) with one time constant, as the square of the amps
// that it has felt:   d(a²)/dt = (I² - a²)/τ,   of poles and neutral apart; exact while the amps stay.
// τ 300 s (own, within a factor of two): a 12 AWG conductor with twice its copper's heat capacity for its insulation
// gives off 5.9 W/m at its ampacity of 30 A and 60 K: 230 s; a raceway adds to it. Range: as its `BranchHeat`.
#pragma once

#include <functional>
#include <memory>

#include "timeline/settle.h"
#include "timeline/warmth.h"

namespace cordreach::timeline {

inline constexpr units::Duration kWireTimeConstant = 300.0 * units::second;

class WireWarmth : public Warmth {
 public:
  // `temperatureAt`: of the wire that has long carried those amps.
  WireWarmth(std::shared_ptr<const BranchHeat> heat, std::function<units::Temperature(double rmsA)> temperatureAt)
      : m_heat(std::move(heat)), m_temperatureAt(std::move(temperatureAt)) {}

  [[nodiscard]] std::unique_ptr<Warmth> copy() const override { return std::make_unique<WireWarmth>(*this); }
  std::optional<units::Duration> carry(const BranchAmps& amps, units::Duration duration,
                                       units::Temperature limit) override;
  void layAs(const Warmth& /*other*/) override {}  // a wall stays as it is
  [[nodiscard]] network::Branch branch() const override;
  [[nodiscard]] units::Temperature conductor() const override;
  [[nodiscard]] units::Temperature surface() const override { return conductor(); }

 private:
  std::shared_ptr<const BranchHeat> m_heat;
  std::function<units::Temperature(double)> m_temperatureAt;
  double m_poleA2 = 0.0;
  double m_neutralA2 = 0.0;
};

}  // namespace cordreach::timeline
