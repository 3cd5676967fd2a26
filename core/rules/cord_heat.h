// SPDX-License-Identifier: GPL-3.0-or-later
// Why a cord is hot: how it lies, what it carries, how thin it is.
#pragma once

#include "rules/finding_builder.h"

namespace cordreach::rules {

[[nodiscard]] const site::LayingOfCord& layingOf(const Link& link);

// Anything but lying open holds its heat in.
[[nodiscard]] bool laidBadly(const Link& link);

// The cord, its users, its temperatures and how soon it reaches its limit.
void aboutHeat(FindingBuilder& finding, const CordCase& cord, const Case& in);

// "laying.coiled" {turns}, "laying.covered", ... first when it is to blame; then "cord.carries" {current_a, size}.
void whyHot(FindingBuilder& finding, const CordCase& cord);

}  // namespace cordreach::rules
