// SPDX-License-Identifier: GPL-3.0-or-later
#include "planning/cord_limits.h"

#include <algorithm>
#include <limits>
#include <map>

#include "physics/fault_heat.h"
#include "rules/cord_allowance.h"
#include "rules/finding_builder.h"
#include "rules/rule_table.h"
#include "rules/voltage_limits.h"
#include "study/assumptions.h"

namespace cordreach::planning {

namespace {

constexpr units::Duration kLongestStart = 5.0 * units::second;

const rules::CordCase* caseOf(const rules::Case& in, const rules::HookupCase& hookup) {
  const auto& cords = in.cords();
  const rules::Link& wanted = hookup.chain.front();
  const auto at = std::find_if(cords.begin(), cords.end(), [&](const rules::CordCase& cord) {
    return wanted.own() ? cord.link.own() && cord.link.hookup == wanted.hookup : cord.link.cord == wanted.cord;
  });
  return at == cords.end() ? nullptr : &*at;
}

void addAmps(const rules::Case& in, const rules::CordCase& cord, std::vector<LimitUse>& limits) {
  const auto allowance = rules::tightestAllowance(cord, in);
  if (!allowance) return;
  limits.push_back({CordLimit::Amps,
                    allowance->fraction(),
                    {rules::amperes("used_a", allowance->used), rules::amperes("rated_a", allowance->rated),
                     rules::text("by", allowance->by)}});
}

void addVolts(const rules::HookupCase& hookup, std::vector<LimitUse>& limits) {
  const study::HookupAnswer& answer = *hookup.answer;
  const auto made =
      rules::voltageLimitsOf(*hookup.inlet, answer.nominal, rules::ruleOf("machine.voltage").limitFraction());
  const units::Voltage mayBeLost = answer.nominal - made.low;
  std::optional<double> used;
  if (mayBeLost.si() > 0.0) used = (answer.nominal - answer.voltage.likely) / mayBeLost;
  limits.push_back(
      {CordLimit::Volts, used, {rules::volts("voltage_v", answer.voltage.likely), rules::volts("limit_v", made.low)}});
}

// Rise in kelvins over what the air leaves.
double riseShare(units::Temperature at, units::Temperature limit, units::Temperature air) {
  const double allowed = limit.celsius() - air.celsius();
  return allowed > 0.0 ? (at.celsius() - air.celsius()) / allowed : std::numeric_limits<double>::infinity();
}

void addHeat(const rules::Case& in, const study::CordAnswer& cord, std::vector<LimitUse>& limits) {
  const units::Temperature air = study::roomOf(in.site());
  const auto handled = units::Temperature::fromCelsius(rules::ruleOf("cord.jacket_over_60").limitValue());
  if (cord.beyondModel() || !cord.surface) {
    limits.push_back({CordLimit::Heat, std::nullopt, {rules::celsius("limit_c", cord.limit)}});
    return;
  }
  LimitUse heat{CordLimit::Heat,
                riseShare(cord.conductor->likely, cord.limit, air),
                {rules::celsius("conductor_c", cord.conductor->likely), rules::celsius("limit_c", cord.limit)}};
  if (const double jacket = riseShare(cord.surface->likely, handled, air); jacket > heat.used) {
    heat.used = jacket;
    heat.arguments = {rules::celsius("surface_c", cord.surface->likely), rules::celsius("limit_c", handled)};
  }
  const double mostK = rules::ruleOf("plug.over_rise").limitValue();
  const double plugK = cord.plugRise.likely.in(units::kelvin);
  if (plugK / mostK > heat.used) {
    heat.used = plugK / mostK;
    heat.arguments = {rules::number("rise_k", plugK), rules::number("limit_k", mostK)};
  }
  if (*heat.used > std::numeric_limits<double>::max()) heat.used.reset();
  limits.push_back(heat);
}

// Of the likely start; a machine that only heats or rectifies is on at once.
void addStart(const rules::HookupCase& hookup, std::vector<LimitUse>& limits) {
  const auto& start = hookup.answer->start;
  if (!start) return;
  LimitUse use{CordLimit::Start, std::nullopt, {rules::seconds("limit_s", kLongestStart)}};
  if (start->time.likely) {
    use.used = *start->time.likely / kLongestStart;
    use.arguments.push_back(rules::seconds("start_s", *start->time.likely));
  }
  limits.push_back(std::move(use));
}

// At the end of the first cord: an extension's, without one the machine's own.
void addClearing(const study::CordAnswer& cord, std::vector<LimitUse>& limits) {
  if (!cord.fault || !cord.fault->claimed || !cord.fault->current) return;
  const study::FaultAnswer& fault = *cord.fault;
  LimitUse clearing{CordLimit::Clearing, std::nullopt, {rules::amperes("fault_a", fault.current->likely)}};
  if (fault.used <= std::numeric_limits<double>::max()) clearing.used = fault.used;
  if (fault.cleared.likely) clearing.arguments.push_back(rules::seconds("clears_s", *fault.cleared.likely));
  // What it stands for longer than a fault is followed, it stands for that long at least.
  clearing.arguments.push_back(rules::seconds("stands_s", fault.damage.value_or(physics::faultHorizon())));
  limits.push_back(std::move(clearing));
}

}  // namespace

std::string_view nameOf(CordLimit limit) {
  switch (limit) {
    case CordLimit::Amps:
      return "amps";
    case CordLimit::Volts:
      return "volts";
    case CordLimit::Heat:
      return "heat";
    case CordLimit::Start:
      return "start";
    case CordLimit::Clearing:
      break;
  }
  return "clearing";
}

std::vector<LimitUse> limitsOf(const rules::Case& in, const rules::HookupCase& hookup) {
  std::vector<LimitUse> limits;
  if (const rules::CordCase* cord = caseOf(in, hookup)) addAmps(in, *cord, limits);
  addVolts(hookup, limits);
  if (!hookup.answer->cords.empty()) addHeat(in, hookup.answer->cords.front(), limits);
  addStart(hookup, limits);
  if (!hookup.answer->cords.empty()) addClearing(hookup.answer->cords.front(), limits);
  return limits;
}

std::optional<CordLimit> limitOfFinding(std::string_view code) {
  static const std::map<std::string_view, CordLimit> about{
      {"cord.over_tag", CordLimit::Amps},         {"machine.voltage", CordLimit::Volts},
      {"drop.branch", CordLimit::Volts},          {"drop.total", CordLimit::Volts},
      {"heat.beyond_model", CordLimit::Heat},     {"cord.conductor_over_rating", CordLimit::Heat},
      {"cord.jacket_over_60", CordLimit::Heat},   {"plug.over_rise", CordLimit::Heat},
      {"fault.not_cleared", CordLimit::Clearing}, {"fault.cleared_late", CordLimit::Clearing}};
  const auto at = about.find(code);
  return at == about.end() ? std::nullopt : std::optional(at->second);
}

const LimitUse* nearest(const std::vector<LimitUse>& limits) {
  const auto less = [](const LimitUse& a, const LimitUse& b) {
    return b.used ? a.used && *a.used < *b.used : a.used.has_value();
  };
  const auto at = std::max_element(limits.begin(), limits.end(), less);
  return at == limits.end() ? nullptr : &*at;
}

}  // namespace cordreach::planning
