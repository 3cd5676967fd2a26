// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/site_reader.h"

#include <algorithm>
#include <cmath>

#include "site/utf8.h"

namespace cordreach::io {
namespace {

constexpr std::string_view kPhaseLetters = "ABC";
constexpr std::size_t kLongestExcerpt = 40;

std::string_view kindWord(JsonKind kind) {
  switch (kind) {
    case JsonKind::Null:
      return "null";
    case JsonKind::False:
    case JsonKind::True:
      return "true-or-false";
    case JsonKind::Number:
      return "number";
    case JsonKind::Text:
      return "text";
    case JsonKind::Array:
      return "list";
    case JsonKind::Object:
      return "object";
  }
  return "";
}

bool isFlag(JsonKind kind) { return kind == JsonKind::True || kind == JsonKind::False; }

}  // namespace

void SiteReader::enter(const Json& object) {
  Frame frame;
  frame.object = &object;
  frame.used.resize(object.items.size());
  // Until the object says that it keeps extras itself, they belong to the thing around it.
  if (!m_frames.empty()) {
    frame.extra = m_frames.back().extra;
    frame.ownerAt = m_frames.back().ownerAt;
  }
  m_frames.push_back(std::move(frame));
}

void SiteReader::leave() {
  const Frame& frame = m_frames.back();
  for (std::size_t i = 0; i < frame.used.size() && !failed(); ++i) {
    if (frame.used[i]) continue;
    const Json& item = frame.object->items[i];
    if (frame.extra == nullptr) {
      const Step here(*this, item.key);
      fail("file.unknown_key", {{"key", shortened(item.key)}});
      break;
    }
    const std::string wayHere = m_pointer.substr(frame.ownerAt);
    const bool plain = wayHere.empty() && !item.key.starts_with('/');
    printJson(item, (*frame.extra)[plain ? item.key : wayHere + site::pointerStep(item.key)]);
  }
  m_frames.pop_back();
}

bool SiteReader::holds(std::string_view key) const {
  return !failed() && m_frames.back().object->member(key) != nullptr;
}

const Json* SiteReader::take(std::string_view key) {
  if (failed()) return nullptr;
  Frame& here = frame();
  const Json* found = here.object->member(key);
  if (found != nullptr) here.used[static_cast<std::size_t>(found - here.object->items.data())] = true;
  return found;
}

const Json* SiteReader::require(std::string_view key, std::string_view missingCode) {
  const Json* found = take(key);
  if (found == nullptr) missing(key, missingCode);
  return found;
}

bool SiteReader::expect(const Json& json, JsonKind kind) {
  if (failed()) return false;
  if (json.kind == kind || (isFlag(json.kind) && isFlag(kind))) return true;
  fail("file.wrong_type", {{"expected", std::string(kindWord(kind))}, {"found", std::string(kindWord(json.kind))}});
  return false;
}

std::string SiteReader::idText(const Json& json) {
  if (!expect(json, JsonKind::Text)) return "?";
  const bool hasControl = std::any_of(json.text.begin(), json.text.end(),
                                      [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7F; });
  if (!json.text.empty() && json.text.size() <= site::kLongestId && !hasControl) return json.text;
  fail("site.bad_id", {{"found", shortened(json.text)}, {"longest_bytes", static_cast<double>(site::kLongestId)}});
  return "?";
}

void SiteReader::text(std::string_view key, std::string& value) {
  const Json* json = take(key);
  if (json == nullptr) return;
  const Step here(*this, key);
  if (expect(*json, JsonKind::Text)) value = json->text;
}

void SiteReader::flag(std::string_view key, bool& value, bool otherwise) {
  value = otherwise;
  const Json* json = take(key);
  if (json == nullptr) return;
  const Step here(*this, key);
  if (expect(*json, JsonKind::True)) value = json->kind == JsonKind::True;
}

void SiteReader::number(std::string_view key, double& value, double, double) {
  const Json* json = take(key);
  if (json != nullptr) form(key, *json, value);
}

void SiteReader::readWhole(const Json& json, int& value) {
  if (!expect(json, JsonKind::Number)) return;
  if (json.number != std::floor(json.number) || std::abs(json.number) > 1e9) {
    fail("file.not_whole", {{"found", shortened(json.text)}});
    return;
  }
  value = static_cast<int>(json.number);
}

void SiteReader::level(std::string_view key, int& value) {
  const Json* json = take(key);
  if (json != nullptr) form(key, *json, value);
}

void SiteReader::index(std::string_view key, std::size_t& value) {
  const Json* json = require(key);
  int number = 0;
  if (json != nullptr) form(key, *json, number);
  if (failed()) return;
  const Step here(*this, key);
  if (number < 0) fail("file.not_whole", {{"found", std::to_string(number)}});
  value = static_cast<std::size_t>(std::max(number, 0));
}

void SiteReader::texts(std::string_view key, std::vector<std::string>& values) {
  eachItem(key, [&](const Json& item) {
    if (expect(item, JsonKind::Text)) values.push_back(item.text);
  });
}

void SiteReader::phases(std::string_view key, std::vector<std::size_t>& values) {
  eachItem(key, [&](const Json& item) {
    if (!expect(item, JsonKind::Text)) return;
    const std::size_t phase = item.text.size() == 1 ? kPhaseLetters.find(item.text[0]) : std::string_view::npos;
    if (phase == std::string_view::npos) {
      fail("file.unknown_word", {{"found", shortened(item.text)}, {"expected", "A, B, C"}});
      return;
    }
    values.push_back(phase);
  });
}

void SiteReader::readPoint(const Json& json, geometry::Point& value) {
  if (!expect(json, JsonKind::Array)) return;
  if (json.items.size() != 2) {
    fail("file.bad_point");
    return;
  }
  form("0", json.items[0], value.xM);
  form("1", json.items[1], value.yM);
}

void SiteReader::point(std::string_view key, geometry::Point& value) {
  const Json* json = require(key);
  if (json == nullptr) return;
  const Step here(*this, key);
  readPoint(*json, value);
}

void SiteReader::points(std::string_view key, std::vector<geometry::Point>& values) {
  eachItem(key, [&](const Json& item) { readPoint(item, values.emplace_back()); });
}

void SiteReader::time(std::string_view key, units::Duration& value) {
  const Json* json = require(key);
  if (json == nullptr) return;
  const Step here(*this, key);
  if (!expect(*json, JsonKind::Text)) return;
  const auto read = readTimeOfDay(json->text);
  if (!read) return fail("file.bad_time", {{"found", shortened(json->text)}});
  value = *read;
}

void SiteReader::hours(std::string_view fromKey, std::string_view untilKey, std::optional<site::Hours>& value) {
  const bool hasFrom = holds(fromKey);
  const bool hasUntil = holds(untilKey);
  if (!hasFrom && !hasUntil) return;
  site::Hours hours;
  time(fromKey, hours.from);
  time(untilKey, hours.until);
  if (failed()) return;
  if (hours.until < hours.from) hours.until += 24.0 * units::hour;
  value = hours;
}

void SiteReader::socket(std::string_view key, site::Socket& value) {
  const Json* json = require(key);
  if (json == nullptr) return;
  const Step here(*this, key);
  if (!expect(*json, JsonKind::Object)) return;
  const bool isOutlet = json->member("outlet") != nullptr;
  const bool isCord = json->member("cord") != nullptr;
  const bool isMachine = json->member("machine") != nullptr;
  if (int{isOutlet} + int{isCord} + int{isMachine} != 1) return fail("file.bad_socket");
  if (isOutlet) {
    read(*json, std::get<site::OutletSocket>(value = blank<site::OutletSocket>()));
  } else if (isCord) {
    read(*json, std::get<site::CordSocket>(value = blank<site::CordSocket>()));
  } else {
    read(*json, std::get<site::MachineSocket>(value = blank<site::MachineSocket>()));
  }
}

void SiteReader::readSize(const Json& json, units::WireSize& value) {
  if (!expect(json, JsonKind::Text)) return;
  const auto size = readWireSize(json.text);
  if (!size) return fail("file.bad_size", {{"found", shortened(json.text)}});
  value = *size;
}

void SiteReader::missing(std::string_view key, std::string_view code) { fail(code, {{"key", std::string(key)}}); }

void SiteReader::fail(std::string_view code, base::Arguments arguments) {
  if (!m_error) m_error = base::Error{std::string(code), m_pointer, std::move(arguments)};
}

std::string SiteReader::shortened(const std::string& text) {
  if (text.size() <= kLongestExcerpt) return text;
  std::string_view start(text.data(), kLongestExcerpt);
  return std::string(start.substr(0, site::validUtf8Length(start))) + "\u2026";
}

}  // namespace cordreach::io
