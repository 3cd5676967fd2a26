// SPDX-License-Identifier: GPL-3.0-or-later
// Cord types out of their table.
#include "tables/cord_types.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <utility>

#include "base/contract.h"
#include "tables/table.h"

namespace cordreach::tables {
namespace {

template <class Value, std::size_t N>
Value valueOf(std::string_view word, const std::array<std::pair<const char*, Value>, N>& words) {
  const auto found = std::ranges::find_if(words, [&](const auto& pair) { return word == pair.first; });
  CORDREACH_EXPECTS(found != words.end());
  return found->second;
}

constexpr std::array<std::pair<const char*, CordFamily>, 8> kFamilies{{{"hard", CordFamily::Hard},
                                                                       {"extra_hard", CordFamily::ExtraHard},
                                                                       {"vacuum", CordFamily::Vacuum},
                                                                       {"parallel_1", CordFamily::Parallel1},
                                                                       {"parallel_2", CordFamily::Parallel2},
                                                                       {"parallel_3", CordFamily::Parallel3},
                                                                       {"metric_light", CordFamily::MetricLight},
                                                                       {"metric_heavy", CordFamily::MetricHeavy}}};
constexpr std::array<std::pair<const char*, CordUsage>, 3> kUsages{
    {{"light", CordUsage::Light}, {"hard", CordUsage::Hard}, {"extra_hard", CordUsage::ExtraHard}}};
constexpr std::array<std::pair<const char*, CordMaterial>, 3> kMaterials{
    {{"rubber", CordMaterial::Rubber},
     {"elastomer", CordMaterial::Elastomer},
     {"thermoplastic", CordMaterial::Thermoplastic}}};

std::vector<units::Temperature> temperaturesIn(std::string_view text) {
  std::vector<units::Temperature> out;
  const char* at = text.data();
  const char* end = at + text.size();
  int celsius = 0;
  while (at != end) {
    const auto read = std::from_chars(at, end, celsius);
    CORDREACH_EXPECTS(read.ec == std::errc());
    out.push_back(units::Temperature::fromCelsius(celsius));
    at = read.ptr == end ? end : read.ptr + 1;
  }
  return out;
}

CordType typeIn(const Row& row) {
  return {.letters = row.id(),
          .family = valueOf(row.text("family"), kFamilies),
          .usage = valueOf(row.text("usage"), kUsages),
          .material = valueOf(row.text("material"), kMaterials),
          .rating = units::Temperature::fromCelsius(row.number("rating_c")),
          .optionalRatings = temperaturesIn(row.text("optional_ratings_c")),
          .voltage = row.number("voltage_v") * units::volt,
          .lightest = units::parseWireSize(row.text("lightest")).value(),
          .heaviest = units::parseWireSize(row.text("heaviest")).value(),
          .outdoor = row.text("outdoor") == "yes",
          .heater = row.text("heater") == "yes",
          .from = &row.source()};
}

std::string capitals(std::string_view text) {
  std::string out(text);
  for (char& c : out) {
    if (c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
  }
  return out;
}

}  // namespace

std::span<const CordType> cordTypes() {
  static const std::vector<CordType> all = [] {
    std::vector<CordType> types;
    for (const Row& row : table("cord_types").rows()) types.push_back(typeIn(row));
    return types;
  }();
  return all;
}

const CordType* cordType(std::string_view letters) {
  const std::string wanted = capitals(letters);
  const auto all = cordTypes();
  const auto found = std::ranges::find(all, wanted, &CordType::letters);
  return found == all.end() ? nullptr : &*found;
}

const char* familyKey(CordFamily family) {
  const auto found = std::ranges::find(kFamilies, family, &std::pair<const char*, CordFamily>::second);
  CORDREACH_EXPECTS(found != kFamilies.end());
  return found->first;
}

}  // namespace cordreach::tables
