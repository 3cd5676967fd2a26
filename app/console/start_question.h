// SPDX-License-Identifier: GPL-3.0-or-later
// What `start` is asked, put as a site with one hookup in it: of a building's file, or made for the question.
#pragma once

#include <string>

#include "base/result.h"
#include "physics/breaker_spec.h"
#include "site/site.h"

namespace cordreach::console {

struct StartAsked {
  site::Inlet inlet;
  std::string name{};  // of the machine, for the words
  std::string kind{};  // key of the machine kinds; may be empty
  physics::Breaker breaker;
  units::WireRun run{units::Length{}, units::WireSize::awg(14)};
  site::Known<double> inertiaKgM2{};
  site::Known<units::Frequency> speed{};
  std::optional<site::CordMake> extension{};
  units::Current carrying{};  // by something that is on already, at the same outlet
};

struct StartQuestion {
  site::Site site;
  site::HookupId hookup;
};

// `carriedName`: for the words, what draws `carrying`.
[[nodiscard]] StartQuestion startQuestionOf(const StartAsked& asked, const std::string& carriedName);

}  // namespace cordreach::console
