// SPDX-License-Identifier: GPL-3.0-or-later
// Appends to one string; a site's answer is a few tens of kilobytes.
#include "console/json_writer.h"

#include <array>
#include <charconv>
#include <cmath>
#include <cstdint>
#include <cstdio>

namespace cordreach::console {

namespace {

constexpr int kSignificantDigits = 6;
constexpr std::string_view kReplacement = "\uFFFD";

// Bytes of the well-formed UTF-8 character there, 0 for none (RFC 3629: no overlong forms, no surrogates).
std::size_t characterAt(std::string_view text, std::size_t at) {
  const auto byte = [&](std::size_t i) -> unsigned { return static_cast<unsigned char>(text[at + i]); };
  const unsigned lead = byte(0);
  if (lead < 0x80) return 1;
  const std::size_t length = lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : 2;
  if (lead < 0xC2 || lead > 0xF4 || at + length > text.size()) return 0;
  for (std::size_t i = 1; i < length; ++i) {
    if ((byte(i) & 0xC0U) != 0x80U) return 0;
  }
  const unsigned second = byte(1);
  const bool overlong = (lead == 0xE0 && second < 0xA0) || (lead == 0xF0 && second < 0x90);
  const bool outside = (lead == 0xED && second > 0x9F) || (lead == 0xF4 && second > 0x8F);
  return overlong || outside ? 0 : length;
}

void appendQuoted(std::string& json, std::string_view text) {
  json += '"';
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t length = characterAt(text, at);
    const auto c = static_cast<unsigned char>(text[at]);
    if (length == 0) {
      json += kReplacement;
    } else if (c == '"' || c == '\\') {
      json += {'\\', static_cast<char>(c)};
    } else if (c == '\n') {
      json += "\\n";
    } else if (c < 0x20 || c == 0x7F) {
      std::array<char, 8> escaped{};
      std::snprintf(escaped.data(), escaped.size(), "\\u%04x", c);
      json += escaped.data();
    } else {
      json += text.substr(at, length);
    }
    at += length == 0 ? 1 : length;
  }
  json += '"';
}

}  // namespace

std::string siblingKey(std::string_view key, std::string_view which) {
  const std::size_t at = key.rfind('_');
  if (at == std::string_view::npos) return std::string(key) + "_" + std::string(which);
  return std::string(key.substr(0, at)) + "_" + std::string(which) + std::string(key.substr(at));
}

std::string jsonNumber(double value) {
  std::array<char, 32> buffer{};
  std::snprintf(buffer.data(), buffer.size(), "%.*e", kSignificantDigits - 1, value);
  double rounded = 0.0;
  std::from_chars(buffer.data(), buffer.data() + buffer.size(), rounded);
  if (rounded == 0.0) return "0";
  const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), rounded);
  return {buffer.data(), end.ptr};
}

void JsonWriter::startValue(std::string_view key) {
  if (!m_first) m_json += ',';
  m_first = false;
  if (key.empty()) return;
  appendQuoted(m_json, key);
  m_json += ':';
}

JsonWriter& JsonWriter::open(std::string_view key, char bracket) {
  startValue(key);
  m_json += bracket;
  m_first = true;
  return *this;
}

JsonWriter& JsonWriter::close(char bracket) {
  m_json += bracket;
  m_first = false;
  return *this;
}

JsonWriter& JsonWriter::openObject(std::string_view key) { return open(key, '{'); }

JsonWriter& JsonWriter::openArray(std::string_view key) { return open(key, '['); }

JsonWriter& JsonWriter::text(std::string_view key, std::string_view value) {
  startValue(key);
  appendQuoted(m_json, value);
  return *this;
}

JsonWriter& JsonWriter::number(std::string_view key, std::optional<double> value) {
  return raw(key, value && std::isfinite(*value) ? jsonNumber(*value) : "null");
}

JsonWriter& JsonWriter::band(std::string_view key, const std::optional<study::Band<double>>& band) {
  const auto part = [&](double study::Band<double>::*member) {
    return band ? std::optional<double>((*band).*member) : std::nullopt;
  };
  number(key, part(&study::Band<double>::likely));
  number(siblingKey(key, "low"), part(&study::Band<double>::low));
  return number(siblingKey(key, "high"), part(&study::Band<double>::high));
}

JsonWriter& JsonWriter::truth(std::string_view key, bool value) { return raw(key, value ? "true" : "false"); }

JsonWriter& JsonWriter::null(std::string_view key) { return raw(key, "null"); }

JsonWriter& JsonWriter::raw(std::string_view key, std::string_view json) {
  startValue(key);
  m_json += json;
  return *this;
}

}  // namespace cordreach::console
