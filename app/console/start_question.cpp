// SPDX-License-Identifier: GPL-3.0-or-later
#include "console/start_question.h"

#include "planning/cord_site.h"

namespace cordreach::console {

namespace {

site::BreakerCurve curveOf(physics::BreakerKind kind) {
  switch (kind) {
    case physics::BreakerKind::IecB:
      return site::BreakerCurve::IecB;
    case physics::BreakerKind::IecC:
      return site::BreakerCurve::IecC;
    case physics::BreakerKind::IecD:
      return site::BreakerCurve::IecD;
    case physics::BreakerKind::Fuse:
      return site::BreakerCurve::Fuse;
    case physics::BreakerKind::ThermalMagnetic:
      break;
  }
  return site::BreakerCurve::ThermalMagnetic;
}

}  // namespace

StartQuestion startQuestionOf(const StartAsked& asked, const std::string& carriedName) {
  planning::CordQuestion question{};
  question.name = asked.name;
  question.kind = asked.kind;
  question.inlet = asked.inlet;
  question.run = site::known(asked.run.length);
  question.runSize = site::known(asked.run.size);
  std::optional<site::Cord> extension;
  if (asked.extension) {
    extension = site::Cord{.id = site::CordId("extension"), .make = *asked.extension};
    extension->sockets = {"5-15"};
  }
  StartQuestion made{planning::cordSite(question, asked.breaker.rating, extension ? &*extension : nullptr),
                     planning::cordSiteHookup()};
  const site::Hookup& hookup = made.site.at<site::Hookup>(made.hookup);
  site::Machine machine = made.site.at<site::Machine>(hookup.machine);
  machine.inertiaKgM2 = asked.inertiaKgM2;
  machine.speed = asked.speed;
  made.site.all<site::Machine>().put(machine);
  site::Circuit circuit = *made.site.all<site::Circuit>().begin();
  circuit.curve = curveOf(asked.breaker.kind);
  made.site.all<site::Circuit>().put(circuit);
  if (asked.carrying.si() > 0.0) {
    site::FixedLoad load{.id = site::FixedLoadId("carried"), .name = carriedName, .circuit = circuit.id};
    load.outlet = made.site.all<site::Outlet>().begin()->id;
    load.loadClass = tables::LoadClass::Resistance;
    load.plate = site::known(asked.carrying);
    made.site.all<site::FixedLoad>().put(load);
  }
  return made;
}

}  // namespace cordreach::console
