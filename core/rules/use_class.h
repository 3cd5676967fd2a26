// SPDX-License-Identifier: GPL-3.0-or-later
// Whether a machine may be plugged in where it is, and what says so. For the rules only.
#pragma once

#include "rules/case.h"
#include "rules/finding_builder.h"

namespace cordreach::rules {

// Ordinary for one that hangs in the air.
[[nodiscard]] site::UseClass useOf(const HookupCase& hookup);

// Gives the circuit's purpose, the socket's own mark, or both: whichever is as strict as the two together.
void whyKept(FindingBuilder& finding, const HookupCase& hookup);

}  // namespace cordreach::rules
