// SPDX-License-Identifier: GPL-3.0-or-later
// The walker that fills things from JSON. It stops at the first fault and remembers where; keys that no field asked for
// go into the nearest thing's Extra.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "base/error.h"
#include "io/json_value.h"
#include "io/site_blank.h"
#include "io/site_text_forms.h"
#include "site/describe.h"
#include "site/file_form.h"
#include "site/file_words.h"
#include "site/pointer_step.h"

namespace cordreach::io {

class SiteReader {
 public:
  // Pointers of errors begin with this one.
  explicit SiteReader(std::string pointer) : m_pointer(std::move(pointer)) {}

  [[nodiscard]] bool failed() const { return m_error.has_value(); }
  [[nodiscard]] const base::Error& error() const { return *m_error; }

  // Reads one object whole, its leftover keys too.
  template <class T>
  void read(const Json& json, T& value) {
    if (!expect(json, JsonKind::Object)) return;
    enter(json);
    describe(*this, value);
    leave();
  }
  // The same, one step further down.
  template <class T>
  void readAt(std::string_view step, const Json& json, T& value) {
    const Step here(*this, step);
    read(json, value);
  }

  void extra(site::Extra& extra) {
    extra.clear();
    frame().extra = &extra;
    frame().ownerAt = m_pointer.size();
  }
  template <class Kind>
  void id(base::Id<Kind>& id) {
    readId("id", id, "site.missing_id");
  }
  void text(std::string_view key, std::string& value);
  void flag(std::string_view key, bool& value, bool otherwise = false);
  void number(std::string_view key, double& value, double lowest, double highest);
  void level(std::string_view key, int& value);
  void index(std::string_view key, std::size_t& value);
  void texts(std::string_view key, std::vector<std::string>& values);
  void phases(std::string_view key, std::vector<std::size_t>& values);
  void point(std::string_view key, geometry::Point& value);
  void points(std::string_view key, std::vector<geometry::Point>& values);
  void hours(std::string_view fromKey, std::string_view untilKey, std::optional<site::Hours>& value);
  void time(std::string_view key, units::Duration& value);
  void time(std::string_view key, std::optional<units::Duration>& value) {
    if (holds(key)) time(key, value.emplace());
  }
  void socket(std::string_view key, site::Socket& value);

  template <class Enum>
  void choice(std::string_view key, Enum& value, site::Leave leave) {
    const Json* json = leave == site::Leave::Nothing ? require(key) : take(key);
    if (json == nullptr) return;
    const Step here(*this, key);
    if (!expect(*json, JsonKind::Text)) return;
    const auto found = site::fromFileWord<Enum>(json->text);
    if (found) {
      value = *found;
      return;
    }
    std::string words;
    for (const auto& entry : site::kFileWords<Enum>) words.append(words.empty() ? "" : ", ").append(entry.word);
    fail("file.unknown_word", {{"found", shortened(json->text)}, {"expected", words}});
  }
  template <class Kind>
  void reference(std::string_view key, base::Id<Kind>& id) {
    readId(key, id, "file.missing_key");
  }
  template <class Kind>
  void reference(std::string_view key, std::optional<base::Id<Kind>>& id) {
    if (!holds(key)) return;
    id.emplace("?");
    readId(key, *id, "file.missing_key");
  }
  template <class Kind>
  void references(std::string_view key, std::vector<base::Id<Kind>>& ids) {
    eachItem(key, [&](const Json& item) { ids.emplace_back(idText(item)); });
  }
  template <class T>
  void object(std::string_view key, T& value) {
    const Json* json = take(key);
    if (json != nullptr) readAt(key, *json, value);
  }
  template <class T>
  void object(std::string_view key, std::optional<T>& value) {
    const Json* json = take(key);
    if (json == nullptr) return;
    value.emplace(blank<T>());
    readAt(key, *json, *value);
  }
  // Fields that stand among those of the thing around them, there if this key is.
  template <class T>
  void inlined(std::string_view key, std::optional<T>& value) {
    if (!holds(key)) return;
    value.emplace(blank<T>());
    describe(*this, *value);
  }
  template <class T>
  void list(std::string_view key, std::vector<T>& values) {
    eachItem(key, [&](const Json& item) { read(item, values.emplace_back(blank<T>())); });
  }
  template <class Q>
  void quantity(std::string_view base, Q& value) {
    const std::string key = site::keyWithUnit<Q>(base);
    const Json* json = require(key);
    if (json != nullptr) form(key, *json, value);
  }
  template <class Q>
  void quantity(std::string_view base, std::optional<Q>& value) {
    const std::string key = site::keyWithUnit<Q>(base);
    const Json* json = take(key);
    if (json != nullptr) form(key, *json, value.emplace(blankForm<Q>()));
  }
  template <class T>
  void known(std::string_view base, site::Known<T>& value, std::string_view typedKey = {}) {
    const std::string key = site::keyWithUnit<T>(base);
    const Json* json = take(key);
    if (json == nullptr) return;
    site::Stated<T> stated{blankForm<T>(), {}, {}, {}, {}, {}, {}};
    text(typedKey.empty() ? std::string(base) + "_typed" : std::string(typedKey), stated.typed);
    if (json->kind == JsonKind::Object) {
      const Step here(*this, key);
      enter(*json);
      provenance(stated);
      leave();
    } else {
      form(key, *json, stated.value);
    }
    value = std::move(stated);
  }

