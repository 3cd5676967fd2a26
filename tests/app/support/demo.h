// SPDX-License-Identifier: GPL-3.0-or-later
// The demo building, and small edits of it.
#pragma once

#include <stdexcept>
#include <string>

#include "io/site_file.h"
#include "site/edit.h"

namespace cordreach::testing {

[[nodiscard]] inline site::Site demoBuilding() {
  base::Result<site::Site> site = io::loadSite("resources/demo/building.json");
  if (!site) throw std::runtime_error("the demo building: " + site.error().code + " at " + site.error().place);
  return std::move(site).value();
}

[[nodiscard]] inline site::Edit renaming(const site::Site& site, const std::string& name) {
  return {"site.rename", {site::HeadingChange{{site.name, site.ambient}, {name, site.ambient}}}};
}

template <class T>
[[nodiscard]] site::Edit changing(const T& before, const T& after) {
  return {"thing.change", {site::Change<T>{before, after}}};
}

}  // namespace cordreach::testing
