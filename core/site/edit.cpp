// SPDX-License-Identifier: GPL-3.0-or-later
#include "site/edit.h"

#include <algorithm>

#include "site/invariants.h"
#include "site/kinds.h"

namespace cordreach::site {
namespace {

using Fault = std::optional<base::Error>;

template <class T>
base::Error staleError(const T& named) {
  return {"edit.stale", "", {{"kind", std::string(kKindKey<T>)}, {"id", named.id.text()}}};
}

template <class T>
Fault applyChange(const Change<T>& change, Site& site) {
  if (!change.before && !change.after) return std::nullopt;
  const T& named = change.before ? *change.before : *change.after;
  if (change.before && change.after && change.before->id != change.after->id) {
    return base::Error{"edit.id_changed", "", {{"kind", std::string(kKindKey<T>)}, {"id", named.id.text()}}};
  }
  const T* now = site.find<T>(named.id);
  const bool asBefore = change.before ? now != nullptr && *now == *change.before : now == nullptr;
  if (!asBefore) return staleError(named);
  if (change.after) {
    site.all<T>().put(*change.after);
  } else {
    site.all<T>().remove(named.id);
  }
  return std::nullopt;
}

Fault applyChange(const HeadingChange& change, Site& site) {
  if (!(Heading{site.name, site.ambient} == change.before)) {
    return base::Error{"edit.stale", "", {{"kind", std::string("site")}, {"id", site.id.text()}}};
  }
  site.name = change.after.name;
  site.ambient = change.after.ambient;
  return std::nullopt;
}

template <class T>
AnyChange reversed(const T& change) {
  return T{change.after, change.before};
}

Fault applyAny(const AnyChange& change, Site& site) {
  return std::visit([&](const auto& one) { return applyChange(one, site); }, change);
}

AnyChange inverseOfChange(const AnyChange& change) {
  return std::visit([](const auto& one) { return reversed(one); }, change);
}

// Without the stale check: what was just made is there, and a refused NaN is not even equal to itself.
template <class T>
void undo(const Change<T>& change, Site& site) {
  if (change.before) {
    site.all<T>().put(*change.before);
  } else if (change.after) {
    site.all<T>().remove(change.after->id);
  }
}

void undo(const HeadingChange& change, Site& site) {
  site.name = change.before.name;
  site.ambient = change.before.ambient;
}

// Takes back the first `count` changes.
void takeBack(const Edit& edit, std::size_t count, Site& site) {
  while (count > 0) {
    std::visit([&](const auto& one) { undo(one, site); }, edit.changes[--count]);
  }
}

}  // namespace

base::Result<base::Done> apply(const Edit& edit, Site& site) {
  for (std::size_t i = 0; i < edit.changes.size(); ++i) {
    if (const Fault fault = applyAny(edit.changes[i], site)) {
      takeBack(edit, i, site);
      return *fault;
    }
  }
  auto sound = checkInvariants(site);
  if (!sound) takeBack(edit, edit.changes.size(), site);
  return sound;
}

Edit inverseOf(const Edit& edit) {
  Edit inverse{edit.code, {}};
  inverse.changes.reserve(edit.changes.size());
  for (auto change = edit.changes.rbegin(); change != edit.changes.rend(); ++change) {
    inverse.changes.push_back(inverseOfChange(*change));
  }
  return inverse;
}

}  // namespace cordreach::site
