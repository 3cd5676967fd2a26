// SPDX-License-Identifier: GPL-3.0-or-later
// What is taken where the site says nothing: the cautious end of what is common, so that an unknown never looks better
// than the same thing known. Each is common practice without a source, unless another is named.
#pragma once

#include <optional>

#include "site/site.h"
#include "units/quantity.h"
#include "units/temperature.h"
#include "units/wire_size.h"

namespace cordreach::study {

// Building wire of a circuit: 14 AWG for up to 15 A or an unknown rating, 12 for 20 A, 10 for 30 A, 8 beyond (the
// smallest that NEC 240.4(D) and 310.16 allow).
[[nodiscard]] units::WireSize wireOf(const site::Circuit& circuit);

// One way from the panel to an outlet without a drawn run: by the plan, right-angle distance × 1.2 + 6 m, band × 0.6 to
// × 1.8; without places on the same floor 25 m in the same band.
[[nodiscard]] site::Stated<units::Length> assumedRun(const site::Panel& panel, const site::Outlet& outlet);

// A run drawn with its bends and not measured: its drawn way with what goes up and down besides, band × 0.85 to × 1.3;
// while nobody said what goes up and down, 6 m and the wide band of a run that is not drawn. Nothing: it has no path.
[[nodiscard]] std::optional<site::Stated<units::Length>> drawnRun(const site::Run& run);

// The thinnest plausible copper: 18 AWG in a two-wire cord, 16 AWG in others.
[[nodiscard]] units::WireSize sizeOf(const site::CordMake& make);
[[nodiscard]] int conductorsOf(const site::CordMake& make);
// Without a length: 50 ft for an extension's or a machine's cord.
[[nodiscard]] site::Stated<units::Length> lengthOf(const site::CordMake& make);
// 60 °C unless marked (NEC 400.5).
[[nodiscard]] units::Temperature ratingOf(const site::CordMake& make);

// A plate that nobody read: as much as its plug may carry.
[[nodiscard]] units::Current plateOf(const site::Inlet& inlet);
// As stated, its running amps before its plate; nothing known counts as nothing drawn, and is said.
[[nodiscard]] units::Current currentOf(const site::FixedLoad& load);
[[nodiscard]] units::Current plateOf(const site::FixedLoad& load);

[[nodiscard]] units::Temperature roomOf(const site::Site& site);
[[nodiscard]] units::Temperature wallOf(const site::Site& site);

}  // namespace cordreach::study
