// SPDX-License-Identifier: GPL-3.0-or-later
// A list of places of the building in words, each of which can be gone to: what is on a breaker, what is hot, what is
// near its limit.
#pragma once

#include <QString>
#include <optional>
#include <vector>

#include "compute/verdict.h"
#include "rules/finding.h"
#include "site/site.h"
#include "text/phrasebook.h"

namespace cordreach::app {

struct PlaceRow {
  QString text;
  std::optional<rules::Subject> subject{};  // none: a heading
};

struct PlaceList {
  QString title;
  QString head;  // what it says in one breath
  QString note;  // what to mind; may be empty
  std::vector<PlaceRow> rows{};
};

// Circuits with little left for a machine, fullest first, each with what has taken it.
[[nodiscard]] PlaceList nearLimitList(const text::Phrasebook& book, const site::Site& site);

// Hottest first, at most `most` of them.
[[nodiscard]] PlaceList hotList(const text::Phrasebook& book, const Verdict& verdict, std::size_t most);

// What goes dark with a circuit, a panel, or the circuits of an outlet, floor by floor. Of anything else: nothing.
[[nodiscard]] PlaceList darkList(const text::Phrasebook& book, const site::Site& site, const rules::Subject& subject);
// The breakers that would be off.
[[nodiscard]] std::vector<site::CircuitId> breakersOf(const site::Site& site, const rules::Subject& subject);

}  // namespace cordreach::app
