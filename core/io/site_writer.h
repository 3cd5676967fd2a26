// SPDX-License-Identifier: GPL-3.0-or-later
// The walker that writes things as JSON, each on one line; what is default, empty or unknown is left out.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "io/json_value.h"
#include "io/site_text_forms.h"
#include "site/describe.h"
#include "site/file_form.h"
#include "site/file_words.h"
#include "site/pointer_step.h"

namespace cordreach::io {

class SiteWriter {
 public:
  explicit SiteWriter(std::string& out) : m_out(out) {}

  template <class T>
  void write(const T& value) {
    begin();
    describe(*this, value);
    end();
  }
  // The object's braces without the fields, for one that is written field by field.
  void begin();
  void end();

  void extra(const site::Extra& extra);
  template <class Kind>
  void id(const base::Id<Kind>& id) {
    reference("id", id);
  }
  void text(std::string_view key, const std::string& value);
  void flag(std::string_view key, bool value, bool otherwise = false);
  void number(std::string_view key, double value, double lowest, double highest);
  void level(std::string_view key, int value);
  void index(std::string_view key, std::size_t value);
  void texts(std::string_view key, const std::vector<std::string>& values);
  void phases(std::string_view key, const std::vector<std::size_t>& values);
  void point(std::string_view key, const geometry::Point& value);
  void points(std::string_view key, const std::vector<geometry::Point>& values);
  void hours(std::string_view fromKey, std::string_view untilKey, const std::optional<site::Hours>& value);
  void time(std::string_view key, const units::Duration& value);
  void time(std::string_view key, const std::optional<units::Duration>& value) {
    if (value) time(key, *value);
  }
  void socket(std::string_view key, const site::Socket& value);

  template <class Enum>
  void choice(std::string_view key, Enum value, site::Leave leave) {
    if (leave == site::Leave::Default && value == defaultOf<Enum>()) return;
    startMember(key);
    printText(site::fileWord(value), m_out);
  }
  template <class Kind>
  void reference(std::string_view key, const base::Id<Kind>& id) {
    startMember(key);
    printText(id.text(), m_out);
  }
  template <class Kind>
  void reference(std::string_view key, const std::optional<base::Id<Kind>>& id) {
    if (id) reference(key, *id);
  }
  template <class Kind>
  void references(std::string_view key, const std::vector<base::Id<Kind>>& ids) {
    array(key, ids, [this](const base::Id<Kind>& id) { printText(id.text(), m_out); });
  }
  template <class T>
  void object(std::string_view key, const T& value) {
    startMember(key);
    m_way += site::pointerStep(key);
    write(value);
    m_way.resize(m_way.size() - site::pointerStep(key).size());
  }
  template <class T>
  void object(std::string_view key, const std::optional<T>& value) {
    if (value) object(key, *value);
  }
  template <class T>
  void inlined(std::string_view, const std::optional<T>& value) {
    if (value) describe(*this, *value);
  }
  template <class T>
  void list(std::string_view key, const std::vector<T>& values) {
    std::size_t at = 0;
    array(key, values, [&](const T& value) {
      const std::size_t size = m_way.size();
      m_way += site::pointerStep(key) + "/" + std::to_string(at++);
      write(value);
      m_way.resize(size);
    });
  }
  template <class Q>
  void quantity(std::string_view base, const Q& value) {
    startMember(site::keyWithUnit<Q>(base));
    form(value);
  }
  template <class Q>
  void quantity(std::string_view base, const std::optional<Q>& value) {
    if (value) quantity(base, *value);
  }
  template <class T>
  void known(std::string_view base, const site::Known<T>& value, std::string_view typedKey = {}) {
    if (!value) return;
    const std::string key = site::keyWithUnit<T>(base);
    const std::string typed = typedKey.empty() ? std::string(base) + "_typed" : std::string(typedKey);
    startMember(key);
    const bool hasProvenance = !value->how.empty() || !value->who.empty() || !value->when.empty();
    if (value->isGuess() || hasProvenance || holdsExtrasBelow(key)) {
      m_way += site::pointerStep(key);
      provenance(*value);
      m_way.resize(m_way.size() - site::pointerStep(key).size());
    } else {
      form(value->value);
    }
    text(typed, value->typed);
  }

 private:
  struct Frame {
    const site::Extra* extra = nullptr;
    std::size_t ownerAt = 0;  // where in the way the thing that keeps the extras stands
    bool empty = true;
    std::vector<std::string> keys;  // already written; kept only when there are extras
  };

  // What a thing says of itself when nothing is said: see the members' initializers.
  template <class Enum>
  [[nodiscard]] static constexpr Enum defaultOf() {
    if constexpr (std::is_same_v<Enum, site::HowKnown>) return site::HowKnown::Assumed;
    if constexpr (std::is_same_v<Enum, tables::Laying>) return tables::Laying::Floor;
    return Enum{};
  }
  template <class T>
  void form(const T& value) {
    if constexpr (std::is_same_v<T, units::WireSize>) {
      printText(wireSizeText(value), m_out);
    } else if constexpr (std::is_same_v<T, int>) {
      m_out += std::to_string(value);
    } else {
      m_out += shortestText(value);
    }
  }
  template <class T>
  void provenance(const site::Stated<T>& stated) {
    begin();
    startMember("value");
    form(stated.value);
    if (stated.low) {
      startMember("low");
      form(*stated.low);
    }
    if (stated.high) {
      startMember("high");
      form(*stated.high);
    }
    text("how", stated.how);
    text("who", stated.who);
    text("when", stated.when);
    end();
  }
  template <class List, class Each>
  void array(std::string_view key, const List& values, Each&& each) {
    if (values.empty()) return;
    startMember(key);
    m_out += '[';
    bool first = true;
    for (const auto& value : values) {
      if (!first) m_out += ", ";
      first = false;
      each(value);
    }
    m_out += ']';
  }
  void startMember(std::string_view key);
  void writePoint(const geometry::Point& value);
  [[nodiscard]] bool holdsExtrasBelow(std::string_view key) const;
  void extraMember(std::string_view key, const std::string& json);

  std::string& m_out;
  std::vector<Frame> m_frames;
  std::string m_way;  // pointer from the outermost object to this one
};

}  // namespace cordreach::io
