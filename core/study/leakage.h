// SPDX-License-Identifier: GPL-3.0-or-later
// Leakage to earth that adds up on each ground-fault device of a site while things are on together. Mostly capacitive,
// so amounts add, not squares. Of an appliance as stated; else likely what its kind is allowed to leak, between nothing
// and that. Of a cord with an earth V omega C of its length (at 60 Hz, the greater); building wire is left out.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "site/site.h"
#include "study/band.h"
#include "units/quantity.h"

namespace cordreach::study {

struct LeakageShare {
  std::optional<site::HookupId> hookup;  // one of the two; a hookup with the cords of its own way
  std::optional<site::FixedLoadId> load;
  Band<units::Current> current;
  bool stated = false;  // somebody measured or read it
};

// A ground-fault device: one of the three says which.
struct LeakageAnswer {
  std::optional<site::CircuitId> breaker;
  std::optional<site::OutletId> outlet;
  std::optional<site::HookupId> inLine;   // on the way of that hookup, which is the only one behind it
  std::optional<units::Duration> moment;  // start of its worst moment; none: outside all hours
  Band<units::Current> sum;
  std::vector<LeakageShare> shares;  // largest first
};

// Of every device that anything is plugged into or wired to.
[[nodiscard]] std::vector<LeakageAnswer> leakagesOf(const site::Site& site);

}  // namespace cordreach::study
