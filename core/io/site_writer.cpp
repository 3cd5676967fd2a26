// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/site_writer.h"

#include <algorithm>

namespace cordreach::io {

void SiteWriter::begin() {
  Frame frame;
  if (!m_frames.empty()) {
    frame.extra = m_frames.back().extra;
    frame.ownerAt = m_frames.back().ownerAt;
  }
  m_frames.push_back(std::move(frame));
  m_out += '{';
}

void SiteWriter::end() {
  const Frame& frame = m_frames.back();
  if (frame.extra != nullptr) {
    const std::string_view way = std::string_view(m_way).substr(frame.ownerAt);
    for (const auto& [name, json] : *frame.extra) {
      if (!name.starts_with('/')) {
        if (way.empty()) extraMember(name, json);
        continue;
      }
      const std::size_t last = name.rfind('/');
      if (std::string_view(name).substr(0, last) == way) extraMember(site::keyOfStep(name.substr(last + 1)), json);
    }
  }
  m_frames.pop_back();
  m_out += '}';
}

void SiteWriter::extra(const site::Extra& extra) {
  m_frames.back().extra = extra.empty() ? nullptr : &extra;
  m_frames.back().ownerAt = m_way.size();
}

// A field that has meanwhile come to be known wins over what an earlier file held under its key.
void SiteWriter::extraMember(std::string_view key, const std::string& json) {
  const auto& keys = m_frames.back().keys;
  if (std::find(keys.begin(), keys.end(), key) != keys.end()) return;
  startMember(key);
  m_out += json;
}

bool SiteWriter::holdsExtrasBelow(std::string_view key) const {
  const Frame& frame = m_frames.back();
  if (frame.extra == nullptr) return false;
  const std::string start = m_way.substr(frame.ownerAt) + site::pointerStep(key) + "/";
  const auto at = frame.extra->lower_bound(start);
  return at != frame.extra->end() && at->first.starts_with(start);
}

void SiteWriter::startMember(std::string_view key) {
  Frame& frame = m_frames.back();
  if (!frame.empty) m_out += ", ";
  frame.empty = false;
  if (frame.extra != nullptr) frame.keys.emplace_back(key);
  printText(key, m_out);
  m_out += ": ";
}

void SiteWriter::text(std::string_view key, const std::string& value) {
  if (value.empty()) return;
  startMember(key);
  printText(value, m_out);
}

void SiteWriter::flag(std::string_view key, bool value, bool otherwise) {
  if (value == otherwise) return;
  startMember(key);
  m_out += value ? "true" : "false";
}

void SiteWriter::number(std::string_view key, double value, double, double) {
  if (value == 0.0) return;
  startMember(key);
  m_out += shortestText(value);
}

void SiteWriter::level(std::string_view key, int value) {
  if (value == 0) return;
  startMember(key);
  m_out += std::to_string(value);
}

void SiteWriter::index(std::string_view key, std::size_t value) {
  startMember(key);
  m_out += std::to_string(value);
}

void SiteWriter::texts(std::string_view key, const std::vector<std::string>& values) {
  array(key, values, [this](const std::string& value) { printText(value, m_out); });
}

void SiteWriter::phases(std::string_view key, const std::vector<std::size_t>& values) {
  array(key, values, [this](std::size_t phase) { printText(std::string(1, static_cast<char>('A' + phase)), m_out); });
}

void SiteWriter::writePoint(const geometry::Point& value) {
  m_out += '[' + shortestText(value.xM) + ", " + shortestText(value.yM) + ']';
}

void SiteWriter::point(std::string_view key, const geometry::Point& value) {
  startMember(key);
  writePoint(value);
}

void SiteWriter::points(std::string_view key, const std::vector<geometry::Point>& values) {
  array(key, values, [this](const geometry::Point& value) { writePoint(value); });
}

void SiteWriter::hours(std::string_view fromKey, std::string_view untilKey, const std::optional<site::Hours>& value) {
  if (!value) return;
  text(fromKey, timeOfDayText(value->from));
  text(untilKey, timeOfDayText(value->until));
}

void SiteWriter::time(std::string_view key, const units::Duration& value) { text(key, timeOfDayText(value)); }

void SiteWriter::socket(std::string_view key, const site::Socket& value) {
  std::visit([&](const auto& socket) { object(key, socket); }, value);
}

}  // namespace cordreach::io
