// SPDX-License-Identifier: GPL-3.0-or-later
#include "site/invariants.h"

#include "site/checks.h"
#include "site/field_check.h"

namespace cordreach::site {
namespace {

template <class T>
Fault fieldFault(const Site& site) {
  for (const T& thing : site.all<T>()) {
    FieldCheck check(site, pointerTo(site, thing));
    check.check(thing);
    if (check.fault()) return check.fault();
  }
  return std::nullopt;
}

Fault headFault(const Site& site) {
  FieldCheck check(site, "");
  check.id(site.id);
  check.text("name", site.name);
  check.object("ambient", site.ambient);
  return check.fault();
}

Fault countFault(const Site& site) {
  std::size_t count = 0;
  forEachKind([&]<class T>() { count += site.all<T>().size(); });
  if (count <= kMostThings) return std::nullopt;
  return base::Error{"site.too_many_things", "", {{"limit", static_cast<double>(kMostThings)}}};
}

}  // namespace

base::Result<base::Done> checkInvariants(const Site& site) {
  Fault fault = countFault(site);
  if (!fault) fault = headFault(site);
  forEachKind([&]<class T>() {
    if (!fault) fault = fieldFault<T>(site);
  });
  if (!fault) fault = wiringFault(site);
  if (!fault) fault = socketFault(site);
  if (!fault) fault = pluggingFault(site);
  if (!fault) fault = eventFault(site);
  if (fault) return std::move(*fault);
  return base::Done{};
}

}  // namespace cordreach::site
