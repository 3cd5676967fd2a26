// SPDX-License-Identifier: GPL-3.0-or-later
// Where a thing stands, from the plan's upper left corner. A length that can't be read changes nothing.
#pragma once

#include <vector>

#include "geometry/point.h"
#include "panels/field_maker.h"

namespace cordreach::app {

template <class T>
[[nodiscard]] Field coordinateField(const FieldMaker<T>& maker, const std::string& key,
                                    double geometry::Point::*coordinate) {
  const text::Phrasebook* book = &maker.book();
  const auto& place = maker.thing().place;
  const auto isPlaced = [](const T& thing) { return thing.place.has_value(); };
  const std::string shown = place ? exactText(*book, place->at.*coordinate * units::metre) : std::string();
  Field field = maker.custom(key, shown, [book, coordinate](T& thing, std::string_view typed) -> MaybeError {
    const std::string now = exactText(*book, thing.place->at.*coordinate * units::metre);
    if (tidied(typed) == tidied(now)) return std::nullopt;  // what is shown is rounded
    const auto read = readText<units::Length>(*book, typed);
    if (!read.ok()) return read.error();
    thing.place->at.*coordinate = read.value().in(units::metre);
    return std::nullopt;
  });
  return maker.onlyWhile(isPlaced, std::move(field));
}

// Of what has no place: none.
template <class T>
[[nodiscard]] std::vector<Field> placeFields(const FieldMaker<T>& maker) {
  if (!maker.thing().place) return {};
  return {coordinateField(maker, "from_left", &geometry::Point::xM),
          coordinateField(maker, "from_top", &geometry::Point::yM)};
}

}  // namespace cordreach::app
