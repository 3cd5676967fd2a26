// SPDX-License-Identifier: GPL-3.0-or-later
// What the place Heat says of cords and temperatures: how it feels first, degrees after.
#pragma once

#include <QString>
#include <QStringList>

#include "planning/lesson.h"
#include "text/phrasebook.h"

namespace cordreach::app {

inline constexpr double kOldOpacity = 0.55;  // of what is being worked out anew

// "SJTW 12/3, 100 ft, coiled, 10 turns"; a name of its own instead of the cord.
[[nodiscard]] QString caseName(const text::Phrasebook& book, const planning::LessonCase& side);
[[nodiscard]] QString cordWords(const text::Phrasebook& book, const site::CordMake& make);
// "12/3, 100 ft".
[[nodiscard]] QString shortCordWords(const text::Phrasebook& book, const site::CordMake& make);
[[nodiscard]] QString layingWords(const text::Phrasebook& book, const site::LayingOfCord& laying);

// "as long as you like", "a minute at most", ...; beyond the model "not at all".
[[nodiscard]] QString handWords(const text::Phrasebook& book, const study::DemonstrationPoint& point);
// "easy to hold", "too hot to hold", ...: the same in a word.
[[nodiscard]] QString outsideWords(const text::Phrasebook& book, const study::DemonstrationPoint& point);
// "lukewarm", "softens plastic", ...
[[nodiscard]] QString insideWords(const text::Phrasebook& book, const study::DemonstrationPoint& point,
                                  units::Temperature limit);
// All of them, for measuring: what may stand as a hand's words, and what may stand inside or outside.
[[nodiscard]] QStringList allHandWords(const text::Phrasebook& book);
[[nodiscard]] QStringList allFeelWords(const text::Phrasebook& book);
// "102 °C"; "beyond the model".
[[nodiscard]] QString degrees(const text::Phrasebook& book, const std::optional<study::Band<units::Temperature>>& band);
[[nodiscard]] QString degrees(const text::Phrasebook& book, units::Temperature temperature);
// "25:00"; with hours "1:05:00".
[[nodiscard]] QString clockWords(units::Duration time);

}  // namespace cordreach::app