 private:
  struct Frame {
    const Json* object = nullptr;
    std::vector<bool> used;
    site::Extra* extra = nullptr;
    std::size_t ownerAt = 0;  // where in the pointer the way from the thing that keeps the extras begins
  };
  class Step {
   public:
    Step(SiteReader& reader, std::string_view key) : m_reader(reader), m_size(reader.m_pointer.size()) {
      m_reader.m_pointer += site::pointerStep(key);
    }
    ~Step() { m_reader.m_pointer.resize(m_size); }
    Step(const Step&) = delete;
    Step& operator=(const Step&) = delete;

   private:
    SiteReader& m_reader;
    std::size_t m_size;
  };

  template <class T>
  [[nodiscard]] static T blankForm() {
    if constexpr (std::is_same_v<T, units::WireSize>) {
      return units::WireSize::awg(14);
    } else if constexpr (std::is_same_v<T, int>) {
      return 0;
    } else {
      return site::FileForm<T>::fromFile(0.0);
    }
  }
  template <class T>
  void form(std::string_view key, const Json& json, T& value) {
    const Step here(*this, key);
    if constexpr (std::is_same_v<T, units::WireSize>) {
      readSize(json, value);
    } else if constexpr (std::is_same_v<T, int>) {
      readWhole(json, value);
    } else if (expect(json, JsonKind::Number)) {
      value = site::FileForm<T>::fromFile(json.number);
    }
  }
  template <class T>
  void provenance(site::Stated<T>& stated) {
    const Json* json = require("value");
    if (json != nullptr) form("value", *json, stated.value);
    for (auto [key, bound] : {std::pair{"low", &stated.low}, std::pair{"high", &stated.high}}) {
      json = take(key);
      if (json != nullptr) form(key, *json, bound->emplace(blankForm<T>()));
    }
    if (stated.low.has_value() != stated.high.has_value()) missing(stated.low ? "high" : "low");
    text("how", stated.how);
    text("who", stated.who);
    text("when", stated.when);
  }
  template <class Kind>
  void readId(std::string_view key, base::Id<Kind>& id, std::string_view missingCode) {
    const Json* json = require(key, missingCode);
    if (json == nullptr) return;
    const Step here(*this, key);
    id = base::Id<Kind>(idText(*json));
  }
  template <class Each>
  void eachItem(std::string_view key, Each&& each) {
    const Json* json = take(key);
    if (json == nullptr) return;
    const Step here(*this, key);
    if (!expect(*json, JsonKind::Array)) return;
    for (std::size_t i = 0; i < json->items.size() && !failed(); ++i) {
      const Step item(*this, std::to_string(i));
      each(json->items[i]);
    }
  }

  Frame& frame() { return m_frames.back(); }
  void enter(const Json& object);
  void leave();
  [[nodiscard]] bool holds(std::string_view key) const;
  // The member of that key, or null when absent or when reading has failed.
  const Json* take(std::string_view key);
  const Json* require(std::string_view key, std::string_view missingCode = "file.missing_key");
  bool expect(const Json& json, JsonKind kind);
  // A text fit to be an id; "?" when it is not.
  std::string idText(const Json& json);
  void readSize(const Json& json, units::WireSize& value);
  void readWhole(const Json& json, int& value);
  void readPoint(const Json& json, geometry::Point& value);
  void missing(std::string_view key, std::string_view code = "file.missing_key");
  void fail(std::string_view code, base::Arguments arguments = {});
  [[nodiscard]] static std::string shortened(const std::string& text);

  std::string m_pointer;
  std::vector<Frame> m_frames;
  std::optional<base::Error> m_error;
};

}  // namespace cordreach::io
