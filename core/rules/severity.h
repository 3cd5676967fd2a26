// SPDX-License-Identifier: GPL-3.0-or-later
// Severities as the tables write them.
#pragma once

#include <optional>
#include <string_view>

#include "rules/finding.h"

namespace cordreach::rules {

[[nodiscard]] std::string_view nameOf(Severity severity);  // "ok", "notice", "caution", "warning", "danger"
[[nodiscard]] std::optional<Severity> severityNamed(std::string_view name);

}  // namespace cordreach::rules
