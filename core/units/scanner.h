// SPDX-License-Identifier: GPL-3.0-or-later
// Reading typed quantities from left to right: numbers as people write them, then the words between them.
#pragma once

#include <string>
#include <string_view>

#include "base/result.h"

namespace cordreach::units {

class Scanner {
 public:
  explicit Scanner(std::string_view text) : m_text(text), m_rest(text) { skipSpace(); }

  [[nodiscard]] bool atEnd() const { return m_rest.empty(); }
  [[nodiscard]] std::string_view rest() const { return m_rest; }

  // A decimal number with point or comma (`2.5`, `2,5`), grouped thousands where certain (`1,500.5`), or a fraction
  // (`1/2`, `1 1/2`, `1½`), with a sign if any. One separator before exactly three digits (`1,500`, `1.500`) is read
  // differently by different people: units.ambiguous_number. Others: units.empty, units.not_a_number,
  // units.out_of_range. Skips the space that follows.
  [[nodiscard]] base::Result<double> number();

  // Everything up to the next digit, sign-free: a unit as written, lower case, without the spaces at its ends and
  // without a full stop after it. May be empty.
  [[nodiscard]] std::string word();

  // An error about the whole text.
  [[nodiscard]] base::Error error(const char* code) const;

 private:
  void skipSpace();
  bool take(std::string_view piece);
  [[nodiscard]] base::Result<double> unsignedNumber();
  bool takeVulgarFraction(double& value);

  std::string_view m_text;
  std::string_view m_rest;
};

// ASCII letters to lower case; other bytes as they are.
[[nodiscard]] std::string folded(std::string_view text);

}  // namespace cordreach::units
