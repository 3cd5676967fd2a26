// SPDX-License-Identifier: GPL-3.0-or-later
#include "planning/fault_check.h"

#include <algorithm>

#include "physics/ground_fault.h"
#include "physics/touch_voltage.h"
#include "planning/cord_site.h"
#include "study/assess.h"
#include "study/breaker_answer.h"

namespace cordreach::planning {

namespace {

using rules::Severity;
using units::Duration;

site::BreakerCurve curveOf(physics::BreakerKind kind) {
  switch (kind) {
    case physics::BreakerKind::ThermalMagnetic:
      return site::BreakerCurve::ThermalMagnetic;
    case physics::BreakerKind::IecB:
      return site::BreakerCurve::IecB;
    case physics::BreakerKind::IecC:
      return site::BreakerCurve::IecC;
    case physics::BreakerKind::IecD:
      return site::BreakerCurve::IecD;
    case physics::BreakerKind::Fuse:
      break;
  }
  return site::BreakerCurve::Fuse;
}

bool isIec(physics::BreakerKind kind) {
  return kind == physics::BreakerKind::IecB || kind == physics::BreakerKind::IecC || kind == physics::BreakerKind::IecD;
}

// The same building as for choosing a cord, with what a fault asks for besides.
site::Site siteOf(const FaultQuestion& question) {
  CordQuestion like;
  like.inlet.name = "A";
  like.inlet.loadClass = tables::LoadClass::RectifiedDc;  // holds its amps whatever volts it gets
  like.inlet.plate = site::known(std::max(question.carrying, 0.1 * units::ampere));
  like.inlet.cord.size = site::known(units::WireSize::awg(10));
  like.inlet.cord.length = site::known(0.1 * units::metre);
  like.run = question.run;
  like.runSize = question.runSize;
  site::Cord extension{.id = site::CordId("extension"), .make = question.cord};
  extension.sockets = {"5-15"};
  site::Site site = cordSite(like, question.breaker.rating, &extension);
  if (question.air) site.ambient = {site::known(*question.air), site::known(*question.air), site::known(*question.air)};

  site::Supply supply = *site.all<site::Supply>().begin();
  supply.source = question.source;
  supply.currentLimit = question.sourceLimit;
  if (isIec(question.breaker.kind)) supply.system = site::WiringSystem::Single230;
  site.all<site::Supply>().put(supply);
  site::Circuit circuit = *site.all<site::Circuit>().begin();
  circuit.curve = curveOf(question.breaker.kind);
  circuit.mayNotTrip = question.mayNotTrip;
  site.all<site::Circuit>().put(circuit);
  site::Hookup hookup = *site.all<site::Hookup>().begin();
  hookup.off = !(question.carrying > units::Current{});
  site.all<site::Hookup>().put(hookup);
  return site;
}

// With a device, both it and the breaker see a fault to an earth that is whole.
std::optional<Duration> liveFor(const FaultQuestion& question, const study::FaultAnswer& fault) {
  if (question.earthBroken) {
    return question.groundFaultDevice ? std::optional(physics::longestShockBehindDevice()) : std::nullopt;
  }
  std::optional<Duration> live = fault.claimed ? fault.cleared.likely : std::nullopt;
  if (question.groundFaultDevice && fault.current) {
    const auto device = physics::groundFaultTripTime(fault.current->likely);
    if (device) live = live ? std::min(*live, *device) : *device;
  }
  return live;
}

struct Judged {
  Severity verdict;
  const char* reason;
};

Judged judge(const FaultQuestion& question, const study::FaultAnswer& fault) {
  if (question.earthBroken && !question.groundFaultDevice) return {Severity::Danger, "fault.frame_live"};
  if (fault.claimed && fault.likelyLate) return {Severity::Warning, "fault.burns"};
  if (!fault.claimed) return {Severity::Notice, "fault.not_claimed"};
  if (fault.latestLate) return {Severity::Notice, "fault.late"};
  return {Severity::Ok, "fault.cleared"};
}

}  // namespace

FaultCheck checkFault(const FaultQuestion& question) {
  const site::Site site = siteOf(question);
  const study::Answer answer = study::assess(site);
  const study::HookupAnswer* hookup = answer.find(cordSiteHookup());
  CORDREACH_EXPECTS(hookup != nullptr && hookup->cords.front().fault.has_value());
  const study::FaultAnswer& fault = *hookup->cords.front().fault;
  const Judged judged = judge(question, fault);
  FaultCheck check{
      fault,          {},           {}, question.earthBroken ? fault.toEarth : fault.touch, liveFor(question, fault),
      judged.verdict, judged.reason};
  if (fault.claimed && fault.current) {
    check.arc = physics::arcCurrent(fault.current->likely);
    const auto air = question.air ? physics::BreakerAir::all(*question.air) : study::breakerAirOf(site);
    if (!question.mayNotTrip) check.arcCleared = physics::trip(question.breaker, check.arc->low, {}, air);
  }
  return check;
}

}  // namespace cordreach::planning
