// SPDX-License-Identifier: GPL-3.0-or-later
// Currents of branches are summed from the leaves. Fundamentals and third harmonics add as phasors, the third turning
// three times as far as the fundamental of its voltage. Of the other harmonics no phase is known: within a pole they
// add arithmetically (the cautious end), in the neutral the poles' sums add as the root of their squares.
#include "network/detail/results.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <memory>

#include "network/detail/recycled.h"

namespace cordreach::network::detail {
namespace {

struct PoleCurrent {
  double fundamentalRe = 0;
  double fundamentalIm = 0;
  double thirdRe = 0;
  double thirdIm = 0;
  double otherA = 0;
  double otherToNeutralA = 0;  // the part of otherA that returns through the neutral
};

double otherDistortionA(const physics::LoadPoint& point) {
  const double squared = point.distortionA * point.distortionA - point.thirdHarmonicA * point.thirdHarmonicA;
  return std::sqrt(std::max(0.0, squared));
}

LoadSolution loadResult(const FlatLoad& load, const LoadState& state, const physics::LoadPoint& point) {
  LoadSolution result;
  result.voltageV = {state.uRe, state.uIm};
  result.currentA = point.admittanceS * result.voltageV;
  result.totalRmsA = std::sqrt(std::norm(result.currentA) + point.distortionA * point.distortionA);
  result.point = point;
  result.stalled = load.mode == LoadMode::Stalled;
  return result;
}

void addLoad(PoleCurrent* poles, const FlatLoad& load, const LoadSolution& solution) {
  const physics::LoadPoint& point = solution.point;
  PoleCurrent& from = poles[load.poleIndex];
  from.fundamentalRe += solution.currentA.real();
  from.fundamentalIm += solution.currentA.imag();
  PoleCurrent* to = load.toPoleIndex == kNeutral ? nullptr : &poles[load.toPoleIndex];
  if (to != nullptr) {
    to->fundamentalRe -= solution.currentA.real();
    to->fundamentalIm -= solution.currentA.imag();
  }
  if (point.distortionA <= 0) return;
  const double otherA = otherDistortionA(point);
  from.otherA += otherA;
  if (to == nullptr) from.otherToNeutralA += otherA;
  if (to != nullptr) to->otherA += otherA;
  if (point.thirdHarmonicA <= 0) return;
  const Phasor third =
      std::polar(point.thirdHarmonicA, point.thirdHarmonicPhaseRad + 3.0 * std::arg(solution.voltageV));
  from.thirdRe += third.real();
  from.thirdIm += third.imag();
  if (to != nullptr) {
    to->thirdRe -= third.real();
    to->thirdIm -= third.imag();
  }
}

void addTo(PoleCurrent& sum, const PoleCurrent& part) {
  sum.fundamentalRe += part.fundamentalRe;
  sum.fundamentalIm += part.fundamentalIm;
  sum.thirdRe += part.thirdRe;
  sum.thirdIm += part.thirdIm;
  sum.otherA += part.otherA;
  sum.otherToNeutralA += part.otherToNeutralA;
}

double rms(double fundamentalRe, double fundamentalIm, double thirdRe, double thirdIm, double otherSquared) {
  return std::sqrt(fundamentalRe * fundamentalRe + fundamentalIm * fundamentalIm + thirdRe * thirdRe +
                   thirdIm * thirdIm + otherSquared);
}

BranchCurrents branchResult(const PoleCurrent* poles, std::size_t count) {
  BranchCurrents result;
  result.poleRmsA = PerPole<double>(count);
  PoleCurrent neutral;
  double otherSquared = 0;
  for (std::size_t i = 0; i < count; ++i) {
    const PoleCurrent& pole = poles[i];
    result.poleRmsA[i] =
        rms(pole.fundamentalRe, pole.fundamentalIm, pole.thirdRe, pole.thirdIm, pole.otherA * pole.otherA);
    addTo(neutral, pole);
    otherSquared += pole.otherToNeutralA * pole.otherToNeutralA;
  }
  result.neutralRmsA =
      rms(neutral.fundamentalRe, neutral.fundamentalIm, neutral.thirdRe, neutral.thirdIm, otherSquared);
  return result;
}

struct WorstNode {
  double mismatchA = 0;
  const std::string* label = nullptr;
};

// Of one node, its largest pole.
double nodeMismatchA(const FlatNetwork& flat, const FlatNode& node, const Newton& newton) {
  std::array<Phasor, 3> off{};
  for (std::uint32_t k = node.firstLoad; k < node.endLoad; ++k) {
    const FlatLoad& load = flat.loads[k];
    const LoadState& state = newton.loads()[k];
    const Phasor drawn = newton.points()[k].admittanceS * Phasor(state.uRe, state.uIm);
    const Phasor mismatch = drawn - Phasor(state.netRe, state.netIm);
    off[load.poleIndex] += mismatch;
    if (load.toPoleIndex != kNeutral) off[load.toPoleIndex] -= mismatch;
  }
  return std::sqrt(std::max({std::norm(off[0]), std::norm(off[1]), std::norm(off[2])}));
}

WorstNode worstNode(const FlatNetwork& flat, std::span<const Circuit> circuits, const Newton& newton) {
  WorstNode worst;
  for (const FlatCircuit& place : flat.circuits) {
    for (std::size_t i = place.firstNode; i < place.endNode; ++i) {
      const double mismatchA = nodeMismatchA(flat, flat.nodes[i], newton);
      if (worst.label != nullptr && mismatchA <= worst.mismatchA) continue;
      worst = {mismatchA, &circuits[place.original].nodes[i - place.firstNode].label};
    }
  }
  return worst;
}

// Fills the arrays that the circuits of a solution share, circuit by circuit, and hands out their parts.
class Writer {
 public:
  Writer(const FlatNetwork& flat, const Newton& newton)
      : m_flat(flat),
        m_newton(newton),
        m_nodeV(recycled<PerPole<Phasor>>(flat.nodes.size())),
        m_branches(recycled<BranchCurrents>(flat.nodes.size())),
        m_loads(recycled<LoadSolution>(flat.loads.size())) {}

