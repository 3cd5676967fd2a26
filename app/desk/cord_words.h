// SPDX-License-Identifier: GPL-3.0-or-later
// The place Cord in words: its inputs as they stand in the question, and its answer.
#pragma once

#include <QString>
#include <QStringList>

#include "desk/cord_model.h"
#include "shell/verdict_choice.h"

namespace cordreach::app {

[[nodiscard]] QString machineText(const CordModel& model);   // "burnisher, 14.6 A"
[[nodiscard]] QString distanceText(const CordModel& model);  // "110 ft + 8 ft slack"
[[nodiscard]] QString outletText(const CordModel& model);    // "outlet 1-13, 15 A"
[[nodiscard]] QString cordsText(const CordModel& model);     // "our cart, 9 cords"
[[nodiscard]] QString lengthText(const text::Phrasebook& book, units::Length length);
[[nodiscard]] QString gaugeText(const text::Phrasebook& book, const units::WireSize& size);
// "18 ft + 8 ft of slack = 26 ft of cord; its own 50 ft reach."
[[nodiscard]] QString slackText(const CordModel& model);
// How the plan was followed, or why it was not; empty: nobody asked for it.
[[nodiscard]] QString walkText(const CordModel& model);

// For the band; empty before there is an answer.
[[nodiscard]] VerdictWords verdictWords(const CordModel& model);

// The rule of thumb beside the answer.
[[nodiscard]] QString thumbText(const CordModel& model);

}  // namespace cordreach::app
