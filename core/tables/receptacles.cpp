// SPDX-License-Identifier: GPL-3.0-or-later
// Receptacle configurations out of their table.
#include "tables/receptacles.h"

#include <algorithm>

#include "tables/table.h"

namespace cordreach::tables {
namespace {

std::vector<std::string> wordsIn(std::string_view text) {
  std::vector<std::string> words;
  while (!text.empty()) {
    const auto end = std::min(text.find(' '), text.size());
    words.emplace_back(text.substr(0, end));
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  return words;
}

ReceptacleType typeIn(const Row& row) {
  return {.key = row.id(),
          .rating = row.number("rating_a") * units::ampere,
          .voltage = row.number("voltage_v") * units::volt,
          .hotPoles = static_cast<int>(row.number("hot_poles")),
          .neutral = row.text("neutral") == "yes",
          .earth = row.text("earth") == "yes",
          .locking = row.text("locking") == "yes",
          .plugFits = wordsIn(row.text("plug_fits")),
          .from = &row.source()};
}

}  // namespace

std::span<const ReceptacleType> receptacleTypes() {
  static const std::vector<ReceptacleType> all = [] {
    std::vector<ReceptacleType> types;
    for (const Row& row : table("receptacles").rows()) types.push_back(typeIn(row));
    return types;
  }();
  return all;
}

const ReceptacleType* receptacleType(std::string_view key) {
  const auto all = receptacleTypes();
  const auto found = std::ranges::find(all, key, &ReceptacleType::key);
  return found == all.end() ? nullptr : &*found;
}

std::optional<bool> plugFits(std::string_view plug, std::string_view receptacle) {
  const ReceptacleType* of = receptacleType(plug);
  if (of == nullptr || receptacleType(receptacle) == nullptr) return std::nullopt;
  return std::ranges::find(of->plugFits, receptacle) != of->plugFits.end();
}

}  // namespace cordreach::tables
