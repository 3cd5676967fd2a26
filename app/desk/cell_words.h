// SPDX-License-Identifier: GPL-3.0-or-later
// The field of the place Cord in words: its cells, the limits of a cord, the cords themselves.
#pragma once

#include <QString>

#include "desk/cord_model.h"

namespace cordreach::app {

struct CellWords {
  rules::Severity severity = rules::Severity::Ok;
  bool tooShort = false;
  bool empty = false;  // still being worked out
  QString head;        // "OK", "volts", "too short"
  QString figure;      // "volts 60 %", "1.6 × limit"
  QString spoken;      // all of it: "12 AWG, 75 ft, OK, volts 60 % used, cord C06"
};
[[nodiscard]] CellWords cellWords(const CordModel& model, const CordCell& cell);

// "Volts at the machine: 112.6 V, at least 103.5 V".
struct LimitWords {
  QString name;
  QString value;
  QString source;  // of the limit
  std::optional<double> used;
};
[[nodiscard]] LimitWords limitWords(const text::Phrasebook& book, const planning::LimitUse& use);

// "SJTW 12 AWG 75 ft", with the cart's label before it.
[[nodiscard]] QString candidateName(const text::Phrasebook& book, const planning::CordCandidate& candidate);
// What its finding says in a few words; of a sound one the limit that is nearest.
[[nodiscard]] QString candidateLine(const text::Phrasebook& book, const planning::CordCandidate& candidate);

}  // namespace cordreach::app
