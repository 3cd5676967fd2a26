// SPDX-License-Identifier: GPL-3.0-or-later
// The library's event parser fills our tree: it keeps no stack of calls, so depth can be refused before it costs.
#include "io/json_value.h"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <optional>

#include "site/pointer_step.h"
#include "site/utf8.h"

namespace cordreach::io {
namespace {

using Library = nlohmann::json;

class TreeBuilder : public nlohmann::json_sax<Library> {
 public:
  TreeBuilder(std::string_view text, const JsonLimits& limits) : m_text(text), m_limits(limits) {}

  bool null() override { return add(JsonKind::Null) != nullptr; }
  bool boolean(bool value) override { return add(value ? JsonKind::True : JsonKind::False) != nullptr; }
  bool number_integer(number_integer_t value) override {
    return number(static_cast<double>(value), std::to_string(value));
  }
  bool number_unsigned(number_unsigned_t value) override {
    return number(static_cast<double>(value), std::to_string(value));
  }
  bool number_float(number_float_t value, const string_t& written) override { return number(value, written); }
  bool string(string_t& value) override {
    Json* json = add(JsonKind::Text);
    if (json != nullptr) json->text = std::move(value);
    return json != nullptr;
  }
  bool binary(binary_t&) override { return refuse("file.not_json"); }
  bool start_object(std::size_t) override { return open(JsonKind::Object); }
  bool start_array(std::size_t) override { return open(JsonKind::Array); }
  bool key(string_t& value) override {
    m_key = std::move(value);
    return true;
  }
  bool end_object() override { return keysDiffer() && close(); }
  bool end_array() override { return close(); }
  bool parse_error(std::size_t position, const std::string&, const nlohmann::detail::exception& error) override {
    if (error.id == 406) return refuse("file.number_overflow", lineAndColumn(position));
    const std::size_t valid = site::validUtf8Length(m_text);
    if (valid < std::min(position, m_text.size())) return refuse("file.invalid_utf8", lineAndColumn(valid + 1));
    return refuse(position >= m_text.size() ? "file.truncated" : "file.not_json", lineAndColumn(position));
  }

  base::Result<Json> take(bool whole) && {
    if (m_error) return std::move(*m_error);
    CORDREACH_EXPECTS(whole);
    return std::move(m_root);
  }

 private:
  Json* add(JsonKind kind) {
    if (++m_values > m_limits.values) {
      refuse("file.too_many_values", {{"limit", static_cast<double>(m_limits.values)}});
      return nullptr;
    }
    Json* json = &m_root;
    if (!m_open.empty()) json = &m_open.back()->items.emplace_back();
    json->kind = kind;
    if (!m_open.empty() && m_open.back()->kind == JsonKind::Object) json->key = std::move(m_key);
    return json;
  }
  bool number(double value, std::string written) {
    Json* json = add(JsonKind::Number);
    if (json == nullptr) return false;
    json->number = value;
    json->text = std::move(written);
    return true;
  }
  // A container's address holds while it is open: only the innermost one grows.
  bool open(JsonKind kind) {
    if (m_open.size() >= m_limits.depth) {
      return refuse("file.too_deep", {{"limit", static_cast<double>(m_limits.depth)}});
    }
    Json* json = add(kind);
    if (json != nullptr) m_open.push_back(json);
    return json != nullptr;
  }
  bool close() {
    m_open.pop_back();
    return true;
  }
  bool keysDiffer() {
    std::vector<std::string_view> keys;
    for (const Json& item : m_open.back()->items) keys.push_back(item.key);
    std::sort(keys.begin(), keys.end());
    const auto twice = std::adjacent_find(keys.begin(), keys.end());
    if (twice == keys.end()) return true;
    return refuse("file.duplicate_key", {{"key", std::string(*twice)}});
  }
  base::Arguments lineAndColumn(std::size_t position) const {
    const std::string_view before = m_text.substr(0, std::min(position == 0 ? 0 : position - 1, m_text.size()));
    const auto lines = std::count(before.begin(), before.end(), '\n');
    const std::size_t lineStart = before.rfind('\n') == std::string_view::npos ? 0 : before.rfind('\n') + 1;
    return {{"line", static_cast<double>(lines + 1)}, {"column", static_cast<double>(before.size() - lineStart + 1)}};
  }
  std::string pointer() const {
    std::string text;
    for (std::size_t level = 1; level < m_open.size(); ++level) {
      const Json& parent = *m_open[level - 1];
      text += parent.kind == JsonKind::Object ? site::pointerStep(m_open[level]->key)
                                              : "/" + std::to_string(parent.items.size() - 1);
    }
    return text;
  }
  bool refuse(std::string code, base::Arguments arguments = {}) {
    m_error = base::Error{std::move(code), pointer(), std::move(arguments)};
    return false;
  }

  std::string_view m_text;
  const JsonLimits& m_limits;
  Json m_root;
  std::vector<Json*> m_open;
  std::string m_key;
  std::size_t m_values = 0;
  std::optional<base::Error> m_error;
};

}  // namespace

const Json* Json::member(std::string_view name) const {
  for (const Json& item : items) {
    if (item.key == name) return &item;
  }
  return nullptr;
}

base::Result<Json> parseJson(std::string_view text, const JsonLimits& limits) {
  if (text.size() > limits.bytes) {
    return base::Error{"file.too_large", "", {{"limit_mb", static_cast<double>(limits.bytes >> 20)}}};
  }
  if (text.find_first_not_of(" \t\r\n") == std::string_view::npos) return base::Error{"file.empty", "", {}};
  TreeBuilder builder(text, limits);
  const bool whole = Library::sax_parse(text.begin(), text.end(), &builder);
  return std::move(builder).take(whole);
}

void printText(std::string_view text, std::string& out) {
  constexpr std::string_view kHex = "0123456789abcdef";
  out += '"';
  for (const char c : text) {
    const auto byte = static_cast<unsigned char>(c);
    if (c == '"' || c == '\\') {
      out += '\\';
      out += c;
    } else if (c == '\n') {
      out += "\\n";
    } else if (c == '\t') {
      out += "\\t";
    } else if (byte < 0x20 || byte == 0x7F) {
      out += "\\u00";
      out += kHex[byte >> 4];
      out += kHex[byte & 15];
    } else {
      out += c;
    }
  }
  out += '"';
}

void printJson(const Json& value, std::string& out) {
  switch (value.kind) {
    case JsonKind::Null:
      out += "null";
      return;
    case JsonKind::False:
      out += "false";
      return;
    case JsonKind::True:
      out += "true";
      return;
    case JsonKind::Number:
      out += value.text;
      return;
    case JsonKind::Text:
      printText(value.text, out);
      return;
    case JsonKind::Array:
    case JsonKind::Object:
      break;
  }
  const bool isObject = value.kind == JsonKind::Object;
  out += isObject ? '{' : '[';
  for (const Json& item : value.items) {
    if (&item != &value.items.front()) out += ", ";
    if (isObject) {
      printText(item.key, out);
      out += ": ";
    }
    printJson(item, out);
  }
  out += isObject ? '}' : ']';
}

}  // namespace cordreach::io
