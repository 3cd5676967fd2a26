// SPDX-License-Identifier: GPL-3.0-or-later
// A machine or cord that was put aside, planned into use all the same.
#include "rules/all_rules.h"
#include "rules/finding_builder.h"

namespace cordreach::rules {

namespace {

base::Arguments recordOf(const site::OutOfService& record) {
  return {text("reason", record.reason), text("who", record.who), text("when", record.when)};
}

}  // namespace

Findings serviceOut(const Case& in, const Rule& rule) {
  Findings found;
  for (const HookupCase& hookup : in.hookups()) {
    if (!hookup.machine->outOfService) continue;
    FindingBuilder finding(rule);
    finding.subject(SubjectKind::Machine, hookup.machine->id.text()).about(hookup, in);
    found.push_back(finding.why("service.machine_out", recordOf(*hookup.machine->outOfService)).done());
  }
  for (const CordCase& cord : in.cords()) {
    if (cord.link.own() || !cord.link.cord->outOfService) continue;
    FindingBuilder finding(rule);
    finding.about(cord.link);
    for (const HookupCase* user : cord.users) finding.about(*user, in);
    found.push_back(finding.why("service.cord_out", recordOf(*cord.link.cord->outOfService)).done());
  }
  return found;
}

}  // namespace cordreach::rules