  CircuitSolution write(const FlatCircuit& place) {
    const std::size_t nodes = place.endNode - place.firstNode;
    const std::size_t loads = place.endLoad - place.firstLoad;
    m_currents.assign(nodes * place.poles, {});
    writeLoads(place);
    writeNodes(place);
    return {part(m_nodeV, place.firstNode, nodes), part(m_branches, place.firstNode, nodes),
            part(m_loads, place.firstLoad, loads)};
  }

 private:
  template <class T>
  static Slice<T> part(const std::shared_ptr<std::vector<T>>& all, std::size_t first, std::size_t count) {
    return {all, std::span<const T>(all->data() + first, count)};
  }

  void writeLoads(const FlatCircuit& place) {
    for (std::size_t i = 0; i < place.endNode - place.firstNode; ++i) {
      const FlatNode& node = m_flat.nodes[place.firstNode + i];
      for (std::uint32_t k = node.firstLoad; k < node.endLoad; ++k) {
        LoadSolution& load = (*m_loads)[place.firstLoad + m_flat.loads[k].original];
        load = loadResult(m_flat.loads[k], m_newton.loads()[k], m_newton.points()[k]);
        addLoad(&m_currents[i * place.poles], m_flat.loads[k], load);
      }
    }
  }

  // From the leaves, as each node's currents are its parent's too.
  void writeNodes(const FlatCircuit& place) {
    const std::size_t poles = place.poles;
    const double* voltage = m_newton.voltage().data() + place.voltageAt;
    for (std::size_t i = place.endNode - place.firstNode; i-- > 0;) {
      (*m_branches)[place.firstNode + i] = branchResult(&m_currents[i * poles], poles);
      PerPole<Phasor> node(poles);
      const std::size_t parent = m_flat.nodes[place.firstNode + i].parent;
      for (std::size_t p = 0; p < poles; ++p) {
        node[p] = {voltage[2 * (i * poles + p)], voltage[2 * (i * poles + p) + 1]};
        if (i > 0) addTo(m_currents[parent * poles + p], m_currents[i * poles + p]);
      }
      (*m_nodeV)[place.firstNode + i] = node;
    }
  }

  const FlatNetwork& m_flat;
  const Newton& m_newton;
  std::shared_ptr<std::vector<PerPole<Phasor>>> m_nodeV;
  std::shared_ptr<std::vector<BranchCurrents>> m_branches;
  std::shared_ptr<std::vector<LoadSolution>> m_loads;
  std::vector<PoleCurrent> m_currents;
};

}  // namespace

std::vector<CircuitSolution> circuitResults(const FlatNetwork& flat, const Newton& newton) {
  Writer writer(flat, newton);
  std::vector<CircuitSolution> results;
  results.reserve(flat.circuits.size());
  for (const FlatCircuit& place : flat.circuits) results.push_back(writer.write(place));
  return results;
}

std::vector<Phasor> panelResult(const FlatPanel& panel, const Newton& newton) {
  std::vector<Phasor> result(panel.phases);
  const double* voltage = newton.voltage().data() + panel.voltageAt;
  for (std::size_t i = 0; i < panel.phases; ++i) result[i] = {voltage[2 * i], voltage[2 * i + 1]};
  return result;
}

Summary summarise(const FlatNetwork& flat, std::span<const Circuit> circuits, const Newton& newton, EndReason end) {
  Summary summary;
  summary.end = end;
  summary.passes = newton.passes();
  summary.steps = newton.steps();
  summary.lastChangeV = newton.lastChangeV();
  const WorstNode worst = worstNode(flat, circuits, newton);
  summary.residualA = worst.mismatchA;
  if (worst.label != nullptr) summary.worstPart = *worst.label;
  for (const FlatCircuit& place : flat.circuits) {
    std::vector<std::uint32_t> stalled;
    for (std::size_t k = place.firstLoad; k < place.endLoad; ++k) {
      if (flat.loads[k].mode == LoadMode::Stalled) stalled.push_back(flat.loads[k].original);
    }
    std::sort(stalled.begin(), stalled.end());
    for (const std::uint32_t load : stalled) {
      summary.stalled.push_back(circuits[place.original].loads[load].label);
    }
  }
  return summary;
}

}  // namespace cordreach::network::detail
