// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/leakage_verdict.h"

#include <algorithm>

namespace cordreach::rules {

namespace {

base::Argument milliamperes(std::string name, units::Current value) {
  return number(std::move(name), value.in(units::milliampere));
}

const HookupCase* caseOf(const site::HookupId& id, const Case& in) {
  const auto at = std::find_if(in.hookups().begin(), in.hookups().end(),
                               [&](const HookupCase& hookup) { return hookup.hookup->id == id; });
  return at != in.hookups().end() ? &*at : nullptr;
}

void aboutDevice(FindingBuilder& finding, const study::LeakageAnswer& device, const Case& in) {
  if (device.outlet) {
    finding.about(in.site().at<site::Outlet>(*device.outlet)).with(text("device", "receptacle"));
  } else if (device.breaker) {
    finding.about(in.site().at<site::Circuit>(*device.breaker), in).with(text("device", "breaker"));
  } else {
    finding.with(text("device", "in_line"));
  }
  finding.with(milliamperes("leakage_ma", device.sum.likely));
  finding.with(milliamperes("leakage_low_ma", device.sum.low)).with(milliamperes("leakage_high_ma", device.sum.high));
  finding.with(number("count", static_cast<double>(device.shares.size())));
  finding.at(device.moment);
}

void whyLeaks(FindingBuilder& finding, const study::LeakageShare& share, units::Current sum, const Case& in) {
  const double part = sum > units::Current{} ? share.current.likely / sum : 0.0;
  const auto amount = milliamperes("leakage_ma", share.current.likely);
  if (share.load) {
    const auto& load = in.site().at<site::FixedLoad>(*share.load);
    finding.subject(SubjectKind::FixedLoad, load.id.text());
    finding.why(share.stated ? "leakage.load" : "leakage.load_allowed", {amount, text("load", load.name)}, part);
    return;
  }
  const auto& machine = in.site().at<site::Machine>(in.site().at<site::Hookup>(*share.hookup).machine);
  finding.why(share.stated ? "leakage.machine" : "leakage.machine_allowed", {amount, text("machine", machine.name)},
              part);
}

}  // namespace

Findings leakagesThat(physics::GroundFaultAnswer answer, const Case& in, const Rule& rule) {
  Findings found;
  for (const study::LeakageAnswer& device : in.answer().leakages) {
    if (physics::groundFaultAnswer(device.sum.likely) != answer) continue;
    FindingBuilder finding(rule);
    aboutDevice(finding, device, in);
    for (const study::LeakageShare& share : device.shares) {
      const HookupCase* hookup = share.hookup ? caseOf(*share.hookup, in) : nullptr;
      if (hookup != nullptr) finding.about(*hookup, in);
      whyLeaks(finding, share, device.sum.likely, in);
    }
    found.push_back(finding.done());
  }
  return found;
}

}  // namespace cordreach::rules
