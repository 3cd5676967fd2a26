// SPDX-License-Identifier: GPL-3.0-or-later
#include "listings/cell_codecs.h"

#include <algorithm>

#include "tables/cord_types.h"
#include "tables/receptacles.h"

namespace cordreach::app {

namespace {

// A key out of a table, "5-20" or "SJTW", or unknown.
CellCodec<std::string> tableKeyCodec(std::vector<std::string> keys) {
  CellCodec<std::string> codec;
  codec.mayBeUnknown = true;
  codec.read = [](const ListingContext&, const std::string& key) { return key; };
  codec.choices = [keys](const ListingContext&) { return keys; };
  codec.write = [keys](const ListingContext& in, std::string& key, std::string_view text) -> CellError {
    if (saysUnknown(in.book(), text)) return key.clear(), std::nullopt;
    const std::string wanted = smallLetters(tidied(text));
    for (const std::string& known : keys) {
      // A receptacle is often written with its letter: 5-20R.
      if (wanted != smallLetters(known) && wanted != smallLetters(known) + "r") continue;
      key = known;
      return std::nullopt;
    }
    return base::Error{"listing.no_choice", tidied(text), {}};
  };
  return codec;
}

}  // namespace

CellCodec<std::string> textCodec() {
  CellCodec<std::string> codec;
  codec.read = [](const ListingContext&, const std::string& member) { return member; };
  codec.write = [](const ListingContext& in, std::string& member, std::string_view text) -> CellError {
    member = saysUnknown(in.book(), text) ? std::string() : tidied(text);
    return std::nullopt;
  };
  return codec;
}

CellCodec<bool> flagCodec() {
  CellCodec<bool> codec;
  codec.read = [](const ListingContext& in, const bool& member) { return member ? in.book().say("listing.yes") : ""; };
  codec.choices = [](const ListingContext& in) {
    return std::vector{in.book().say("listing.yes"), in.book().say("listing.no")};
  };
  codec.write = [](const ListingContext& in, bool& member, std::string_view text) -> CellError {
    const std::string said = smallLetters(tidied(text));
    const auto isOneOf = [&](const char* own, std::initializer_list<const char*> others) {
      if (said == smallLetters(in.book().say(own))) return true;
      return std::find(others.begin(), others.end(), said) != others.end();
    };
    const bool yes = isOneOf("listing.yes", {"yes", "y", "x", "true", "1"});
    const bool no = saysUnknown(in.book(), text) || isOneOf("listing.no", {"no", "n", "false", "0", "-"});
    if (!yes && !no) return base::Error{"listing.no_choice", tidied(text), {}};
    member = yes;
    return std::nullopt;
  };
  return codec;
}

CellCodec<std::string> receptacleCodec() {
  std::vector<std::string> keys;
  for (const tables::ReceptacleType& type : tables::receptacleTypes()) keys.push_back(type.key);
  return tableKeyCodec(std::move(keys));
}

CellCodec<std::string> cordTypeCodec() {
  std::vector<std::string> keys;
  for (const tables::CordType& type : tables::cordTypes()) keys.push_back(type.letters);
  return tableKeyCodec(std::move(keys));
}

std::vector<std::string> partsOf(std::string_view text) {
  std::vector<std::string> parts;
  const std::string whole = tidied(text);
  std::size_t from = 0;
  for (auto at = whole.find(kBetweenParts); at != std::string::npos; at = whole.find(kBetweenParts, from)) {
    parts.push_back(whole.substr(from, at - from));
    from = at + kBetweenParts.size();
  }
  parts.push_back(whole.substr(from));
  return parts;
}

}  // namespace cordreach::app
