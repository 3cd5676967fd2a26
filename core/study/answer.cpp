// SPDX-License-Identifier: GPL-3.0-or-later
#include "study/answer.h"

#include <algorithm>

namespace cordreach::study {

namespace {

template <class T, class Id>
const T* findIn(const std::vector<T>& sorted, const Id& id) {
  const auto at =
      std::lower_bound(sorted.begin(), sorted.end(), id, [](const T& item, const Id& key) { return item.id < key; });
  return at != sorted.end() && at->id == id ? &*at : nullptr;
}

}  // namespace

const CircuitAnswer* Answer::find(const site::CircuitId& id) const { return findIn(circuits, id); }

const HookupAnswer* Answer::find(const site::HookupId& id) const { return findIn(hookups, id); }

}  // namespace cordreach::study
