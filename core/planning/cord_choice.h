// SPDX-License-Identifier: GPL-3.0-or-later
// One cord named for a machine, a distance and an outlet: each that could be taken is put into a tiny building and
// goes through the same study and rules as any site, so that every place of the program says the same.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "base/error.h"
#include "base/progress.h"
#include "planning/circuit_users.h"
#include "planning/cord_judging.h"
#include "planning/cord_question.h"
#include "rules/finding.h"
#include "study/band.h"

namespace cordreach::planning {

struct CordCandidate {
  units::WireSize size;
  units::Length length;
  std::string type;                  // letters of the jacket
  std::optional<site::CordId> cord;  // of the cart
  std::string label;
  bool plannedElsewhere = false;                             // the plan has it in use somewhere else then
  study::Band<units::Voltage> voltage;                       // at the machine's terminals
  study::Band<double> dropPercent;                           // of nominal
  std::optional<study::Band<units::Temperature>> conductor;  // of the extension; none: beyond the model
  rules::Severity verdict;
  std::string limit;                       // code of the worst finding; empty when OK
  std::vector<rules::Reason> why;          // its reasons; of a sound one, the margin to the volts limit. Never empty
  std::vector<LimitUse> limits;            // how much of each is used
  std::vector<rules::Severity> byBreaker;  // its verdict on each of likelyBreakers(), the strictest being `verdict`
};

struct CordAdvice {
  bool extensionNeeded = false;
  std::optional<std::size_t> choice;  // index in candidates
  // "cord.chosen", "cord.not_needed", "cord.not_needed_but_unsound", "cord.none_long_enough", "cord.none_works",
  // "cord.none_free": what would do is planned elsewhere then
  std::string reason;
  base::Arguments arguments;  // needed_m, own_m, and of the choice or of the worst finding what the words need
  // Of what is advised: the choice, or the machine without extension; else of the best left.
  rules::Severity verdict = rules::Severity::Ok;
  std::vector<CordCandidate> candidates;  // that reach; lightest first, then shortest
  // The trade's rule of thumb: one stock size heavier than the machine's own cord, and never less is chosen.
  units::WireSize ruleOfThumb = units::WireSize::awg(12);
  // The one thing worth finding out, because the answer could be better: "find.breaker" (then rating_a, and of the cord
  // that would do size, length_m, cord), "find.run", "find.plate"; empty: nothing.
  std::string findOut;
  base::Arguments findOutArguments;
  // Of an outlet of a described building: what else its circuit feeds then, and whose plug is in that socket then.
  std::vector<CircuitUser> alsoOn{};
  std::optional<std::string> takenBy{};
};

[[nodiscard]] CordAdvice chooseCord(const CordQuestion& question);

// The cords that may be taken, lightest first, then shortest: those in service on the cart, the one whose jacket was
// read, or common stock.
[[nodiscard]] std::vector<site::Cord> cordsOf(const CordQuestion& question);
// The lengths that every supplier keeps, in feet.
inline constexpr std::array kStockFeet{25, 50, 75, 100};
// SJTW with the ends of the machine's own plug.
[[nodiscard]] site::Cord stockCord(const site::CordMake& own, const units::WireSize& size, units::Length length);

// Those cords, each judged; stopped early, the rest is missing.
[[nodiscard]] std::vector<CordCandidate> judgeCords(const CordQuestion& question, const std::vector<site::Cord>& cords,
                                                    const base::Progress& progress = {});
// The advice from what was judged, of which some may not reach. Where the machine's own cord reaches, that is judged
// instead.
[[nodiscard]] CordAdvice adviseFrom(const CordQuestion& question, const std::vector<CordCandidate>& judged);

// Cord that is needed from outlet to work: the distance and 2.4 m of slack.
[[nodiscard]] units::Length neededFor(const CordQuestion& question);
[[nodiscard]] bool reaches(const CordQuestion& question, units::Length extension);

}  // namespace cordreach::planning
