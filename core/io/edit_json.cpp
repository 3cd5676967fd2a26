// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/edit_json.h"

#include <optional>

#include "io/json_value.h"
#include "io/site_reader.h"
#include "io/site_writer.h"
#include "site/kinds.h"

namespace cordreach::io {
namespace {

using base::Error;
using site::AnyChange;
using Changes = std::vector<AnyChange>;

constexpr std::string_view kHeadingKind = "site";

template <class T>
void writeSide(std::string_view name, const T* thing, std::string& out) {
  out.append(", \"").append(name).append("\": ");
  if (thing == nullptr) {
    out += "null";
  } else {
    SiteWriter(out).write(*thing);
  }
}

template <class T>
void writeChange(const site::Change<T>& change, std::string& out) {
  out.append("{\"kind\": \"").append(site::kKindKey<T>).append("\"");
  writeSide("before", change.before ? &*change.before : nullptr, out);
  writeSide("after", change.after ? &*change.after : nullptr, out);
  out += '}';
}

void writeChange(const site::HeadingChange& change, std::string& out) {
  out.append("{\"kind\": \"").append(kHeadingKind).append("\"");
  writeSide("before", &change.before, out);
  writeSide("after", &change.after, out);
  out += '}';
}

Error missingKey(const std::string& pointer, std::string_view key) {
  return {"file.missing_key", pointer, {{"key", std::string(key)}}};
}

Error wrongType(std::string pointer, std::string expected) {
  return {"file.wrong_type", std::move(pointer), {{"expected", std::move(expected)}}};
}

std::optional<Error> unknownKey(const Json& object, const std::string& pointer,
                                std::initializer_list<std::string_view> known) {
  for (const Json& item : object.items) {
    bool found = false;
    for (const std::string_view key : known) found = found || item.key == key;
    if (!found) return Error{"file.unknown_key", pointer + site::pointerStep(item.key), {{"key", item.key}}};
  }
  return std::nullopt;
}

template <class T>
std::optional<Error> readSide(const Json& json, const std::string& pointer, std::string_view name,
                              std::optional<T>& side) {
  const Json* found = json.member(name);
  if (found == nullptr) return missingKey(pointer, name);
  if (found->kind == JsonKind::Null) return std::nullopt;
  SiteReader reader(pointer + "/" + std::string(name));
  side.emplace(blank<T>());
  reader.read(*found, *side);
  if (reader.failed()) return reader.error();
  return std::nullopt;
}

template <class T>
std::optional<Error> readKindOfChange(const Json& json, const std::string& pointer, Changes& changes) {
  site::Change<T> change;
  auto fault = readSide(json, pointer, "before", change.before);
  if (!fault) fault = readSide(json, pointer, "after", change.after);
  if (!fault) changes.push_back(std::move(change));
  return fault;
}

std::optional<Error> readHeadingChange(const Json& json, const std::string& pointer, Changes& changes) {
  std::optional<site::Heading> before;
  std::optional<site::Heading> after;
  auto fault = readSide(json, pointer, "before", before);
  if (!fault) fault = readSide(json, pointer, "after", after);
  if (fault) return fault;
  if (!before || !after) return wrongType(pointer + (before ? "/after" : "/before"), "object");
  changes.push_back(site::HeadingChange{*before, *after});
  return std::nullopt;
}

std::optional<Error> readChange(const Json& json, const std::string& pointer, Changes& changes) {
  if (json.kind != JsonKind::Object) return wrongType(pointer, "object");
  if (auto fault = unknownKey(json, pointer, {"kind", "before", "after"})) return fault;
  const Json* kind = json.member("kind");
  if (kind == nullptr) return missingKey(pointer, "kind");
  if (kind->kind != JsonKind::Text) return wrongType(pointer + "/kind", "text");
  if (kind->text == kHeadingKind) return readHeadingChange(json, pointer, changes);
  bool found = false;
  std::optional<Error> fault;
  site::forEachKind([&]<class T>() {
    if (found || kind->text != site::kKindKey<T>) return;
    found = true;
    fault = readKindOfChange<T>(json, pointer, changes);
  });
  if (!found) return Error{"file.unknown_kind", pointer + "/kind", {{"found", kind->text.substr(0, 40)}}};
  return fault;
}

base::Result<Changes> changesOf(const Json& json, const std::string& pointer) {
  if (json.kind != JsonKind::Array) return wrongType(pointer, "list");
  Changes changes;
  for (std::size_t i = 0; i < json.items.size(); ++i) {
    if (const auto fault = readChange(json.items[i], pointer + "/" + std::to_string(i), changes)) return *fault;
  }
  return changes;
}

}  // namespace

std::string writeChanges(const Changes& changes) {
  std::string out = "[";
  for (const AnyChange& change : changes) {
    if (&change != &changes.front()) out += ", ";
    std::visit([&](const auto& one) { writeChange(one, out); }, change);
  }
  return out + "]";
}

base::Result<Changes> readChanges(std::string_view json) {
  const auto parsed = parseJson(json);
  if (!parsed) return parsed.error();
  return changesOf(parsed.value(), "");
}

std::string writeEdit(const site::Edit& edit) {
  std::string out = "{\"code\": ";
  printText(edit.code, out);
  return out + ", \"changes\": " + writeChanges(edit.changes) + "}";
}

base::Result<site::Edit> readEdit(std::string_view json) {
  const auto parsed = parseJson(json);
  if (!parsed) return parsed.error();
  const Json& root = parsed.value();
  if (root.kind != JsonKind::Object) return wrongType("", "object");
  if (auto fault = unknownKey(root, "", {"code", "changes"})) return *fault;
  const Json* code = root.member("code");
  const Json* changes = root.member("changes");
  if (code == nullptr) return missingKey("", "code");
  if (changes == nullptr) return missingKey("", "changes");
  if (code->kind != JsonKind::Text) return wrongType("/code", "text");
  auto read = changesOf(*changes, "/changes");
  if (!read) return read.error();
  return site::Edit{code->text, std::move(read).value()};
}

}  // namespace cordreach::io
