// SPDX-License-Identifier: GPL-3.0-or-later
#include "study/day_events.h"

#include <algorithm>

namespace cordreach::study {

DayEvents::DayEvents(const site::Site& site)
    : m_site(site), m_ahead(site.all<site::Event>().begin(), site.all<site::Event>().end()) {
  std::stable_sort(m_ahead.begin(), m_ahead.end(), [](const auto& a, const auto& b) { return a.at < b.at; });
  std::reverse(m_ahead.begin(), m_ahead.end());
}

void DayEvents::applyUntil(units::Duration time) {
  while (!m_ahead.empty() && m_ahead.back().at <= time) {
    apply(m_ahead.back());
    m_ahead.pop_back();
  }
}

void DayEvents::apply(const site::Event& event) {
  switch (event.kind) {
    case site::EventKind::LoadOn:
    case site::EventKind::LoadOff: {
      site::FixedLoad load = m_site.at<site::FixedLoad>(*event.load);
      load.cycle.reset();
      m_site.all<site::FixedLoad>().put(load);
      m_byHand[*event.load] = event.kind == site::EventKind::LoadOn;
      return;
    }
    case site::EventKind::ContactOn:
    case site::EventKind::ContactOff:
      applyToContact(event);
      return;
    case site::EventKind::Lay:
      if (event.extension) {
        site::ExtensionUse use = m_site.at<site::ExtensionUse>(*event.extension);
        use.laying = event.laying;
        m_site.all<site::ExtensionUse>().put(use);
        return;
      }
      [[fallthrough]];
    default:
      applyToHookup(event);
  }
}

void DayEvents::applyToHookup(const site::Event& event) {
  site::Hookup hookup = m_site.at<site::Hookup>(*event.hookup);
  switch (event.kind) {
    case site::EventKind::Start:
      hookup.off = false;
      break;
    case site::EventKind::Stop:
      hookup.off = true;
      break;
    case site::EventKind::PlugIn:
      m_pulled.erase(hookup.id);
      break;
    case site::EventKind::Unplug:
      m_pulled.insert(hookup.id);
      break;
    case site::EventKind::ChangePad:
      hookup.pad = event.pad;
      break;
    case site::EventKind::Lay:
      hookup.ownCord = event.laying;
      break;
    default:
      break;
  }
  m_site.all<site::Hookup>().put(hookup);
}

// By hand it has power or not, whatever its hours say.
void DayEvents::applyToContact(const site::Event& event) {
  site::Outlet outlet = m_site.at<site::Outlet>(*event.outlet);
  for (site::Contact& contact : outlet.contacts) {
    if (contact.name != event.contact) continue;
    contact.poweredHours.reset();
    contact.dead = event.kind == site::EventKind::ContactOff;
  }
  m_site.all<site::Outlet>().put(outlet);
}

Moment DayEvents::momentAt(units::Duration time) const {
  Moment moment = study::momentAt(m_site, time);
  std::erase_if(moment.hookups, [&](const site::HookupId& id) { return m_pulled.contains(id); });
  std::erase_if(moment.loads, [&](const site::FixedLoadId& id) { return m_byHand.contains(id); });
  for (const auto& [id, on] : m_byHand) {
    if (on) moment.loads.push_back(id);
  }
  return moment;
}

}  // namespace cordreach::study
