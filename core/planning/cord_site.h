// SPDX-License-Identifier: GPL-3.0-or-later
// The smallest building in which a question about one cord can be asked: a panel, a circuit, an outlet, a machine; or
// a described building with its plan and that machine in it. What-ifs are made part of it.
#pragma once

#include "planning/cord_question.h"

namespace cordreach::planning {

// With the extension between outlet and machine, or without one, on a breaker of that rating (of no meaning for a
// contact of a described building, which has its own).
[[nodiscard]] site::Site cordSite(const CordQuestion& question, units::Current breaker, const site::Cord* extension);

// Of the hookup in it that is asked about, where the question is of no described building.
[[nodiscard]] const site::HookupId& cordSiteHookup();
// The same of any question.
[[nodiscard]] site::HookupId askedHookup(const CordQuestion& question);

// The panel that feeds that hookup; none: its circuit is unknown.
[[nodiscard]] std::optional<site::PanelId> cordSitePanel(const site::Site& site, const site::HookupId& hookup);

}  // namespace cordreach::planning
