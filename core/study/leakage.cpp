// SPDX-License-Identifier: GPL-3.0-or-later
#include "study/leakage.h"

#include <algorithm>

#include "physics/ground_fault.h"
#include "site/queries.h"
#include "study/assumptions.h"
#include "study/load_book.h"
#include "study/moments.h"
#include "study/source.h"

namespace cordreach::study {

namespace {

using units::Current;

constexpr units::Frequency kMains = 60.0 * units::hertz;

Band<Current> bandFrom(const site::Known<Current>& stated, Current allowed) {
  if (!stated) return {allowed, Current{}, allowed};
  return {stated->value, stated->low.value_or(stated->value), stated->high.value_or(stated->value)};
}

Band<Current> sumOf(const Band<Current>& a, const Band<Current>& b) {
  return {a.likely + b.likely, a.low + b.low, a.high + b.high};
}

Band<Current> leakageOf(const site::CordMake& make, units::Voltage toEarth) {
  if (conductorsOf(make) < 3 || make.pin == site::Pin::Missing) return {};
  const auto length = lengthOf(make);
  const auto of = [&](units::Length metres) { return physics::cordLeakage(metres, toEarth, kMains); };
  return {of(length.value), of(length.low.value_or(length.value)), of(length.high.value_or(length.value))};
}

units::Voltage toEarthAt(const site::Site& site, const site::Circuit* circuit) {
  if (circuit == nullptr) return nominalLineToNeutral(assumedSupply().system);
  const site::Panel* panel = &site.at<site::Panel>(circuit->panel);
  while (panel->fedFrom) panel = &site.at<site::Panel>(*panel->fedFrom);
  const site::Supply* supply = panel->supply ? site.find<site::Supply>(*panel->supply) : nullptr;
  return nominalLineToNeutral(supply != nullptr ? supply->system : assumedSupply().system);
}

bool sameDevice(const LeakageAnswer& a, const LeakageAnswer& b) {
  return a.breaker == b.breaker && a.outlet == b.outlet && a.inLine == b.inLine;
}

class Moments {
 public:
  explicit Moments(const site::Site& site) : m_site(site) {}

  // The devices at this moment, each with what hangs behind it.
  std::vector<LeakageAnswer> at(const Moment& moment) {
    m_devices.clear();
    m_moment = moment.start;
    for (const auto& id : moment.hookups) addHookup(m_site.at<site::Hookup>(id));
    for (const auto& id : moment.loads) addLoad(m_site.at<site::FixedLoad>(id));
    return std::move(m_devices);
  }

 private:
  void addHookup(const site::Hookup& hookup) {
    const auto& machine = m_site.at<site::Machine>(hookup.machine);
    const auto chain = site::chainOf(m_site, hookup);
    if (hookup.off || !chain) return;
    const site::Circuit* circuit = site::circuitOf(m_site, chain->outlet);
    const units::Voltage toEarth = toEarthAt(m_site, circuit);
    const site::CordMake& own = inletOf(machine, hookup.inlet).cord;
    LeakageShare share{hookup.id, {}, bandFrom(machine.leakage, allowedOf(machine)), machine.leakage.has_value()};
    share.current = sumOf(share.current, leakageOf(own, toEarth));
    bool inLine = own.groundFaultDevice;
    for (const site::ChainLink& link : chain->links) {
      if (link.extension == nullptr) continue;
      const site::CordMake& make = m_site.at<site::Cord>(link.extension->cord).make;
      share.current = sumOf(share.current, leakageOf(make, toEarth));
      inLine = inLine || make.groundFaultDevice;
    }
    if (inLine) put({{}, {}, hookup.id, {}, {}, {}}, share);
    if (circuit != nullptr) addBehind(m_site.at<site::Outlet>(chain->outlet.outlet), *circuit, share);
  }

  void addLoad(const site::FixedLoad& load) {
    const auto& circuit = m_site.at<site::Circuit>(load.circuit);
    const LeakageShare share{
        {}, load.id, bandFrom(load.leakage, physics::stationaryLeakage()), load.leakage.has_value()};
    if (load.outlet) {
      addBehind(m_site.at<site::Outlet>(*load.outlet), circuit, share);
    } else if (circuit.groundFault) {
      put({circuit.id, {}, {}, {}, {}, {}}, share);
    }
  }

  // The outlet itself, those before it on its circuit, and the breaker.
  void addBehind(const site::Outlet& outlet, const site::Circuit& circuit, const LeakageShare& share) {
    const site::Outlet* at = &outlet;
    for (std::size_t step = 0; at != nullptr && step <= m_site.all<site::Run>().size(); ++step) {
      if (at->groundFaultDevice) put({{}, at->id, {}, {}, {}, {}}, share);
      at = before(*at, circuit);
    }
    if (circuit.groundFault) put({circuit.id, {}, {}, {}, {}, {}}, share);
  }

  const site::Outlet* before(const site::Outlet& outlet, const site::Circuit& circuit) const {
    for (const site::Run& run : m_site.all<site::Run>()) {
      if (run.to == outlet.id && run.circuit == circuit.id) {
        return run.from ? &m_site.at<site::Outlet>(*run.from) : nullptr;
      }
    }
    return nullptr;
  }

  static Current allowedOf(const site::Machine& machine) {
    return machine.doubleInsulated ? physics::doubleInsulatedLeakage() : physics::portableLeakage();
  }

  void put(LeakageAnswer device, const LeakageShare& share) {
    auto known = std::find_if(m_devices.begin(), m_devices.end(),
                              [&](const LeakageAnswer& other) { return sameDevice(other, device); });
    if (known == m_devices.end()) {
      device.moment = m_moment;
      known = m_devices.insert(m_devices.end(), std::move(device));
    }
    known->sum = sumOf(known->sum, share.current);
    known->shares.push_back(share);
  }

  const site::Site& m_site;
  std::optional<units::Duration> m_moment;
  std::vector<LeakageAnswer> m_devices;
};

}  // namespace

std::vector<LeakageAnswer> leakagesOf(const site::Site& site) {
  std::vector<LeakageAnswer> worst;
  Moments moments(site);
  for (const Moment& moment : momentsOf(site)) {
    for (LeakageAnswer& device : moments.at(moment)) {
      const auto known = std::find_if(worst.begin(), worst.end(),
                                      [&](const LeakageAnswer& other) { return sameDevice(other, device); });
      if (known == worst.end()) {
        worst.push_back(std::move(device));
      } else if (device.sum.likely > known->sum.likely) {
        *known = std::move(device);
      }
    }
  }
  for (LeakageAnswer& device : worst) {
    std::stable_sort(device.shares.begin(), device.shares.end(),
                     [](const LeakageShare& a, const LeakageShare& b) { return a.current.likely > b.current.likely; });
  }
  return worst;
}

}  // namespace cordreach::study
