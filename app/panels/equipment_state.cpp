// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/equipment_state.h"

namespace cordreach::app {

namespace {

template <class T>
base::Result<site::Edit> changed(const site::Site& site, const decltype(T::id)& id, std::string code,
                                 std::optional<site::OutOfService> state) {
  const T* now = site.find<T>(id);
  if (now == nullptr) return base::Error{"field.gone", id.text(), {}};
  T after = *now;
  after.outOfService = std::move(state);
  return site::Edit{std::move(code), {site::Change<T>{*now, std::move(after)}}};
}

template <class T>
base::Result<site::Edit> putAside(const site::Site& site, const decltype(T::id)& id, const ServiceNote& note) {
  if (tidied(note.reason).empty()) return base::Error{"service.no_reason", id.text(), {}};
  return changed<T>(site, id, "service.out", site::OutOfService{tidied(note.reason), tidied(note.who), note.when});
}

}  // namespace

base::Result<site::Edit> outOfService(const site::Site& site, const site::CordId& cord, const ServiceNote& note) {
  return putAside<site::Cord>(site, cord, note);
}
base::Result<site::Edit> outOfService(const site::Site& site, const site::MachineId& machine, const ServiceNote& note) {
  return putAside<site::Machine>(site, machine, note);
}
base::Result<site::Edit> backInService(const site::Site& site, const site::CordId& cord) {
  return changed<site::Cord>(site, cord, "service.back", std::nullopt);
}
base::Result<site::Edit> backInService(const site::Site& site, const site::MachineId& machine) {
  return changed<site::Machine>(site, machine, "service.back", std::nullopt);
}

}  // namespace cordreach::app
