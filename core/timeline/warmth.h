// SPDX-License-Identifier: GPL-3.0-or-later
// A conductor's temperature as time goes by, and the impedance that its branch has at it.
#pragma once

#include <memory>
#include <optional>

#include "network/network.h"
#include "units/quantity.h"
#include "units/temperature.h"

namespace cordreach::timeline {

struct BranchAmps {
  double poleA = 0.0;     // rms, of the pole that carries most
  double neutralA = 0.0;  // rms

  [[nodiscard]] double largest() const { return poleA > neutralA ? poleA : neutralA; }
};

class Warmth {
 public:
  virtual ~Warmth() = default;
  [[nodiscard]] virtual std::unique_ptr<Warmth> copy() const = 0;

  // Carries those amps for so long (0 or more). Answers after how long its conductor passes `limit` on the way; none:
  // it does not, or was above it already.
  virtual std::optional<units::Duration> carry(const BranchAmps& amps, units::Duration duration,
                                               units::Temperature limit) = 0;
  // As warm as it is, it lies from here on as `other` does, which is of the same kind.
  virtual void layAs(const Warmth& other) = 0;

  [[nodiscard]] virtual network::Branch branch() const = 0;
  [[nodiscard]] virtual units::Temperature conductor() const = 0;  // at its hottest place
  [[nodiscard]] virtual units::Temperature surface() const = 0;    // there
  [[nodiscard]] virtual bool beyondModel() const { return false; }
};

}  // namespace cordreach::timeline
