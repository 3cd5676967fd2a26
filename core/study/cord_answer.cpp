// SPDX-License-Identifier: GPL-3.0-or-later
#include "study/cord_answer.h"

#include <algorithm>
#include <array>

#include "physics/plug_node.h"
#include "study/assumptions.h"
#include "study/branch_heat.h"

namespace cordreach::study {

namespace {

using units::ampere;
using units::Current;
using units::Duration;
using Corners = std::array<std::optional<physics::HeatResult>, kCorners.size()>;

const site::CordMake& makeOf(const site::Site& site, const CordLink& link) {
  if (link.extension) return site.at<site::Cord>(site.at<site::ExtensionUse>(*link.extension).cord).make;
  const auto& hookup = site.at<site::Hookup>(*link.hookup);
  return inletOf(site.at<site::Machine>(hookup.machine), hookup.inlet).cord;
}

Current currentIn(const PanelState& state, std::size_t corner, const Tap& tap, std::size_t node) {
  const auto& currents = state.settled[corner].warm.circuits[tap.circuit].branches[node];
  return currents.poleRmsA[tap.pole] * ampere;
}

const CordHeat& heatOf(const PanelState& state, std::size_t corner, std::size_t circuit, std::size_t node) {
  const auto& heated = state.scenes[corner].heated;
  const auto at = std::find_if(heated.begin(), heated.end(), [&](const timeline::HeatedBranch& branch) {
    return branch.circuit == circuit && branch.node == node;
  });
  CORDREACH_EXPECTS(at != heated.end());
  return dynamic_cast<const CordHeat&>(*at->heat);
}

// The plates of everything whose way leads through that node, and the longest of their runs.
struct Through {
  Current plateSum;
  Duration longestRun;
};

Through throughNode(const site::Site& site, const PanelState& state, const Tap& tap, std::size_t node) {
  Through through;
  for (const auto& [id, plugged] : state.scene().hookups) {
    const bool passes =
        plugged.tap.circuit == tap.circuit && std::any_of(plugged.chain.begin(), plugged.chain.end(),
                                                          [&](const CordLink& link) { return link.node == node; });
    if (!passes || !plugged.load) continue;
    const auto& hookup = site.at<site::Hookup>(id);
    through.plateSum += plateOf(inletOf(site.at<site::Machine>(hookup.machine), hookup.inlet));
    through.longestRun = std::max(through.longestRun, runOf(hookup));
  }
  return through;
}

template <class Read>
std::optional<Band<units::Temperature>> bandFrom(const Corners& corners, Read read) {
  if (!corners[0]) return std::nullopt;
  const auto likely = read(*corners[0]);
  // A corner beyond the model has no figure; the model's own end stands for it.
  const auto atEnd = physics::beyondModelTemperature();
  const auto adverse = corners[1] ? read(*corners[1]) : atEnd;
  const auto favourable = corners[2] ? read(*corners[2]) : likely;
  return bandOf(likely, adverse, favourable);
}

}  // namespace

CordAnswer cordAnswerOf(const site::Site& site, const CordContext& context, std::size_t link) {
  const CordLink& cord = context.plugged.chain[link];
  const Tap& tap = context.plugged.tap;
  const site::CordMake& make = makeOf(site, cord);
  const Through through = throughNode(site, context.state, tap, cord.node);
  const Duration run = std::min(through.longestRun, context.cutOff.value_or(through.longestRun));

  CordAnswer answer{{}, {}, {}, through.plateSum, {}, {}, ratingOf(make), {}, {}};
  if (cord.extension) {
    answer.use = cord.extension;
    answer.id = site.at<site::ExtensionUse>(*cord.extension).cord;
  }
  std::array<Current, kCorners.size()> currents;
  Corners heats;
  for (std::size_t i = 0; i < kCorners.size(); ++i) {
    currents[i] = currentIn(context.state, i, tap, cord.node);
    heats[i] = heatOf(context.state, i, tap.circuit, cord.node).after(currents[i], run);
  }
  answer.current = bandOf(currents[0], currents[1], currents[2]);
  answer.conductor = bandFrom(heats, [](const physics::HeatResult& heat) { return heat.conductor; });
  answer.surface = bandFrom(heats, [](const physics::HeatResult& heat) { return heat.surface; });
  answer.timeToLimit = heatOf(context.state, 0, tap.circuit, cord.node).timeTo(answer.limit, currents[0], run);
  const auto contact = link == 0 && context.looseContact ? physics::ContactClass::Worn : physics::ContactClass::Healthy;
  const auto rise = [&](physics::Corner corner) {
    physics::PlugNode plug(sizeOf(make), physics::contactsOf(contact, corner), roomOf(site));
    plug.advance(currents[0], run);
    return plug.rise();
  };
  answer.plugRise = {rise(physics::Corner::Likely), rise(physics::Corner::Low), rise(physics::Corner::High)};
  return answer;
}

bool worse(const CordAnswer& a, const CordAnswer& b) {
  if (a.beyondModel() != b.beyondModel()) return a.beyondModel();
  if (!a.beyondModel() && a.conductor->likely != b.conductor->likely) return a.conductor->likely > b.conductor->likely;
  return a.current.likely > b.current.likely;
}

}  // namespace cordreach::study
