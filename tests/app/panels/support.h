// SPDX-License-Identifier: GPL-3.0-or-later
// A session without a window, and short ways to a field.
#pragma once

#include <string>

#include "app/support/demo.h"
#include "document/session.h"
#include "panels/property_fields.h"

namespace cordreach::testing {

[[nodiscard]] inline const text::Phrasebook& english(text::UnitSystem units = text::UnitSystem::Us) {
  static const text::Phrasebook us = text::Phrasebook::load("en", text::UnitSystem::Us).value();
  static const text::Phrasebook metric = text::Phrasebook::load("en", text::UnitSystem::Metric).value();
  return units == text::UnitSystem::Us ? us : metric;
}

struct Desk {
  explicit Desk(site::Site site, const text::Phrasebook& book = english()) : document(std::move(site)), words(book) {}

  app::Document document;
  app::JudgeService judge;
  app::Selection selection;
  text::Phrasebook words;
  app::Session session{document, judge, selection, words};
};

[[nodiscard]] inline app::Field fieldOf(const app::FieldGroups& groups, const std::string& key) {
  for (const app::FieldGroup& group : groups) {
    for (const app::Field& field : group.fields) {
      if (field.key == key) return field;
    }
  }
  throw std::runtime_error("no field " + key);
}

[[nodiscard]] inline app::Field fieldOf(const site::Site& site, const rules::Subject& subject, const std::string& key,
                                        const text::Phrasebook& book = english()) {
  return fieldOf(app::fieldsOf(site, subject, book), key);
}

// What the site is once the text is written in the field.
[[nodiscard]] inline site::Site written(const site::Site& site, const app::Field& field, const std::string& text) {
  const auto edit = field.write(site, text);
  if (!edit.ok()) throw std::runtime_error(edit.error().code + " " + edit.error().place);
  site::Site after = site;
  const auto done = site::apply(edit.value(), after);
  if (!done) throw std::runtime_error(done.error().code + " " + done.error().place);
  return after;
}

[[nodiscard]] inline std::string errorOf(const site::Site& site, const app::Field& field, const std::string& text) {
  const auto edit = field.write(site, text);
  return edit.ok() ? std::string() : edit.error().code;
}

}  // namespace cordreach::testing
