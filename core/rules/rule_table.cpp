// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/rule_table.h"

#include <algorithm>
#include <array>
#include <utility>

#include "base/contract.h"
#include "rules/all_rules.h"
#include "rules/severity.h"
#include "tables/table.h"

namespace cordreach::rules {

namespace {

constexpr auto kFunctions = std::to_array<std::pair<std::string_view, Apply>>({
    {"earth.missing", earthMissing},
    {"service.out", serviceOut},
    {"pad.overspeed", padOverspeed},
    {"heat.beyond_model", heatBeyondModel},
    {"circuit.never", circuitNever},
    {"plug.misfit", plugMisfit},
    {"cord.chained", cordChained},
    {"wet.unprotected", wetUnprotected},
    {"cord.over_tag", cordOverTag},
    {"receptacle.over_rating", receptacleOverRating},
    {"cord.conductor_over_rating", cordConductorOverRating},
    {"cord.jacket_over_60", cordJacketOver60},
    {"plug.over_rise", plugOverRise},
    {"machine.stall", machineStall},
    {"start.never", startNever},
    {"fault.not_cleared", faultNotCleared},
    {"device.over_wire", deviceOverWire},
    {"contact.dead", contactDead},
    {"circuit.ask_first", circuitAskFirst},
    {"breaker.unknown", breakerUnknown},
    {"breaker.trips", breakerTrips},
    {"start.trips", startTrips},
    {"leakage.trips", leakageTrips},
    {"circuit.over_rating", circuitOverRating},
    {"cord.lighter_than_machine", cordLighterThanMachine},
    {"machine.voltage", machineVoltage},
    {"receptacle.twelve_amps", receptacleTwelveAmps},
    {"code.eighty_percent", codeEightyPercent},
    {"neutral.over_rating", neutralOverRating},
    {"receptacle.twenty_on_fifteen", receptacleTwentyOnFifteen},
    {"receptacle.single_fifteen_on_twenty", receptacleSingleFifteenOnTwenty},
    {"breaker.trips_early", breakerTripsEarly},
    {"start.trips_early", startTripsEarly},
    {"start.dips", startDips},
    {"leakage.may_trip", leakageMayTrip},
    {"fault.cleared_late", faultClearedLate},
    {"fault.own_cord", faultOwnCord},
    {"drop.branch", dropBranch},
    {"drop.total", dropTotal},
    {"outlet.other_floor", outletOtherFloor},
    {"directory.disagrees", directoryDisagrees},
    {"unknown.matters", unknownMatters},
});

Apply functionOf(const std::string& code) {
  const auto at =
      std::find_if(kFunctions.begin(), kFunctions.end(), [&](const auto& entry) { return entry.first == code; });
  CORDREACH_EXPECTS(at != kFunctions.end());
  return at->second;
}

std::vector<Rule> read() {
  std::vector<Rule> rules;
  for (const tables::Row& row : tables::table("rules").rows()) {
    const auto severity = severityNamed(row.text("severity"));
    CORDREACH_EXPECTS(severity.has_value());
    std::optional<double> limit;
    if (!row.empty("limit")) limit = row.number("limit");
    rules.push_back({row.id(), *severity, limit, row.text("unit"), row.source(), functionOf(row.id())});
  }
  CORDREACH_EXPECTS(rules.size() == kFunctions.size());
  return rules;
}

}  // namespace

const std::vector<Rule>& ruleTable() {
  static const std::vector<Rule> rules = read();
  return rules;
}

std::size_t orderOf(std::string_view code) {
  const auto& rules = ruleTable();
  const auto at = std::find_if(rules.begin(), rules.end(), [&](const Rule& rule) { return rule.code == code; });
  CORDREACH_EXPECTS(at != rules.end());
  return static_cast<std::size_t>(at - rules.begin());
}

const Rule& ruleOf(std::string_view code) { return ruleTable()[orderOf(code)]; }

}  // namespace cordreach::rules
