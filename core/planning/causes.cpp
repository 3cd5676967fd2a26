// SPDX-License-Identifier: GPL-3.0-or-later
#include "planning/causes.h"

#include <algorithm>
#include <array>

namespace cordreach::planning {

namespace {

template <std::size_t N>
bool isAmong(std::string_view code, const std::array<std::string_view, N>& codes) {
  return std::find(codes.begin(), codes.end(), code) != codes.end();
}

constexpr std::array<std::string_view, 4> kOverloads = {"breaker.trips", "circuit.over_rating", "code.eighty_percent",
                                                        "neutral.over_rating"};

// The place is wrong: another outlet, with or without an extension.
constexpr std::array<std::string_view, 8> kPlaces = {"circuit.never",
                                                     "circuit.ask_first",
                                                     "contact.dead",
                                                     "breaker.unknown",
                                                     "receptacle.twelve_amps",
                                                     "receptacle.over_rating",
                                                     "receptacle.twenty_on_fifteen",
                                                     "receptacle.single_fifteen_on_twenty"};

// The cord is wrong, or it is too long a way.
constexpr std::array<std::string_view, 12> kCords = {
    "heat.beyond_model",          "plug.misfit",         "cord.chained",   "cord.over_tag",
    "cord.conductor_over_rating", "cord.jacket_over_60", "plug.over_rise", "machine.stall",
    "cord.lighter_than_machine",  "machine.voltage",     "start.never",    "fault.not_cleared"};

// The cord is broken or put aside.
constexpr std::array<std::string_view, 2> kUnsafe = {"earth.missing", "service.out"};

}  // namespace

bool isOverload(std::string_view code) { return isAmong(code, kOverloads); }

std::vector<Maker> makersFor(std::string_view code) {
  if (isOverload(code)) return {movesToOutlet, movesWithCord, laterHours};
  if (isAmong(code, kPlaces)) return {movesToOutlet, movesWithCord};
  if (isAmong(code, kCords)) return {movesToOutlet, otherCords, unrollings, movesWithCord};
  if (isAmong(code, kUnsafe)) return {otherCords, movesToOutlet};
  if (code == "wet.unprotected") return {otherCords, throughDevice, movesToOutlet};
  // A thicker cord does not help here: it raises the amps of the start.
  if (code == "start.trips") return {movesToOutlet, movesWithCord};
  if (code == "pad.overspeed") return {otherPads};
  return {};
}

}  // namespace cordreach::planning
