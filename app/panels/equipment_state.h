// SPDX-License-Identifier: GPL-3.0-or-later
// Putting a cord or machine out of service and back: its reason is the field, empty when it is in service.
#pragma once

#include <string>

#include "panels/field_maker.h"

namespace cordreach::app {

struct ServiceNote {
  std::string reason;
  std::string who{};
  std::string when{};  // ISO 8601 date
};

// Errors: field.gone, service.no_reason.
[[nodiscard]] base::Result<site::Edit> outOfService(const site::Site& site, const site::CordId& cord,
                                                    const ServiceNote& note);
[[nodiscard]] base::Result<site::Edit> outOfService(const site::Site& site, const site::MachineId& machine,
                                                    const ServiceNote& note);
[[nodiscard]] base::Result<site::Edit> backInService(const site::Site& site, const site::CordId& cord);
[[nodiscard]] base::Result<site::Edit> backInService(const site::Site& site, const site::MachineId& machine);

template <class T>
[[nodiscard]] Field serviceField(const FieldMaker<T>& maker) {
  const auto& out = maker.thing().outOfService;
  return maker.custom("out_of_service", out ? out->reason : "", [](T& thing, std::string_view typed) -> MaybeError {
    const std::string reason = tidied(typed);
    if (reason.empty()) {
      thing.outOfService.reset();
    } else if (thing.outOfService) {
      thing.outOfService->reason = reason;
    } else {
      thing.outOfService = site::OutOfService{reason, {}, {}};
    }
    return std::nullopt;
  });
}

}  // namespace cordreach::app
