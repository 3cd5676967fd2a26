// SPDX-License-Identifier: GPL-3.0-or-later
#include "study/source.h"

#include <complex>

namespace cordreach::study {

namespace {

using site::WiringSystem;
using units::volt;

constexpr double kServiceRange = 0.05;  // ANSI C84.1 range A at the service: 114 to 126 V, from memory
constexpr units::Power kCommonPortable = 5000.0 * units::watt;  // own: a portable generator or battery station

network::Supply utilityOf(WiringSystem system) {
  switch (system) {
    case WiringSystem::SplitPhase120:
      return network::utilitySplitPhase();
    case WiringSystem::Wye208:
      return network::utility208Y();
    case WiringSystem::Single230:
      return network::utility230();
    case WiringSystem::Wye400:
      return network::utility230Y400();
    case WiringSystem::Single120:
      break;
  }
  network::Supply oneLeg = network::utilitySplitPhase();
  oneLeg.sourceV.resize(1);
  return oneLeg;
}

network::LocalOutput outputOf(WiringSystem system) {
  if (system == WiringSystem::SplitPhase120) return network::LocalOutput::Split120And240;
  return nominalLineToNeutral(system) > 200.0 * volt ? network::LocalOutput::Single230
                                                     : network::LocalOutput::Single120;
}

network::Supply localOf(const site::Supply& supply) {
  const units::Power rating =
      supply.currentLimit ? supply.currentLimit->value * nominalLineToNeutral(supply.system) : kCommonPortable;
  const network::LocalOutput output = outputOf(supply.system);
  return supply.source == site::SupplyKindOfSource::Generator ? network::generator(output, rating)
                                                              : network::inverter(output, rating);
}

site::Stated<units::Voltage> openCircuitOf(const site::Supply& supply) {
  if (supply.openCircuit) return *supply.openCircuit;
  const units::Voltage nominal = nominalLineToNeutral(supply.system);
  return {nominal, nominal * (1.0 - kServiceRange), nominal * (1.0 + kServiceRange), {}, "nominal", {}, {}};
}

}  // namespace

units::Voltage nominalLineToNeutral(WiringSystem system) {
  const bool european = system == WiringSystem::Single230 || system == WiringSystem::Wye400;
  return (european ? 230.0 : 120.0) * volt;
}

site::Supply assumedSupply() {
  return {
      site::SupplyId("assumed"), {}, site::SupplyKindOfSource::Utility, WiringSystem::SplitPhase120, {}, {}, {}, {}};
}

network::Supply sourceOf(const site::Supply& supply, Corner corner) {
  network::Supply source =
      supply.source == site::SupplyKindOfSource::Utility ? utilityOf(supply.system) : localOf(supply);
  const double voltageV = lessIsWorse(openCircuitOf(supply), corner).in(volt);
  for (network::Phasor& phase : source.sourceV) phase *= voltageV / std::abs(phase);
  if (supply.loopImpedance) {
    const double halfOhm = moreIsWorse(*supply.loopImpedance, corner).in(units::ohm) / 2.0;
    source.source = {halfOhm, halfOhm};
  }
  return source;
}

}  // namespace cordreach::study
