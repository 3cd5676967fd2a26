// SPDX-License-Identifier: GPL-3.0-or-later
// The smallest building in which a question about one cord can be asked: a panel, a circuit, an outlet, a machine; or
// a described building with nothing in it but that machine. What-ifs are made part of it.
#pragma once

#include "planning/cord_question.h"

namespace cordreach::planning {

// With the extension between outlet and machine, or without one, on a breaker of that rating (of no meaning for a
// contact of a described building, which has its own).
[[nodiscard]] site::Site cordSite(const CordQuestion& question, units::Current breaker, const site::Cord* extension);

// Of the one hookup in it that is asked about.
[[nodiscard]] const site::HookupId& cordSiteHookup();

// The panel that feeds it; none: its circuit is unknown.
[[nodiscard]] std::optional<site::PanelId> cordSitePanel(const site::Site& site);

}  // namespace cordreach::planning
