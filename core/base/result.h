// SPDX-License-Identifier: GPL-3.0-or-later
// A value or the Error that stood in its way. C++20 has no std::expected.
#pragma once

#include <utility>
#include <variant>

#include "base/contract.h"
#include "base/error.h"

namespace cordreach::base {

template <class T>
class [[nodiscard]] Result {
 public:
  Result(T value) : m_state(std::in_place_index<0>, std::move(value)) {}
  Result(Error error) : m_state(std::in_place_index<1>, std::move(error)) {}

  [[nodiscard]] bool ok() const { return m_state.index() == 0; }
  explicit operator bool() const { return ok(); }

  [[nodiscard]] const T& value() const& {
    CORDREACH_EXPECTS(ok());
    return *std::get_if<0>(&m_state);
  }
  [[nodiscard]] T& value() & {
    CORDREACH_EXPECTS(ok());
    return *std::get_if<0>(&m_state);
  }
  [[nodiscard]] T&& value() && {
    CORDREACH_EXPECTS(ok());
    return std::move(*std::get_if<0>(&m_state));
  }
  [[nodiscard]] const Error& error() const {
    CORDREACH_EXPECTS(!ok());
    return *std::get_if<1>(&m_state);
  }

 private:
  std::variant<T, Error> m_state;
};

// For work that succeeds with nothing to return: `Result<Done>`.
struct Done {
  friend bool operator==(const Done&, const Done&) = default;
};

}  // namespace cordreach::base
