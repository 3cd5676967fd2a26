// SPDX-License-Identifier: GPL-3.0-or-later
// How a cord lies. The heat leaving it depends on little else as much.
#pragma once

namespace cordreach::tables {

enum class Laying {
  Straight,  // free air: textbook examples only
  Floor,     // on a hard floor: the default everywhere
  Carpet,    // on a carpet
  Covered,   // under a rug or a mat
  Coiled,    // a hank of some turns, the rest on the floor
  Reel,      // wound on a reel in layers
};

}  // namespace cordreach::tables
