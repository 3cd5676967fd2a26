// SPDX-License-Identifier: GPL-3.0-or-later
// The place Cord in words: its inputs as they stand in the question, its answer, its cells and its limits.
#pragma once

#include <QString>
#include <QStringList>

#include "desk/cord_model.h"
#include "shell/verdict_choice.h"

namespace cordreach::app {

[[nodiscard]] QString machineText(const CordModel& model);   // "burnisher, 14.6 A"
[[nodiscard]] QString distanceText(const CordModel& model);  // "110 ft"
[[nodiscard]] QString outletText(const CordModel& model);    // "outlet 1-13, 15 A"
[[nodiscard]] QString cordsText(const CordModel& model);     // "our cart, 9 cords"
[[nodiscard]] QString lengthText(const text::Phrasebook& book, units::Length length);
[[nodiscard]] QString gaugeText(const text::Phrasebook& book, const units::WireSize& size);
// "18 ft + 8 ft of slack = 26 ft of cord; its own 50 ft reach."
[[nodiscard]] QString slackText(const CordModel& model);

// For the band; empty before there is an answer.
[[nodiscard]] VerdictWords verdictWords(const CordModel& model);

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
// The rule of thumb beside the answer.
[[nodiscard]] QString thumbText(const CordModel& model);

}  // namespace cordreach::app
