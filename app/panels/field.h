// SPDX-License-Identifier: GPL-3.0-or-later
// One property of a thing as a person sees and types it, without any widget: what stands there now, what could be
// chosen, and the edit that a new text makes. An empty text of a field that may be unknown says "don't know".
#pragma once

#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.h"
#include "site/edit.h"
#include "site/site.h"

namespace cordreach::app {

enum class FieldKind {
  Text,
  Choice,  // its text is the key of a choice
  Flag,    // its text is kYes or empty
  Fact,    // can't be written
};

inline constexpr std::string_view kYes = "yes";

struct FieldChoice {
  std::string key;
  std::string text;

  friend bool operator==(const FieldChoice&, const FieldChoice&) = default;
};

// Makes the edit on the site as it then is. An edit without changes: nothing to do. Errors: field.gone (the thing is
// not there any more), field.bad_band, and those of what people type.
using FieldWrite = std::function<base::Result<site::Edit>(const site::Site& site, std::string_view text)>;

struct Field {
  std::string key;    // stable, unique among the fields of one thing: "contact.upper.breaker"
  std::string label;  // in words
  FieldKind kind = FieldKind::Text;
  std::string text{};
  bool mayBeUnknown = false;
  bool guessed = false;
  bool mixed = false;  // of several things that differ in it; its text is then empty
  std::vector<FieldChoice> choices{};
  FieldWrite write{};
};

struct FieldGroup {
  std::string title;  // in words; may be empty
  std::vector<Field> fields;
};

using FieldGroups = std::vector<FieldGroup>;

}  // namespace cordreach::app
