// SPDX-License-Identifier: GPL-3.0-or-later
// What went wrong, as facts: a stable code, a place and arguments. Wording is the app's.
#pragma once

#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace cordreach::base {

using ArgumentValue = std::variant<double, std::string>;

// A name ends in its unit when the value is a number (`rating_a`, `length_m`), so the words can format it.
struct Argument {
  std::string name;
  ArgumentValue value;

  friend bool operator==(const Argument&, const Argument&) = default;
};

using Arguments = std::vector<Argument>;

struct Error {
  std::string code;   // dotted, stable, never reused: "site.duplicate_id"
  std::string place;  // JSON pointer, file name, column, or the text that could not be read; may be empty
  Arguments arguments;

  friend bool operator==(const Error&, const Error&) = default;
};

}  // namespace cordreach::base
