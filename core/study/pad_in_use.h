// SPDX-License-Identifier: GPL-3.0-or-later
// The pad under a hookup's machine, and what it does to the drag that the plate's amps stand for.
#pragma once

#include <string_view>

#include "physics/load_nameplate.h"
#include "physics/pad_state.h"
#include "site/site.h"
#include "study/corner.h"

namespace cordreach::study {

// The hookup's own choice, else the machine's usual one; none: it has none.
[[nodiscard]] const site::Pad* padInUse(const site::Site& site, const site::Hookup& hookup);

// Row of pad_families.csv; empty: unknown.
[[nodiscard]] std::string_view familyKey(site::PadFamily family);

// Turns a minute it is made for: stated, else its family's.
[[nodiscard]] std::optional<double> ratedRpmOf(const site::Pad& pad);

struct PadDrag {
  physics::DragBand factor;  // against the drag that the plate stands for
  bool guessed = false;      // not by a stated drag factor: from friction, family or condition
};
// In this order: the pad's stated factor (of another than the usual pad); its friction, by T = mu N r where the head's
// force and the diameter are known, else against the usual friction of the work (not of a usual pad whose amps were
// read: these have its friction in them); its family. Its condition multiplies the last two.
[[nodiscard]] PadDrag padDragOf(const site::Site& site, const site::Hookup& hookup, const physics::Nameplate& plate);

[[nodiscard]] double dragAt(const physics::DragBand& drag, Corner corner);

}  // namespace cordreach::study
