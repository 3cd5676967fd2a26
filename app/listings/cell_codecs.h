// SPDX-License-Identifier: GPL-3.0-or-later
// How a member of a thing stands in a cell, and how a cell's text gets into it; and columns made of the two.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "listings/listing.h"
#include "listings/listing_kinds.h"
#include "panels/field_text.h"
#include "site/file_words.h"

namespace cordreach::app {

using CellError = std::optional<base::Error>;

template <class M>
struct CellCodec {
  std::function<std::string(const ListingContext&, const M&)> read;
  std::function<CellError(const ListingContext&, M&, std::string_view)> write;  // none: can't be edited
  bool mayBeUnknown = false;
  std::function<std::vector<std::string>(const ListingContext&)> choices{};
};

template <class T>
struct ColumnOf {
  ListingColumn info;
  CellCodec<T> codec;
};

[[nodiscard]] CellCodec<std::string> textCodec();
[[nodiscard]] CellCodec<bool> flagCodec();
[[nodiscard]] CellCodec<std::string> receptacleCodec();
[[nodiscard]] CellCodec<std::string> cordTypeCodec();

template <class Q>
[[nodiscard]] CellCodec<site::Known<Q>> knownCodec() {
  CellCodec<site::Known<Q>> codec;
  codec.mayBeUnknown = true;
  codec.read = [](const ListingContext& in, const site::Known<Q>& known) { return knownText(in.book(), known); };
  codec.write = [](const ListingContext& in, site::Known<Q>& known, std::string_view text) -> CellError {
    auto read = readKnown<Q>(in.book(), saysUnknown(in.book(), text) ? std::string_view() : text, known);
    if (!read.ok()) return read.error();
    known = read.value();
    return std::nullopt;
  };
  return codec;
}

// The words stand under `field.<key>.<file word>`; the file's own words are understood too.
template <class Enum>
[[nodiscard]] CellCodec<Enum> choiceCodec(const std::string& key) {
  const auto say = [key](const ListingContext& in, std::string_view word) {
    return in.book().say("field." + key + "." + std::string(word));
  };
  CellCodec<Enum> codec;
  codec.read = [say](const ListingContext& in, const Enum& value) { return say(in, site::fileWord(value)); };
  codec.choices = [say](const ListingContext& in) {
    std::vector<std::string> words;
    for (const auto& entry : site::kFileWords<Enum>) words.push_back(say(in, entry.word));
    return words;
  };
  codec.write = [say](const ListingContext& in, Enum& value, std::string_view text) -> CellError {
    const std::string wanted = smallLetters(tidied(text));
    for (const auto& entry : site::kFileWords<Enum>) {
      if (wanted != entry.word && wanted != smallLetters(say(in, entry.word))) continue;
      value = entry.value;
      return std::nullopt;
    }
    return base::Error{"listing.no_choice", tidied(text), {}};
  };
  return codec;
}

template <class M>
[[nodiscard]] CellCodec<M> fact(std::function<std::string(const ListingContext&, const M&)> read) {
  return {std::move(read), {}, false, {}};
}

template <class T>
[[nodiscard]] ColumnOf<T> columnOf(std::string key, CellCodec<T> codec) {
  ListingColumn info{std::move(key), codec.mayBeUnknown, static_cast<bool>(codec.write),
                     static_cast<bool>(codec.choices)};
  return {std::move(info), std::move(codec)};
}

// Of one member; `access` leads to it in a constant thing and in a changing one.
template <class T, class M, class Access>
[[nodiscard]] ColumnOf<T> memberColumn(std::string key, CellCodec<M> codec, Access access) {
  CellCodec<T> whole;
  whole.mayBeUnknown = codec.mayBeUnknown;
  whole.choices = codec.choices;
  whole.read = [read = codec.read, access](const ListingContext& in, const T& thing) {
    return read(in, access(thing));
  };
  if (codec.write) {
    whole.write = [write = codec.write, access](const ListingContext& in, T& thing, std::string_view text) {
      return write(in, access(thing), text);
    };
  }
  return columnOf<T>(std::move(key), std::move(whole));
}

inline constexpr std::string_view kBetweenParts = " / ";

// "1A-5 / 1A-7" as two; nothing between: one.
[[nodiscard]] std::vector<std::string> partsOf(std::string_view text);

// Of what a thing has several of, an outlet's contacts: one text where all agree, else one for each, "1A-5 / 1A-7". One
// text is written to all of them.
template <class T, class Part, class Parts>
[[nodiscard]] ColumnOf<T> partsColumn(std::string key, CellCodec<Part> codec, Parts parts) {
  CellCodec<T> whole;
  whole.mayBeUnknown = codec.mayBeUnknown;
  whole.choices = codec.choices;
  whole.read = [codec, parts](const ListingContext& in, const T& thing) {
    std::string all;
    std::string first;
    bool same = true;
    for (const Part& part : parts(thing)) {
      const std::string text = codec.read(in, part);
      const bool isFirst = &part == &parts(thing).front();
      if (isFirst) first = text;
      same = same && text == first;
      all += (isFirst ? "" : std::string(kBetweenParts)) + (text.empty() ? std::string(kDontKnow) : text);
    }
    return same ? first : all;
  };
  if (!codec.write) return columnOf<T>(std::move(key), std::move(whole));
  whole.write = [codec, parts](const ListingContext& in, T& thing, std::string_view text) -> CellError {
    auto& all = parts(thing);
    const std::vector<std::string> texts = partsOf(text);
    if (texts.size() > 1 && texts.size() != all.size()) {
      return base::Error{"listing.parts", tidied(text), {{"n", static_cast<double>(all.size())}}};
    }
    for (std::size_t i = 0; i < all.size(); ++i) {
      if (auto fault = codec.write(in, all[i], texts.size() > 1 ? texts[i] : texts.front())) return fault;
    }
    return std::nullopt;
  };
  return columnOf<T>(std::move(key), std::move(whole));
}

// The codec of one member, as the codec of what it is a member of.
template <class Part, class M, class Access>
[[nodiscard]] CellCodec<Part> within(CellCodec<M> codec, Access access) {
  return memberColumn<Part, M>({}, std::move(codec), access).codec;
}

}  // namespace cordreach::app
