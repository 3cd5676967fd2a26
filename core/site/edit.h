// SPDX-License-Identifier: GPL-3.0-or-later
// Changes to a site as values with an inverse: undo, autosave, remedies and file differences speak this one language.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "base/result.h"
#include "site/site.h"

namespace cordreach::site {

// One thing before and after: no before is an addition, no after a removal.
template <class T>
struct Change {
  std::optional<T> before{};
  std::optional<T> after{};

  friend bool operator==(const Change&, const Change&) = default;
};

// The site's own fields.
struct Heading {
  std::string name;
  Ambient ambient;

  friend bool operator==(const Heading&, const Heading&) = default;
};

struct HeadingChange {
  Heading before;
  Heading after;

  friend bool operator==(const HeadingChange&, const HeadingChange&) = default;
};

using AnyChange =
    std::variant<Change<Supply>, Change<Panel>, Change<Circuit>, Change<Floor>, Change<Room>, Change<Outlet>,
                 Change<Run>, Change<FixedLoad>, Change<Machine>, Change<Cord>, Change<Pad>, Change<Hookup>,
                 Change<ExtensionUse>, Change<Event>, Change<Acceptance>, Change<HistoryEntry>, HeadingChange>;

struct Edit {
  std::string code;  // what it does, dotted, for the words: "hookup.move"
  std::vector<AnyChange> changes;

  friend bool operator==(const Edit&, const Edit&) = default;
};

// Changes the site, or leaves it as it was. Errors: edit.stale (the site no longer holds what a change names as
// before), and what checkInvariants finds afterwards.
[[nodiscard]] base::Result<base::Done> apply(const Edit& edit, Site& site);

[[nodiscard]] Edit inverseOf(const Edit& edit);

}  // namespace cordreach::site
