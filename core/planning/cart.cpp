// SPDX-License-Identifier: GPL-3.0-or-later
#include "planning/cart.h"

#include <algorithm>
#include <tuple>

#include "rules/copper.h"
#include "study/assumptions.h"
#include "tables/receptacles.h"

namespace cordreach::planning {

namespace {

bool isFree(const site::Cord& cord, const std::optional<site::Hours>& hours, const site::Site& site) {
  const auto& uses = site.all<site::ExtensionUse>();
  return std::none_of(uses.begin(), uses.end(), [&](const site::ExtensionUse& use) {
    return use.cord == cord.id && rules::together(use.hours, hours);
  });
}

bool isSound(const site::Cord& cord) {
  const site::CordMake& make = cord.make;
  return !cord.outOfService && make.pin == site::Pin::Present && make.size && make.length &&
         study::conductorsOf(make) >= 3 && !cord.sockets.empty();
}

}  // namespace

bool heavyEnough(const units::WireSize& extension, const units::WireSize& own) {
  if (!rules::isLighter(own, units::WireSize::awg(12))) return !rules::isLighter(extension, own);
  return rules::isSizeHeavier(extension, own);
}

std::vector<const site::Cord*> cordsFor(const Plugging& plugging, const site::Site& site, const CordWish& wish) {
  std::vector<const site::Cord*> found;
  const site::CordMake& own = plugging.inlet->cord;
  for (const site::Cord& cord : site.all<site::Cord>()) {
    if (!isSound(cord) || !isFree(cord, plugging.hookup->hours, site)) continue;
    if (wish.groundFault && !cord.make.groundFaultDevice) continue;
    if (cord.make.length->value < wish.length) continue;
    if (!heavyEnough(cord.make.size->value, study::sizeOf(own))) continue;
    if (!tables::plugFits(own.plug, cord.sockets.front()).value_or(false)) continue;
    if (!wish.receptacle.empty() && !tables::plugFits(cord.make.plug, wish.receptacle).value_or(false)) continue;
    found.push_back(&cord);
  }
  std::stable_sort(found.begin(), found.end(), [](const site::Cord* a, const site::Cord* b) {
    const auto key = [](const site::Cord& cord) {
      return std::tuple(cord.make.length->value.si(), cord.make.size->value.area().si(), cord.label);
    };
    return key(*a) < key(*b);
  });
  return found;
}

}  // namespace cordreach::planning
