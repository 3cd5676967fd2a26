// SPDX-License-Identifier: GPL-3.0-or-later
// What a pad's make and condition do to the drag it has when it is right, sound and centred: factors with a band
// (pad_drag.csv, all own: nobody published one), which multiply. What speed a family of pads is made for:
// pad_families.csv.
#pragma once

#include <optional>
#include <string_view>

#include "physics/load_nameplate.h"

namespace cordreach::physics {

struct DragBand {
  double likely = 1.0, low = 1.0, high = 1.0;

  friend DragBand operator*(const DragBand& a, const DragBand& b) {
    return {a.likely * b.likely, a.low * b.low, a.high * b.high};
  }
};

// By its row in pad_drag.csv, which must be one of it.
[[nodiscard]] DragBand padDrag(std::string_view state);

// Turns a minute that pads of that family are made for; nothing for an unknown family.
[[nodiscard]] std::optional<double> padFamilyRpm(std::string_view family);

// The pad of one family on a machine of that speed: too coarse, too fine or, as far as one can tell, right.
[[nodiscard]] DragBand familyDrag(std::string_view family, double machineRpm);

// Torque that a machine's plate (its running amps, where known: an ammeter's reading) stands for at its pad, friction
// of the machine apart; T = mu N r then gives mu N. None: no speed, or not a model that carries a pad.
[[nodiscard]] std::optional<units::Torque> plateTorque(const Nameplate& plate);

}  // namespace cordreach::physics
