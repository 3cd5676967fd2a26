// SPDX-License-Identifier: GPL-3.0-or-later
// Every event is about one thing, of the sort that its kind asks for.
#include <array>

#include "site/checks.h"
#include "site/queries.h"

namespace cordreach::site {
namespace {

enum class About { Hookup, Load, Contact, Cord };

About aboutOf(EventKind kind) {
  switch (kind) {
    case EventKind::LoadOn:
    case EventKind::LoadOff:
      return About::Load;
    case EventKind::ContactOn:
    case EventKind::ContactOff:
      return About::Contact;
    case EventKind::Lay:
      return About::Cord;
    default:
      return About::Hookup;
  }
}

bool namesOneThing(const Event& event) {
  const std::array named = {event.hookup.has_value(), event.extension.has_value(), event.load.has_value(),
                            event.outlet.has_value()};
  int count = 0;
  for (const bool one : named) count += one ? 1 : 0;
  if (count != 1) return false;
  switch (aboutOf(event.kind)) {
    case About::Hookup:
      return event.hookup.has_value();
    case About::Load:
      return event.load.has_value();
    case About::Contact:
      return event.outlet.has_value();
    case About::Cord:
      return event.hookup.has_value() || event.extension.has_value();
  }
  return false;
}

}  // namespace

Fault eventFault(const Site& site) {
  for (const Event& event : site.all<Event>()) {
    if (!namesOneThing(event)) return base::Error{"site.event_about_nothing", pointerTo(site, event), {}};
    if (event.outlet && contactOf(site, {*event.outlet, event.contact}) == nullptr) {
      return base::Error{"site.no_contact", pointerTo(site, event) + "/contact", {{"outlet", event.outlet->text()}, {"contact", event.contact}}};
    }
  }
  return std::nullopt;
}

}  // namespace cordreach::site
