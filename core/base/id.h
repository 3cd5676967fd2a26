// SPDX-License-Identifier: GPL-3.0-or-later
// A strong id: an outlet's id can't be passed where a cord's belongs. There is no null id; absence is an optional.
#pragma once

#include <compare>
#include <functional>
#include <string>
#include <utility>

#include "base/contract.h"

namespace cordreach::base {

template <class Kind>
class Id {
 public:
  explicit Id(std::string text) : m_text(std::move(text)) { CORDREACH_EXPECTS(!m_text.empty()); }

  [[nodiscard]] const std::string& text() const { return m_text; }

  friend bool operator==(const Id&, const Id&) = default;
  friend auto operator<=>(const Id&, const Id&) = default;

 private:
  std::string m_text;
};

}  // namespace cordreach::base

template <class Kind>
struct std::hash<cordreach::base::Id<Kind>> {
  std::size_t operator()(const cordreach::base::Id<Kind>& id) const noexcept {
    return std::hash<std::string>{}(id.text());
  }
};
