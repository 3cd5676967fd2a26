// SPDX-License-Identifier: GPL-3.0-or-later
// Makes fields of one thing: each by a key and a function that leads to the member in the thing. Words stand under
// `field.` and the key's last part, those of a choice under `field.<last part>.<file word>`.
#pragma once

#include <optional>
#include <string>
#include <utility>

#include "panels/field.h"
#include "panels/field_text.h"
#include "site/file_words.h"
#include "text/phrasebook.h"

namespace cordreach::app {

using MaybeError = std::optional<base::Error>;

template <class T>
class FieldMaker {
 public:
  using Id = decltype(T::id);

  // `code` of the edits. The book must outlive the fields.
  FieldMaker(const site::Site& site, const text::Phrasebook& book, Id id, std::string code)
      : m_thing(site.at<T>(id)), m_site(site), m_book(&book), m_id(std::move(id)), m_code(std::move(code)) {}

  [[nodiscard]] const T& thing() const { return m_thing; }
  [[nodiscard]] const site::Site& site() const { return m_site; }
  [[nodiscard]] const text::Phrasebook& book() const { return *m_book; }

  template <class Access>
  [[nodiscard]] Field text(const std::string& key, Access access) const {
    Field field = start(key, FieldKind::Text);
    field.text = access(m_thing);
    field.write = writing([access](T& thing, std::string_view typed) -> MaybeError {
      access(thing) = tidied(typed);
      return std::nullopt;
    });
    return field;
  }

  template <class Access>
  [[nodiscard]] Field known(const std::string& key, Access access) const {
    Field field = start(key, FieldKind::Text);
    field.text = knownText(*m_book, access(m_thing));
    field.mayBeUnknown = true;
    field.guessed = access(m_thing) && access(m_thing)->isGuess();
    field.write = writing([access, book = m_book](T& thing, std::string_view typed) -> MaybeError {
      auto read = readKnown(*book, typed, access(thing));
      if (!read.ok()) return read.error();
      access(thing) = read.value();
      return std::nullopt;
    });
    return field;
  }

  template <class Access>
  [[nodiscard]] Field flag(const std::string& key, Access access) const {
    Field field = start(key, FieldKind::Flag);
    field.text = access(m_thing) ? kYes : "";
    field.write = writing([access](T& thing, std::string_view typed) -> MaybeError {
      access(thing) = typed == kYes;
      return std::nullopt;
    });
    return field;
  }

  // One of the words of an enumeration.
  template <class Access>
  [[nodiscard]] Field choice(const std::string& key, Access access) const {
    using Enum = std::remove_cvref_t<decltype(access(m_thing))>;
    Field field = start(key, FieldKind::Choice);
    field.text = site::fileWord(access(m_thing));
    for (const auto& entry : site::kFileWords<Enum>) {
      field.choices.push_back(
          {std::string(entry.word), m_book->say("field." + lastPart(key) + "." + std::string(entry.word))});
    }
    field.write = writing([access](T& thing, std::string_view typed) -> MaybeError {
      const auto value = site::fromFileWord<Enum>(typed);
      if (!value) return base::Error{"field.no_choice", std::string(typed), {}};
      access(thing) = *value;
      return std::nullopt;
    });
    return field;
  }

  // A key out of a list; empty where it is unknown.
  template <class Access>
  [[nodiscard]] Field key(const std::string& key, Access access, std::vector<FieldChoice> choices) const {
    Field field = start(key, FieldKind::Choice);
    field.text = access(m_thing);
    field.mayBeUnknown = true;
    field.choices = std::move(choices);
    field.write = writing([access](T& thing, std::string_view typed) -> MaybeError {
      access(thing) = std::string(typed);
      return std::nullopt;
    });
    return field;
  }

  // A reference to another thing, or none.
  template <class Access>
  [[nodiscard]] Field reference(const std::string& key, Access access, std::vector<FieldChoice> choices) const {
    using Reference = typename std::remove_cvref_t<decltype(access(m_thing))>::value_type;
    Field field = start(key, FieldKind::Choice);
    field.text = access(m_thing) ? access(m_thing)->text() : "";
    field.mayBeUnknown = true;
    field.choices = std::move(choices);
    field.write = writing([access](T& thing, std::string_view typed) -> MaybeError {
      access(thing) = typed.empty() ? std::nullopt : std::optional<Reference>(Reference(std::string(typed)));
      return std::nullopt;
    });
    return field;
  }

  // Any other text, written by `put(thing, text)`.
  template <class Put>
  [[nodiscard]] Field custom(const std::string& key, std::string text, Put put) const {
    Field field = start(key, FieldKind::Text);
    field.text = std::move(text);
    field.write = writing(put);
    return field;
  }

  // The same field, which refuses to write (field.gone) once the part of the thing that it is about is not there.
  template <class Holds>
  [[nodiscard]] Field onlyWhile(Holds holds, Field field) const {
    field.write = [id = m_id, holds, write = std::move(field.write)](
                      const site::Site& site, std::string_view typed) -> base::Result<site::Edit> {
      const T* now = site.find<T>(id);
      if (now == nullptr || !holds(*now)) return base::Error{"field.gone", id.text(), {}};
      return write(site, typed);
    };
    return field;
  }

  [[nodiscard]] Field start(const std::string& key, FieldKind kind) const {
    return {.key = key, .label = m_book->say("field." + lastPart(key)), .kind = kind};
  }

  template <class Put>
  [[nodiscard]] FieldWrite writing(Put put) const {
    return [id = m_id, code = m_code, put](const site::Site& site, std::string_view typed) -> base::Result<site::Edit> {
      const T* now = site.find<T>(id);
      if (now == nullptr) return base::Error{"field.gone", id.text(), {}};
      T after = *now;
      if (MaybeError fault = put(after, typed)) return *fault;
      site::Edit edit{code, {}};
      if (!(after == *now)) edit.changes.emplace_back(site::Change<T>{*now, std::move(after)});
      return edit;
    };
  }

 private:
  [[nodiscard]] static std::string lastPart(const std::string& key) { return key.substr(key.rfind('.') + 1); }

  const T& m_thing;
  const site::Site& m_site;
  const text::Phrasebook* m_book;
  Id m_id;
  std::string m_code;
};

}  // namespace cordreach::app
