// SPDX-License-Identifier: GPL-3.0-or-later
// Whether a plug may go into an outlet at all, before anything is reckoned: off limits, unusable, another shape.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include "site/site.h"

namespace cordreach::planning {

// The worse, the later. An unknown plug or receptacle is taken to fit.
enum class PlugStart { Free, AskFirst, DoesNotFit, Unusable, Never };

// Whether a plan may count on it through those hours: not dead, switched, loose, blocked or behind a locked cover, and
// with power all that time.
[[nodiscard]] bool isUsable(const site::Contact& contact, const std::optional<site::Hours>& hours);

// At hours that nobody said.
[[nodiscard]] PlugStart plugStartAt(const site::Site& site, const std::string& plug, const site::Contact& contact);
// Its best contact with that answer; null and Unusable: it has none.
[[nodiscard]] std::pair<PlugStart, const site::Contact*> bestPlugStart(const site::Site& site, const std::string& plug,
                                                                       const site::Outlet& outlet);

// "free", "ask_first", "does_not_fit", "unusable", "never"
[[nodiscard]] std::string_view nameOf(PlugStart start);

}  // namespace cordreach::planning
