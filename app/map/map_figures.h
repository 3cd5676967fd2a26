// SPDX-License-Identifier: GPL-3.0-or-later
// The figures on the map in words: volts and amps of machines, temperature of cords, amps of circuits.
#pragma once

#include <QString>
#include <unordered_map>

#include "map/map_content.h"
#include "shell/say.h"

namespace cordreach::app {

// One decimal, as on drawings.
[[nodiscard]] QString ampsText(const text::Phrasebook& book, units::Current current);
[[nodiscard]] QString voltsText(const text::Phrasebook& book, units::Voltage voltage);
[[nodiscard]] QString degreesText(const text::Phrasebook& book, units::Temperature temperature);
[[nodiscard]] QString sizeText(const text::Phrasebook& book, const units::WireSize& size);
// "18:15"
[[nodiscard]] QString timeText(const text::Phrasebook& book, units::Duration time);

// "1A-4": panel and number.
[[nodiscard]] QString circuitName(const site::Site& site, const site::CircuitId& circuit);
// Worst finding about a subject that is not accepted.
[[nodiscard]] rules::Severity severityOf(const Verdict* verdict, const rules::Subject& subject);
// The figure of an outlet in an overlay; empty when there is none to give.
[[nodiscard]] QString overlayFigure(const ContentWish& wish, const site::Outlet& outlet);
// The lowest of each outlet's contacts; empty unless that is the overlay.
[[nodiscard]] std::unordered_map<site::OutletId, units::Voltage> voltsByOutlet(const ContentWish& wish);
[[nodiscard]] const study::HookupAnswer* answerOf(const ContentWish& wish, const site::HookupId& hookup);

}  // namespace cordreach::app
