// SPDX-License-Identifier: GPL-3.0-or-later
// Random radial buildings of all wiring systems from a seed, the same on every machine.
#pragma once

#include <cstdint>

#include "network/network.h"
#include "network/wiring_system.h"
#include "support/dice.h"
#include "support/network_builder.h"

namespace cordreach::testing {

struct BuildingMix {
  std::size_t circuits = 6;
  std::size_t nodesPerCircuit = 8;
  bool motors = true;
  bool powers = true;
};

inline network::Supply randomSupply(Dice& dice) {
  switch (dice.below(6)) {
    case 0:
      return network::utilitySplitPhase();
    case 1:
      return network::utility208Y();
    case 2:
      return network::utility230();
    case 3:
      return network::utility230Y400();
    case 4:
      return network::generator(network::LocalOutput::Split120And240, 9000.0 * units::watt);
    default:
      return network::inverter(network::LocalOutput::Single120, 3000.0 * units::watt);
  }
}

inline network::Branch randomBranch(Dice& dice) {
  const double ohm = dice.between(0.005, 0.12);
  const network::Phasor pole{ohm, dice.between(0.0, 0.2) * ohm};
  return {pole, dice.chance(0.8) ? pole : 1.5 * pole};
}

inline Law randomLaw(Dice& dice, double nominalV, const BuildingMix& mix) {
  const std::size_t kind = dice.below(4);
  const double currentA = dice.between(0.2, 6.0);
  if (kind == 1 && mix.motors) {
    return motor({currentA, 0.96 * nominalV, dice.between(0.55, 0.8) * nominalV, dice.between(0.5, 0.9),
                  dice.between(4, 7) * currentA});
  }
  if (kind == 2 && mix.powers) {
    return constantPower(currentA * nominalV, nominalV, dice.between(0.3, 0.7) * nominalV);
  }
  if (kind == 3 && mix.powers) {
    return std::make_shared<ExponentLaw>(currentA * network::Phasor{0.9, -0.4}, nominalV, dice.between(-0.8, 1.8),
                                         0.5 * nominalV);
  }
  const double ohm = nominalV / currentA;
  return impedanceOhm({ohm * dice.between(0.5, 1.0), ohm * dice.between(0.0, 0.8)});
}

inline std::vector<std::size_t> randomPhases(Dice& dice, std::size_t available) {
  std::vector<std::size_t> all;
  for (std::size_t i = 0; i < available; ++i) all.push_back(i);
  for (std::size_t i = all.size(); i > 1; --i) std::swap(all[i - 1], all[dice.below(i)]);
  all.resize(dice.chance(0.5) ? 1 : 1 + dice.below(available));
  return all;
}

inline network::Circuit randomCircuit(Dice& dice, std::size_t panel, const std::vector<network::Phasor>& phaseV,
                                      const BuildingMix& mix) {
  network::Circuit circuit;
  circuit.label = "circuit";
  circuit.panel = panel;
  circuit.phases = randomPhases(dice, phaseV.size());
  const std::size_t nodes = 1 + dice.below(mix.nodesPerCircuit);
  for (std::size_t i = 0; i < nodes; ++i) {
    const std::size_t parent = i == 0 ? 0 : dice.chance(0.7) ? i - 1 : dice.below(i);
    circuit.nodes.push_back({"node " + std::to_string(i), parent, randomBranch(dice)});
    const std::size_t loads = dice.below(3);
    for (std::size_t k = 0; k < loads; ++k) {
      const std::size_t pole = dice.below(circuit.phases.size());
      std::optional<std::size_t> toPole;
      if (circuit.phases.size() > 1 && dice.chance(0.3)) toPole = (pole + 1) % circuit.phases.size();
      network::Phasor across = phaseV[circuit.phases[pole]];
      if (toPole) across -= phaseV[circuit.phases[*toPole]];
      addLoad(circuit, i, randomLaw(dice, std::abs(across), mix), pole, toPole);
    }
  }
  return circuit;
}

inline network::Network randomBuilding(std::uint64_t seed, const BuildingMix& mix = {}) {
  Dice dice(seed);
  network::Network building;
  const network::Supply supply = randomSupply(dice);
  building.panels.push_back(sourcePanel(supply.sourceV, supply.source));
  std::vector<std::vector<network::Phasor>> phaseV{supply.sourceV};
  const std::size_t subPanels = dice.below(3);
  for (std::size_t i = 0; i < subPanels; ++i) {
    network::Panel panel;
    panel.label = "sub";
    panel.fedFrom = dice.below(building.panels.size());
    panel.feedPhases = randomPhases(dice, phaseV[*panel.fedFrom].size());
    panel.feeder = randomBranch(dice);
    std::vector<network::Phasor> volts;
    for (const std::size_t phase : panel.feedPhases) volts.push_back(phaseV[*panel.fedFrom][phase]);
    phaseV.push_back(volts);
    building.panels.push_back(panel);
  }
  for (std::size_t i = 0; i < mix.circuits; ++i) {
    const std::size_t panel = dice.below(building.panels.size());
    building.circuits.push_back(randomCircuit(dice, panel, phaseV[panel], mix));
  }
  return building;
}

}  // namespace cordreach::testing
