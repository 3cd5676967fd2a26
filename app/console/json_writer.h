// SPDX-License-Identifier: GPL-3.0-or-later
// Writes one compact line of JSON, keys in the order given. Numbers are finite, to six significant digits: finer than
// any band, and free of the last bits in which machines differ. Unknown is null.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "study/band.h"

namespace cordreach::console {

class JsonWriter {
 public:
  // `key` is empty inside arrays and for the whole.
  JsonWriter& openObject(std::string_view key = {});
  JsonWriter& closeObject() { return close('}'); }
  JsonWriter& openArray(std::string_view key = {});
  JsonWriter& closeArray() { return close(']'); }

  JsonWriter& text(std::string_view key, std::string_view value);
  // Absent or not finite: null.
  JsonWriter& number(std::string_view key, std::optional<double> value);
  // The number and its siblings: `voltage_v`, `voltage_low_v`, `voltage_high_v`.
  JsonWriter& band(std::string_view key, const std::optional<study::Band<double>>& band);
  JsonWriter& truth(std::string_view key, bool value);
  JsonWriter& null(std::string_view key);
  // Text that is JSON already.
  JsonWriter& raw(std::string_view key, std::string_view json);

  // The line, ended by a newline.
  [[nodiscard]] std::string line() const { return m_json + "\n"; }

 private:
  JsonWriter& open(std::string_view key, char bracket);
  JsonWriter& close(char bracket);
  void startValue(std::string_view key);

  std::string m_json;
  bool m_first = true;
};

// "voltage_v" and "low" make "voltage_low_v".
[[nodiscard]] std::string siblingKey(std::string_view key, std::string_view which);

// The number as JSON writes it: shortest text of the value to six significant digits.
[[nodiscard]] std::string jsonNumber(double value);

}  // namespace cordreach::console
