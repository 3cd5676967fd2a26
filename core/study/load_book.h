// SPDX-License-Identifier: GPL-3.0-or-later
// The electrical law of every machine and fixed load of a site, and the heating of its cords, made once: fitting a
// motor to its plate takes longer than solving a circuit with it.
#pragma once

#include <map>
#include <memory>
#include <optional>
#include <string>
#include <tuple>

#include "physics/load_law.h"
#include "site/site.h"
#include "study/branch_heat.h"
#include "study/corner.h"
#include "study/machine_plate.h"
#include "units/quantity.h"

namespace cordreach::study {

class LoadBook {
 public:
  explicit LoadBook(const site::Site& site) : m_site(site) {}

  // `nominal` is the system's voltage between the poles it is on.
  [[nodiscard]] std::shared_ptr<const physics::LoadLaw> lawOf(const site::Hookup& hookup, units::Voltage nominal,
                                                              Corner corner);
  [[nodiscard]] std::shared_ptr<const physics::LoadLaw> lawOf(const site::FixedLoad& load, units::Voltage nominal);

  struct CordKey {
    std::string id;  // of the extension's use or of the hookup whose own cord it is
    bool extension;
    Corner corner;

    friend auto operator<=>(const CordKey&, const CordKey&) = default;
  };
  template <class Make>
  [[nodiscard]] std::shared_ptr<const CordHeat> heatOf(const CordKey& key, Make make) {
    auto& heat = m_heats[key];
    if (heat == nullptr) heat = make();
    return heat;
  }

 private:
  using Key = std::tuple<std::string, std::string, double, double>;  // id, inlet, torque factor, nominal volts
  std::shared_ptr<const physics::LoadLaw> remember(Key key, std::shared_ptr<const physics::LoadLaw> law);

  const site::Site& m_site;
  std::map<Key, std::shared_ptr<const physics::LoadLaw>> m_laws;
  std::map<CordKey, std::shared_ptr<const CordHeat>> m_heats;
};

}  // namespace cordreach::study
