// SPDX-License-Identifier: GPL-3.0-or-later
// JSON as a plain tree, read within limits: the only face of the JSON library that the rest of this room sees.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.h"

namespace cordreach::io {

enum class JsonKind { Null, False, True, Number, Text, Array, Object };

struct Json {
  JsonKind kind = JsonKind::Null;
  double number = 0.0;
  std::string text;         // of a text its content; of a number how it is written
  std::string key;          // of an object's member
  std::vector<Json> items;  // of an array or object, in the order of the file

  // The member of that key, or null.
  [[nodiscard]] const Json* member(std::string_view name) const;
};

// A hostile file stays cheap: at most about 400 MB and a second for the worst that passes.
struct JsonLimits {
  std::size_t bytes = 64u << 20;
  std::size_t depth = 64;
  std::size_t values = 3'000'000;
};

// Errors, the place a JSON pointer to where reading stopped: file.too_large {limit_mb}, file.empty, file.truncated,
// file.not_json, file.invalid_utf8 and file.number_overflow {line, column}, file.too_deep {limit}, file.too_many_values
// {limit}, file.duplicate_key {key}.
[[nodiscard]] base::Result<Json> parseJson(std::string_view text, const JsonLimits& limits = {});

// On one line, with a space after each comma and colon.
void printJson(const Json& value, std::string& out);
void printText(std::string_view text, std::string& out);

}  // namespace cordreach::io
