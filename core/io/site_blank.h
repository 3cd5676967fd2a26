// SPDX-License-Identifier: GPL-3.0-or-later
// A thing to read into. Ids have no null, so what must be read stands as "?" until it is; a reader that fails keeps
// nothing of it.
#pragma once

#include "site/site.h"

namespace cordreach::io {

template <class Id>
[[nodiscard]] Id blankId() {
  return Id("?");
}

// Fills any id of an aggregate.
struct AnyBlankId {
  template <class Kind>
  operator base::Id<Kind>() const {
    return base::Id<Kind>("?");
  }
};

template <class T>
[[nodiscard]] T blank() {
  using namespace site;
  const AnyBlankId id;
  if constexpr (std::is_same_v<T, Circuit> || std::is_same_v<T, Room>) {
    return T{id, id};
  } else if constexpr (std::is_same_v<T, Run>) {
    return T{id, id, std::nullopt, id};
  } else if constexpr (std::is_same_v<T, FixedLoad>) {
    return T{id, {}, id};
  } else if constexpr (std::is_same_v<T, Hookup>) {
    return T{id, id, {}, OutletSocket{id, {}}};
  } else if constexpr (std::is_same_v<T, ExtensionUse>) {
    return T{id, id, OutletSocket{id, {}}};
  } else if constexpr (std::is_default_constructible_v<T>) {
    return T{};
  } else {
    return T{id};
  }
}

}  // namespace cordreach::io
