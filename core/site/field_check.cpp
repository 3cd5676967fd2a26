// SPDX-License-Identifier: GPL-3.0-or-later
#include "site/field_check.h"

#include <algorithm>

#include "site/utf8.h"

namespace cordreach::site {

void FieldCheck::text(std::string_view key, const std::string& value) {
  if (value.size() > kLongestText) {
    fail(key, "site.text_too_long", {{"limit_bytes", static_cast<double>(kLongestText)}});
  } else if (validUtf8Length(value) != value.size() || value.find('\0') != std::string::npos) {
    fail(key, "site.bad_text");
  }
}

void FieldCheck::texts(std::string_view key, const std::vector<std::string>& values) {
  eachItem(key, values, [this](std::string_view at, const std::string& value) { text(at, value); });
}

void FieldCheck::checkId(std::string_view key, const std::string& text) {
  const bool hasControl =
      std::any_of(text.begin(), text.end(), [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7F; });
  if (text.size() > kLongestId || hasControl || validUtf8Length(text) != text.size()) {
    fail(key, "site.bad_id", {{"longest_bytes", static_cast<double>(kLongestId)}});
  }
}

void FieldCheck::phases(std::string_view key, const std::vector<std::size_t>& values) {
  for (std::size_t i = 0; i < values.size(); ++i) {
    const bool again = std::find(values.begin(), values.begin() + static_cast<std::ptrdiff_t>(i), values[i]) !=
                       values.begin() + static_cast<std::ptrdiff_t>(i);
    if (values[i] > 2 || again) {
      const Step here(*this, key);
      return fail(std::to_string(i), "site.bad_phase");
    }
  }
}

void FieldCheck::coordinates(std::string_view key, const geometry::Point& value) {
  const Step here(*this, key);
  inRange("0", value.xM, -kFarthestM, kFarthestM, "_m");
  inRange("1", value.yM, -kFarthestM, kFarthestM, "_m");
}

void FieldCheck::point(std::string_view key, const geometry::Point& value) { coordinates(key, value); }

void FieldCheck::points(std::string_view key, const std::vector<geometry::Point>& values) {
  eachItem(key, values, [this](std::string_view at, const geometry::Point& value) { coordinates(at, value); });
}

void FieldCheck::hours(std::string_view fromKey, std::string_view untilKey, const std::optional<Hours>& value) {
  if (!value) return;
  form(fromKey, value->from);
  form(untilKey, value->until);
  if (!(value->from < value->until)) fail(untilKey, "site.hours_reversed");
}

void FieldCheck::inRange(std::string_view key, double value, double lowest, double highest, std::string_view unit) {
  if (value >= lowest && value <= highest) return;
  const std::string ending(unit);
  base::Arguments arguments = {{"lowest" + ending, lowest}, {"highest" + ending, highest}};
  if (std::isfinite(value)) arguments.insert(arguments.begin(), {"value" + ending, value});
  fail(key, std::isfinite(value) ? "site.out_of_range" : "site.not_finite", std::move(arguments));
}

void FieldCheck::fail(std::string_view key, std::string_view code, base::Arguments arguments) {
  if (!m_fault) m_fault = base::Error{std::string(code), m_pointer + pointerStep(key), std::move(arguments)};
}

}  // namespace cordreach::site
