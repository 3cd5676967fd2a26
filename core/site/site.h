// SPDX-License-Identifier: GPL-3.0-or-later
// The document: a described building, its equipment and what is planned in it, as one plain value.
#pragma once

#include <string>
#include <tuple>

#include "site/collection.h"
#include "site/equipment.h"
#include "site/outlet.h"
#include "site/place.h"
#include "site/plan.h"
#include "site/supply.h"

namespace cordreach::site {

struct Ambient {
  Known<units::Temperature> room{};   // absent: 25 °C
  Known<units::Temperature> panel{};  // absent: room
  Known<units::Temperature> wall{};   // absent: 30 °C

  friend bool operator==(const Ambient&, const Ambient&) = default;
};

struct Site {
  SiteId id;
  std::string name{};
  Ambient ambient{};
  std::tuple<Collection<Supply>, Collection<Panel>, Collection<Circuit>, Collection<Floor>, Collection<Room>,
             Collection<Outlet>, Collection<Run>, Collection<FixedLoad>, Collection<Machine>, Collection<Cord>,
             Collection<Pad>, Collection<Hookup>, Collection<ExtensionUse>, Collection<Event>, Collection<Acceptance>,
             Collection<HistoryEntry>>
      collections{};
  Extra extra{};

  template <class T>
  [[nodiscard]] const Collection<T>& all() const {
    return std::get<Collection<T>>(collections);
  }
  template <class T>
  [[nodiscard]] Collection<T>& all() {
    return std::get<Collection<T>>(collections);
  }
  template <class T>
  [[nodiscard]] const T* find(const decltype(T::id)& wanted) const {
    return all<T>().find(wanted);
  }
  template <class T>
  [[nodiscard]] const T& at(const decltype(T::id)& wanted) const {
    return all<T>().at(wanted);
  }

  friend bool operator==(const Site&, const Site&) = default;
};

}  // namespace cordreach::site
