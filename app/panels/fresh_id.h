// SPDX-License-Identifier: GPL-3.0-or-later
// Ids for what people add.
#pragma once

#include "site/new_id.h"

namespace cordreach::app {

// Draws from the operating system's source of random numbers.
[[nodiscard]] const site::RandomSource& randomSource();

template <class T>
[[nodiscard]] decltype(T::id) freshId(const site::Site& site) {
  return site::newId<T>(site, randomSource());
}

}  // namespace cordreach::app
