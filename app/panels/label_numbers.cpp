// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/label_numbers.h"

#include <cctype>

namespace cordreach::app {

namespace {

constexpr std::size_t kMostDigits = 6;

bool isDigit(char letter) { return std::isdigit(static_cast<unsigned char>(letter)) != 0; }

}  // namespace

NumberedLabel numberedLabel(const std::string& label) {
  std::size_t begin = label.size();
  while (begin > 0 && isDigit(label[begin - 1])) --begin;
  const std::size_t digits = label.size() - begin;
  if (digits == 0 || digits > kMostDigits) return {label, 0, 0};
  return {label.substr(0, begin), std::stoi(label.substr(begin)), digits};
}

std::string withNumber(const std::string& stem, int number, std::size_t digits) {
  std::string text = std::to_string(number);
  if (text.size() < digits) text.insert(0, digits - text.size(), '0');
  return stem + text;
}

int lastNumber(const std::string& text) {
  std::size_t end = text.size();
  while (end > 0 && !isDigit(text[end - 1])) --end;
  return numberedLabel(text.substr(0, end)).number;
}

}  // namespace cordreach::app
