// SPDX-License-Identifier: GPL-3.0-or-later
#include "study/panel_family.h"

namespace cordreach::study {

namespace {

site::PanelId rootOf(const site::Site& site, site::PanelId id) {
  while (const auto& fedFrom = site.at<site::Panel>(id).fedFrom) id = *fedFrom;
  return id;
}

}  // namespace

PanelFamilies panelFamiliesOf(const site::Site& site) {
  PanelFamilies families;
  for (const auto& panel : site.all<site::Panel>()) families[rootOf(site, panel.id)].insert(panel.id);
  return families;
}

std::set<site::PanelId> panelFamilyOf(const site::Site& site, const site::PanelId& member) {
  return panelFamiliesOf(site).at(rootOf(site, member));
}

}  // namespace cordreach::study
