// SPDX-License-Identifier: GPL-3.0-or-later
// The walker that looks at every field alone: is it text, is the number of this world, does the id lead somewhere.
#pragma once

#include <cmath>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "base/error.h"
#include "site/describe.h"
#include "site/file_form.h"
#include "site/kinds.h"
#include "site/pointer_step.h"

namespace cordreach::site {

class FieldCheck {
 public:
  explicit FieldCheck(const Site& site, std::string pointer) : m_site(site), m_pointer(std::move(pointer)) {}

  [[nodiscard]] const std::optional<base::Error>& fault() const { return m_fault; }

  template <class T>
  void check(const T& thing) {
    describe(*this, thing);
  }

  void extra(const Extra&) {}
  template <class Kind>
  void id(const base::Id<Kind>& id) {
    checkId("id", id.text());
  }
  void text(std::string_view key, const std::string& value);
  void flag(std::string_view, bool, bool = false) {}
  void number(std::string_view key, double value, double lowest, double highest) {
    inRange(key, value, lowest, highest, "");
  }
  void level(std::string_view key, int value) { inRange(key, value, -kHighestLevel, kHighestLevel, ""); }
  void index(std::string_view, std::size_t) {}
  void texts(std::string_view key, const std::vector<std::string>& values);
  void phases(std::string_view key, const std::vector<std::size_t>& values);
  void point(std::string_view key, const geometry::Point& value);
  void points(std::string_view key, const std::vector<geometry::Point>& values);
  void hours(std::string_view fromKey, std::string_view untilKey, const std::optional<Hours>& value);
  void time(std::string_view key, const units::Duration& value) { form(key, value); }
  void time(std::string_view key, const std::optional<units::Duration>& value) {
    if (value) form(key, *value);
  }
  void socket(std::string_view key, const Socket& value) {
    std::visit([&](const auto& one) { object(key, one); }, value);
  }
  template <class Enum>
  void choice(std::string_view, Enum, Leave) {}

  template <class Kind>
  void reference(std::string_view key, const base::Id<Kind>& id) {
    using Thing = typename ThingOf<base::Id<Kind>>::Type;
    if (m_fault || m_site.find<Thing>(id) != nullptr) return;
    fail(key, "site.dangling_id", {{"id", id.text()}, {"kind", std::string(kKindKey<Thing>)}});
  }
  template <class Kind>
  void reference(std::string_view key, const std::optional<base::Id<Kind>>& id) {
    if (id) reference(key, *id);
  }
  template <class Kind>
  void references(std::string_view key, const std::vector<base::Id<Kind>>& ids) {
    eachItem(key, ids, [this](std::string_view at, const base::Id<Kind>& id) { reference(at, id); });
  }
  template <class T>
  void object(std::string_view key, const T& value) {
    const Step here(*this, key);
    check(value);
  }
  template <class T>
  void object(std::string_view key, const std::optional<T>& value) {
    if (value) object(key, *value);
  }
  template <class T>
  void inlined(std::string_view, const std::optional<T>& value) {
    if (value) check(*value);
  }
  template <class T>
  void list(std::string_view key, const std::vector<T>& values) {
    eachItem(key, values, [this](std::string_view at, const T& value) { object(at, value); });
  }
  template <class Q>
  void quantity(std::string_view base, const Q& value) {
    form(keyWithUnit<Q>(base), value);
  }
  template <class Q>
  void quantity(std::string_view base, const std::optional<Q>& value) {
    if (value) quantity(base, *value);
  }
  template <class T>
  void known(std::string_view base, const Known<T>& value, std::string_view typedKey = {}) {
    if (!value) return;
    const std::string key = keyWithUnit<T>(base);
    text(typedKey.empty() ? std::string(base) + "_typed" : std::string(typedKey), value->typed);
    const bool isObject =
        value->low || value->high || !value->how.empty() || !value->who.empty() || !value->when.empty();
    if (!isObject) return form(key, value->value);
    const Step here(*this, key);
    form("value", value->value);
    if (value->low) form("low", *value->low);
    if (value->high) form("high", *value->high);
    if (!bandHolds(*value)) fail(value->low ? "low" : "high", "site.bad_band");
    text("how", value->how);
    text("who", value->who);
    text("when", value->when);
  }

 private:
  class Step {
   public:
    Step(FieldCheck& check, std::string_view key) : m_check(check), m_size(check.m_pointer.size()) {
      m_check.m_pointer += pointerStep(key);
    }
    ~Step() { m_check.m_pointer.resize(m_size); }
    Step(const Step&) = delete;
    Step& operator=(const Step&) = delete;

   private:
    FieldCheck& m_check;
    std::size_t m_size;
  };

  template <class T>
  [[nodiscard]] static bool bandHolds(const Stated<T>& stated) {
    if (!stated.low && !stated.high) return true;
    return stated.low && stated.high && *stated.low <= stated.value && stated.value <= *stated.high;
  }
  template <class T>
  void form(std::string_view key, const T& value) {
    if constexpr (std::is_same_v<T, units::WireSize>) {
      inRange(key, value.area().in(units::squareMillimetre), kThinnestMm2, kThickestMm2, "_mm2");
    } else if constexpr (std::is_same_v<T, int>) {
      inRange(key, value, 1, kMostConductors, "");
    } else {
      using Form = FileForm<T>;
      inRange(key, Form::toFile(value), Form::kLowest, Form::kHighest, unitEnding<T>());
    }
  }
  template <class List, class Each>
  void eachItem(std::string_view key, const List& values, Each&& each) {
    const Step here(*this, key);
    for (std::size_t i = 0; i < values.size() && !m_fault; ++i) each(std::to_string(i), values[i]);
  }
  void checkId(std::string_view key, const std::string& text);
  void coordinates(std::string_view key, const geometry::Point& value);
  void inRange(std::string_view key, double value, double lowest, double highest, std::string_view unit);
  void fail(std::string_view key, std::string_view code, base::Arguments arguments = {});

  const Site& m_site;
  std::string m_pointer;
  std::optional<base::Error> m_fault;
};

}  // namespace cordreach::site
