// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/severity.h"

#include <array>

namespace cordreach::rules {

namespace {
constexpr std::array<std::string_view, 5> kNames = {"ok", "notice", "caution", "warning", "danger"};
}

std::string_view nameOf(Severity severity) { return kNames[static_cast<std::size_t>(severity)]; }

std::optional<Severity> severityNamed(std::string_view name) {
  for (std::size_t i = 0; i < kNames.size(); ++i) {
    if (kNames[i] == name) return static_cast<Severity>(i);
  }
  return {};
}

}  // namespace cordreach::rules
