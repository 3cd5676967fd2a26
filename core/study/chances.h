// SPDX-License-Identifier: GPL-3.0-or-later
// How likely a circuit's breaker trips within the planned run, and what it would help most to find out.
// The circuit is run again and again, each time with every input drawn from its band: what is known only within limits
// (lengths, volts, amps, drag, air), what nobody can know (where in its band this breaker lies, when the cooler
// starts).
//   draw    x = m + w (x_high - m) for w > 0, m + w (m - x_low) else, m the likely value; |w| = 1 - sqrt(1 - u): a
//           triangle on either side, half of the draws below the likely value
//   breaker I_th, tau and pick-up between the three curves, on a logarithmic scale, by one w
//   share   of the outcome's variance that an input explains by itself: Var(E[y|x])/Var(y) over 20 classes of x, less
//           what chance alone would show (correlation ratio, Pearson 1905, memory); y is trip or no trip, or how near
//           to a trip it came where all samples agree
// Own: the shapes, and bands where the site states none: amps by a read plate 0.5 to 1 of it, amps read +-5 %.
// Leaves out the peaks of starts, and takes wire as warm as in the likely case. Same seed, same answer, on any number
// of threads.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/progress.h"
#include "site/site.h"

namespace cordreach::study {

enum class UnknownKind {
  Breaker,      // where between earliest and latest it lies; can't be measured without tripping it
  BreakerAir,   // of the site
  SupplyVolts,  // of the site
  RunLength,    // of a circuit's building wire
  CordLength,   // of a hookup's own cord or of an extension
  CordHeat,     // of these: how well it gives off its heat
  Drag,         // of a hookup
  LoadAmps,     // of a fixed load
  CyclePhase,   // of a fixed load: when it comes on
};

[[nodiscard]] std::string_view nameOf(UnknownKind kind);  // "breaker", "breaker_air", ...: the words above, in files

struct Influence {
  UnknownKind kind = UnknownKind::Breaker;
  std::string id;      // of the thing that it is of; empty: of the site
  double share = 0.0;  // of the outcome's variance
};

struct CordChance {
  std::optional<site::HookupId> hookup;  // its own cord, or:
  std::optional<site::ExtensionUseId> extension;
  double overRating = 0.0;  // probability that its conductor ends above its rating
};

struct Chance {
  double trips = 0.0;          // probability
  double standardError = 0.0;  // of that
  std::size_t samples = 0;
  std::vector<Influence> influences;  // largest first
  std::vector<CordChance> cords;

  // What would sharpen the answer most of what a person can find out; none: nothing would change it.
  [[nodiscard]] const Influence* worthMeasuring() const;
};

struct ChanceOptions {
  std::size_t samples = 10000;
  std::uint64_t seed = 1;
  std::size_t threads = 2;
  base::Progress progress{};
};

// From the first hookup of the circuit to the end of its last; without hours for two hours, and for three where only
// fixed loads are on. None: its breaker's rating is unknown, or it was stopped.
[[nodiscard]] std::optional<Chance> chanceOf(const site::Site& site, const site::CircuitId& circuit,
                                             const ChanceOptions& options = {});

}  // namespace cordreach::study
