// SPDX-License-Identifier: GPL-3.0-or-later
// What the descriptions share: how one function serves a thing that is read into and one that is only looked at.
#pragma once

#include <concepts>
#include <type_traits>

#include "site/place.h"

namespace cordreach::site {

template <class T, class Bare>
concept Maybe = std::same_as<std::remove_const_t<T>, Bare>;

enum class Leave { Default, Nothing };  // which values are left out of a file: a default one, or none

template <class W, Maybe<Place> T>
void describe(W& w, T& place) {
  w.reference("floor", place.floor);
  w.point("at_m", place.at);
}

}  // namespace cordreach::site
