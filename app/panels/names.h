// SPDX-License-Identifier: GPL-3.0-or-later
// What the things of a site are called on screen, and whether a subject is still there.
#pragma once

#include <string>

#include "rules/finding.h"
#include "site/site.h"
#include "text/phrasebook.h"

namespace cordreach::app {

[[nodiscard]] bool isThere(const site::Site& site, const rules::Subject& subject);

// "Outlet 1-13", "Panel 1A", "Burnisher, 1600 rpm"; of what is gone: its id.
[[nodiscard]] std::string subjectName(const text::Phrasebook& book, const site::Site& site,
                                      const rules::Subject& subject);

[[nodiscard]] std::string circuitName(const site::Site& site, const site::Circuit& circuit);  // "1A-5"
// With its rating and what it serves: "1A-5, 20 A, Corridor E receptacles".
[[nodiscard]] std::string circuitLine(const text::Phrasebook& book, const site::Site& site,
                                      const site::Circuit& circuit);
[[nodiscard]] std::string contactName(const text::Phrasebook& book, const std::string& name);  // "upper"
[[nodiscard]] std::string outletName(const site::Outlet& outlet);
[[nodiscard]] std::string roomName(const site::Room& room);  // "104, Store"; empty: it has neither
[[nodiscard]] std::string cordName(const text::Phrasebook& book, const site::Cord& cord);  // "C01, 12 AWG, 50 ft"

}  // namespace cordreach::app
