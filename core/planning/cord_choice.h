// SPDX-License-Identifier: GPL-3.0-or-later
// One cord named for a machine, a distance and an outlet: each that could be taken is put into a tiny building and
// goes through the same study and rules as any site, so that every place of the program says the same.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/error.h"
#include "rules/finding.h"
#include "site/equipment.h"
#include "site/site.h"
#include "study/band.h"

namespace cordreach::planning {

struct CordQuestion {
  std::string name;   // of the machine, for the words; may be empty
  site::Inlet inlet;  // its plate, class and own cord
  std::optional<units::Power> shaftPower;
  units::Length distance;                 // from the outlet to the farthest work, along the floor
  std::optional<units::Current> breaker;  // none: unknown, judged on 15 A and on 20 A, the stricter counts
  site::Known<units::Length> run;         // panel to outlet; none: guessed
  site::Known<units::WireSize> runSize;   // none: by the breaker
  std::string receptacle;                 // "5-15", "5-20"; empty: the breaker's rating
  const site::Site* cart = nullptr;       // whose cords in service may be taken; none: common stock
};

struct CordCandidate {
  units::WireSize size;
  units::Length length;
  std::string type;                  // letters of the jacket
  std::optional<site::CordId> cord;  // of the cart
  std::string label;
  study::Band<units::Voltage> voltage;                       // at the machine's terminals
  study::Band<double> dropPercent;                           // of nominal
  std::optional<study::Band<units::Temperature>> conductor;  // of the extension; none: beyond the model
  rules::Severity verdict;
  std::string limit;               // code of the worst finding; empty when OK
  std::vector<rules::Reason> why;  // its reasons; of a sound one, the margin to the volts limit. Never empty
};

struct CordAdvice {
  bool extensionNeeded = false;
  std::optional<std::size_t> choice;  // index in candidates
  // "cord.chosen", "cord.not_needed", "cord.not_needed_but_unsound", "cord.none_long_enough", "cord.none_works"
  std::string reason;
  base::Arguments arguments;  // needed_m, own_m, and of the choice or of the worst finding what the words need
  rules::Severity verdict;    // of what is advised: the choice, or the machine without extension; else of the best left
  std::vector<CordCandidate> candidates;  // lightest first, then shortest
};

[[nodiscard]] CordAdvice chooseCord(const CordQuestion& question);

}  // namespace cordreach::planning
