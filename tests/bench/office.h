// SPDX-License-Identifier: GPL-3.0-or-later
// The building that the network's timings are taken on: 600 circuits and 12 panels for 10,000 outlets and in that
// proportion for more or fewer; 8 A a circuit and, at full load, 3 % of the source's volts lost in front of the panel.
#pragma once

#include <algorithm>
#include <cstddef>
#include <functional>
#include <vector>

#include "support/network_builder.h"

namespace cordreach::bench {

inline constexpr std::size_t kOutletsPerCircuit = 17;
inline constexpr double kCircuitA = 8.0;
inline constexpr double kOutletA = kCircuitA / static_cast<double>(kOutletsPerCircuit);
inline constexpr double kPlateV = 115.0;

// One law object an outlet, as a real building has.
using LawOfOutlet = std::function<testing::Law(std::size_t outlet)>;

// Every other one a motor, the rest drawing a constant current; every `stalledEvery`th a motor that cannot run.
inline testing::Law outletLaw(std::size_t outlet, std::size_t stalledEvery) {
  constexpr double kPullOutOfStalledV = 117.0;  // above what any outlet gets
  if (stalledEvery > 0 && outlet % stalledEvery == 0) {
    return testing::motor({kOutletA, kPlateV, kPullOutOfStalledV, 0.75, 5 * kOutletA});
  }
  if (outlet % 2 == 0) return testing::motor({kOutletA, kPlateV, 80, 0.75, 5 * kOutletA});
  return std::make_shared<testing::ExponentLaw>(kOutletA, kPlateV, 0.0, 60);
}

inline network::Network office(std::size_t outlets, const LawOfOutlet& lawOf) {
  const std::size_t circuits = std::max<std::size_t>(1, outlets * 6 / 100);
  const std::size_t panels = std::max<std::size_t>(1, circuits / 50);
  network::Network building;
  for (std::size_t i = 0; i < panels; ++i) {
    const double perLegA = kCircuitA * static_cast<double>(circuits) / static_cast<double>(panels) / 2.0;
    building.panels.push_back(testing::sourcePanel({120.0, -120.0}, {0.03 * 120 / perLegA, 0.0}));
  }
  std::size_t outlet = 0;
  for (std::size_t c = 0; c < circuits; ++c) {
    const std::size_t end = outlets * (c + 1) / circuits;
    std::vector<network::Branch> branches(end - outlet, {0.015, 0.015});
    branches[0] = {0.1, 0.1};
    network::Circuit circuit = testing::chain({(c / panels) % 2}, branches);
    circuit.panel = c % panels;
    for (std::size_t node = 0; outlet < end; ++node, ++outlet) testing::addLoad(circuit, node, lawOf(outlet));
    building.circuits.push_back(circuit);
  }
  return building;
}

inline network::Network office(std::size_t outlets, std::size_t stalledEvery = 0) {
  return office(outlets, [&](std::size_t outlet) { return outletLaw(outlet, stalledEvery); });
}

// The same with an impedance at every outlet.
inline network::Network linearOffice(std::size_t outlets) {
  return office(outlets, [](std::size_t) { return testing::impedanceOhm({0.8 * kPlateV / kOutletA, 40.0}); });
}

}  // namespace cordreach::bench
