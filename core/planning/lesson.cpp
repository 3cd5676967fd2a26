// SPDX-License-Identifier: GPL-3.0-or-later
#include "planning/lesson.h"

#include "planning/cord_site.h"
#include "rules/judge.h"
#include "study/assess.h"

namespace cordreach::planning {

namespace {

CordQuestion questionOf(const LessonCase& side) {
  CordQuestion question{};
  question.name = side.machine.name;
  question.inlet = side.machine.inlets.front();
  question.run = site::known(side.run);
  question.runSize = site::known(side.runSize);
  return question;
}

void putMachine(const LessonCase& side, site::Site& site) {
  site::Hookup hookup = site.at<site::Hookup>(cordSiteHookup());
  hookup.machine = side.machine.id;
  // On the hookup, not the machine: its drag is against the machine's usual pad.
  if (side.pad) {
    site.all<site::Pad>().put(*side.pad);
    hookup.pad = side.pad->id;
  }
  site.all<site::Machine>().put(side.machine);
  site.all<site::Hookup>().put(hookup);
}

void putSurroundings(const LessonCase& side, site::Site& site) {
  site.ambient.room = side.room;
  site::Supply supply = *site.all<site::Supply>().begin();
  supply.openCircuit = side.supply;
  site.all<site::Supply>().put(supply);
  site::Outlet outlet = *site.all<site::Outlet>().begin();
  for (site::Contact& contact : outlet.contacts) contact.loose = side.looseOutlet;
  site.all<site::Outlet>().put(outlet);
  if (!side.shared) return;
  site::FixedLoad other{.id = site::FixedLoadId("shared"), .circuit = site.all<site::Circuit>().begin()->id};
  other.name = side.sharedName;
  other.outlet = outlet.id;
  other.contact = outlet.contacts.back().name;
  other.running = site::known(*side.shared);
  site.all<site::FixedLoad>().put(other);
}

}  // namespace

const site::HookupId& lessonHookup() { return cordSiteHookup(); }

site::Site lessonSite(const LessonCase& side, const std::string& label) {
  site::Cord cord{.id = site::CordId("cord")};
  cord.label = label;
  cord.make = side.cord;
  cord.sockets = {"5-15"};
  site::Site site = cordSite(questionOf(side), side.breaker, &cord);
  site::ExtensionUse use = *site.all<site::ExtensionUse>().begin();
  use.laying = side.laying;
  site.all<site::ExtensionUse>().put(use);
  putMachine(side, site);
  putSurroundings(side, site);
  return site;
}

LessonVerdict judgeLesson(const LessonCase& side, const std::string& label) {
  LessonVerdict verdict{lessonSite(side, label), {}, {}, {}};
  verdict.answer = study::assess(verdict.site);
  verdict.findings = rules::judge(verdict.site, verdict.answer);
  verdict.severity = rules::verdictOf(lessonHookup(), verdict.findings);
  return verdict;
}

study::Demonstration demonstrateLesson(const LessonCase& side, units::Duration run) {
  study::DemonstrationOptions options;
  options.run = run;
  return study::demonstrate(lessonSite(side, ""), lessonHookup(), options);
}

}  // namespace cordreach::planning
