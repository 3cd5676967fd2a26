// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/site_file.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <map>
#include <numeric>
#include <vector>

#include "io/atomic_file.h"
#include "io/json_value.h"
#include "io/site_reader.h"
#include "io/site_writer.h"
#include "site/invariants.h"
#include "site/kinds.h"

namespace cordreach::io {
namespace {

using base::Error;
using site::Site;

// Per array of the file, where the thing that sorts n-th stands.
using FileOrder = std::map<std::string, std::vector<std::size_t>, std::less<>>;

std::optional<Error> versionFault(const Json& root) {
  const Json* version = root.member("version");
  if (version == nullptr) return Error{"file.no_version", "", {{"key", "version"}}};
  const double number = version->number;
  if (version->kind != JsonKind::Number || number != std::floor(number) || number < 1.0) {
    return Error{"file.bad_version", "/version", {}};
  }
  if (number > kSiteFileVersion) {
    return Error{"file.newer_version",
                 "/version",
                 {{"version", number}, {"known_version", static_cast<double>(kSiteFileVersion)}}};
  }
  return std::nullopt;
}

template <class T>
std::optional<Error> putSorted(std::vector<T>& things, site::Collection<T>& collection, FileOrder& order) {
  const std::string key(site::kKindKey<T>);
  std::vector<std::size_t>& places = order[key];
  places.resize(things.size());
  std::iota(places.begin(), places.end(), std::size_t{0});
  std::stable_sort(places.begin(), places.end(),
                   [&](std::size_t a, std::size_t b) { return things[a].id < things[b].id; });
  const auto twice = std::adjacent_find(places.begin(), places.end(),
                                        [&](std::size_t a, std::size_t b) { return things[a].id == things[b].id; });
  if (twice != places.end()) {
    return Error{"site.duplicate_id",
                 "/" + key + "/" + std::to_string(*(twice + 1)) + "/id",
                 {{"id", things[*twice].id.text()}, {"first", "/" + key + "/" + std::to_string(*twice)}}};
  }
  for (const std::size_t place : places) collection.put(std::move(things[place]));
  return std::nullopt;
}

template <class T>
std::optional<Error> readKind(const Json& root, Site& site, FileOrder& order) {
  const std::string key(site::kKindKey<T>);
  const Json* array = root.member(key);
  if (array == nullptr) return std::nullopt;
  if (array->kind != JsonKind::Array) return Error{"file.wrong_type", "/" + key, {{"expected", "list"}}};
  if (array->items.size() > site::kMostThings) {
    return Error{"site.too_many_things", "/" + key, {{"limit", static_cast<double>(site::kMostThings)}}};
  }
  std::vector<T> things;
  things.reserve(array->items.size());
  for (std::size_t i = 0; i < array->items.size(); ++i) {
    SiteReader reader("/" + key + "/" + std::to_string(i));
    reader.read(array->items[i], things.emplace_back(blank<T>()));
    if (reader.failed()) return reader.error();
  }
  return putSorted(things, site.all<T>(), order);
}

bool isKindKey(std::string_view key) {
  bool found = false;
  site::forEachKind([&]<class T>() { found = found || site::kKindKey<T> == key; });
  return found;
}

// The fields of the site itself, as the walker meets them.
struct Top {
  Site& site;
};

template <class W>
void describe(W& w, Top& top) {
  w.extra(top.site.extra);
  w.id(top.site.id);
  w.text("name", top.site.name);
  w.object("ambient", top.site.ambient);
}

// `version` and the arrays are read apart, so that what is left is what nobody knows.
Json withoutArrays(Json& root) {
  Json top;
  top.kind = JsonKind::Object;
  for (Json& item : root.items) {
    if (item.key != "version" && !isKindKey(item.key)) top.items.push_back(std::move(item));
  }
  return top;
}

// The place that invariants name counts things as they sort; people look for it where it stands in their file.
std::string placeInFile(const std::string& place, const FileOrder& order) {
  const std::size_t second = place.find('/', 1);
  if (second == std::string::npos) return place;
  const auto array = order.find(std::string_view(place).substr(1, second - 1));
  const std::size_t third = std::min(place.find('/', second + 1), place.size());
  std::size_t index = 0;
  std::from_chars(place.data() + second + 1, place.data() + third, index);
  if (array == order.end() || index >= array->second.size()) return place;
  return place.substr(0, second + 1) + std::to_string(array->second[index]) + place.substr(third);
}

template <class T>
void writeKind(const Site& site, std::string& out) {
  out += ",\n\"";
  out += site::kKindKey<T>;
  out += "\": [";
  bool first = true;
  for (const T& thing : site.all<T>()) {
    out += first ? "\n" : ",\n";
    first = false;
    SiteWriter(out).write(thing);
  }
  out += first ? "]" : "\n]";
}

void writeAmbient(const Site& site, std::string& out) {
  std::string text;
  SiteWriter writer(text);
  writer.begin();
  writer.extra(site.extra);
  const std::size_t start = text.size();
  writer.object("ambient", site.ambient);
  if (text.compare(start, std::string::npos, "\"ambient\": {}") != 0) out += ",\n" + text.substr(start);
}

}  // namespace

base::Result<Site> readSite(std::string_view json) {
  auto parsed = parseJson(json);
  if (!parsed) return parsed.error();
  Json& root = parsed.value();
  if (root.kind != JsonKind::Object) return Error{"file.wrong_type", "", {{"expected", "object"}}};
  if (auto fault = versionFault(root)) return *fault;

  Site site{.id = site::SiteId("?"), .name = {}, .ambient = {}, .collections = {}, .extra = {}};
  FileOrder order;
  std::optional<Error> fault;
  site::forEachKind([&]<class T>() {
    if (!fault) fault = readKind<T>(root, site, order);
  });
  if (fault) return *fault;
  Top top{site};
  SiteReader reader("");
  const Json fields = withoutArrays(root);
  reader.read(fields, top);
  if (reader.failed()) return reader.error();

  if (const auto sound = site::checkInvariants(site); !sound) {
    Error error = sound.error();
    error.place = placeInFile(error.place, order);
    return error;
  }
  return site;
}

std::string writeSite(const Site& site) {
  std::string out = "{\n\"version\": " + std::to_string(kSiteFileVersion) + ",\n\"id\": ";
  printText(site.id.text(), out);
  out += ",\n\"name\": ";
  printText(site.name, out);
  writeAmbient(site, out);
  site::forEachKind([&]<class T>() { writeKind<T>(site, out); });
  for (const auto& [key, value] : site.extra) {
    if (key.starts_with('/') && key.find('/', 1) != std::string::npos) continue;  // stands within ambient
    out += ",\n";
    printText(key.starts_with('/') ? site::keyOfStep(key.substr(1)) : key, out);
    out += ": " + value;
  }
  out += "\n}\n";
  return out;
}

base::Result<Site> loadSite(const std::filesystem::path& path) {
  const auto text = readWholeFile(path, JsonLimits{}.bytes);
  if (!text) return text.error();
  return readSite(text.value());
}

base::Result<base::Done> saveSite(const std::filesystem::path& path, const Site& site) {
  return replaceFile(path, writeSite(site));
}

}  // namespace cordreach::io
