// SPDX-License-Identifier: GPL-3.0-or-later
// What each contact would say to a held plug: possible, or why not. No Qt.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "map/plug_edits.h"
#include "site/site.h"

namespace cordreach::app {

enum class TargetAnswer {
  Possible,
  Unknown,     // possible as far as anybody knows: breaker, plug or distance unknown
  TooFar,      // the cord would have to be stretched round corners
  Taken,       // another plug is in it at overlapping hours
  DoesNotFit,  // the plug's configuration
  Dead,
  Unreliable,  // switched, loose, or without power for part of the time: no plan counts on it
  Blocked,
  Locked,
  AskFirst,
  Never,         // judged when tried, but never shown as possible
  OutOfService,  // the machine or cord itself
};

// Whether the map lights it up.
[[nodiscard]] bool isPossible(TargetAnswer answer);
// Whether dropping there makes an edit; what is refused snaps back with its reason.
[[nodiscard]] bool canBeTried(TargetAnswer answer);
// "map.target.taken"
[[nodiscard]] std::string_view wordOf(TargetAnswer answer);

[[nodiscard]] TargetAnswer answerTo(const site::Site& site, const HeldPlug& plug, const site::OutletSocket& socket);

struct OutletTarget {
  std::string contact;
  TargetAnswer answer;
};

// The contact of an outlet that is best for the plug; `preferred` goes first among equals. None: it has no contacts.
[[nodiscard]] std::optional<OutletTarget> bestContact(const site::Site& site, const HeldPlug& plug,
                                                      const site::Outlet& outlet, std::string_view preferred = {});

}  // namespace cordreach::app
