// SPDX-License-Identifier: GPL-3.0-or-later
#include "planning/test_machine.h"

#include <algorithm>

#include "base/contract.h"
#include "planning/cord_plan.h"
#include "planning/cord_question.h"
#include "planning/cord_site.h"
#include "rules/rule_table.h"
#include "rules/voltage_limits.h"
#include "study/assess.h"
#include "study/assumptions.h"

namespace cordreach::planning {

namespace {

const site::Inlet& hungriestInlet(const site::Machine& machine) {
  CORDREACH_EXPECTS(!machine.inlets.empty());
  return *std::max_element(
      machine.inlets.begin(), machine.inlets.end(),
      [](const site::Inlet& a, const site::Inlet& b) { return study::plateOf(a) < study::plateOf(b); });
}

CordQuestion questionOf(const site::Machine& machine) {
  CordQuestion question;
  askAbout(machine, hungriestInlet(machine), question);
  return question;
}

bool isHere(const site::Outlet& outlet, const std::optional<site::FloorId>& floor) {
  return floor && outlet.place && outlet.place->floor == *floor;
}

std::vector<const site::Outlet*> inOrder(const site::Site& site, const std::optional<site::FloorId>& first) {
  std::vector<const site::Outlet*> outlets;
  for (const site::Outlet& outlet : site.all<site::Outlet>()) outlets.push_back(&outlet);
  std::stable_partition(outlets.begin(), outlets.end(),
                        [&](const site::Outlet* outlet) { return isHere(*outlet, first); });
  return outlets;
}

// Nothing of what was planned; the question leaves out events and what was accepted by itself.
site::Site emptied(site::Site site) {
  site.all<site::Hookup>() = {};
  site.all<site::ExtensionUse>() = {};
  return site;
}

// The emptied building with the machine in it, whose one plug goes from outlet to outlet.
class Rounds {
 public:
  Rounds(const site::Site& site, const site::Machine& machine)
      : m_site(site), m_emptied(emptied(site)), m_question(questionOf(machine)) {}

  TestedOutlet at(const site::Outlet& outlet, const base::Progress& progress) {
    const auto [start, contact] = bestPlugStart(m_site, m_question.inlet.cord.plug, outlet);
    TestedOutlet tested{outlet.id, start, {}, {}, false};
    if (start > PlugStart::AskFirst || contact == nullptr || !contact->assignment) return tested;
    plugInto({outlet.id, contact->name});
    study::StudyOptions options;
    options.panels = {m_site.at<site::Circuit>(contact->assignment->circuit).panel};
    options.likelyOnly = true;
    options.inTime = false;
    options.progress.stop = progress.stop;
    const study::Answer answer = study::assess(*m_trial, options);
    const study::HookupAnswer* hookup = answer.find(cordSiteHookup());
    for (const study::OutletAnswer& one : answer.outlets) {
      const bool isIt = one.id == outlet.id && one.contact == contact->name && one.voltage;
      if (isIt && hookup != nullptr) tested.atOutlet = one.voltage->likely;
    }
    if (!tested.atOutlet) return tested;
    tested.atMachine = hookup->voltage.likely;
    tested.tooLow = hookup->stalledCold || hookup->stalledWarm || tested.atMachine < lowest(*hookup);
    return tested;
  }

 private:
  void plugInto(const site::OutletSocket& socket) {
    if (!m_trial) {
      m_question.at = SiteContact{&m_emptied, socket.outlet, socket.contact};
      m_trial = cordSite(m_question, {}, nullptr);
      return;
    }
    site::Hookup hookup = m_trial->at<site::Hookup>(cordSiteHookup());
    hookup.socket = socket;
    m_trial->all<site::Hookup>().put(std::move(hookup));
  }

  [[nodiscard]] units::Voltage lowest(const study::HookupAnswer& answer) const {
    const double fraction = rules::ruleOf("machine.voltage").limitFraction();
    return rules::voltageLimitsOf(m_question.inlet, answer.nominal, fraction).low;
  }

  const site::Site& m_site;
  site::Site m_emptied;
  CordQuestion m_question;
  std::optional<site::Site> m_trial;
};

}  // namespace

void testEverywhere(const site::Site& site, const site::MachineId& machine, const std::optional<site::FloorId>& first,
                    const base::Progress& progress, const std::function<void(const TestedOutlet&)>& tell) {
  Rounds rounds(site, site.at<site::Machine>(machine));
  for (const site::Outlet* outlet : inOrder(site, first)) {
    const TestedOutlet tested = rounds.at(*outlet, progress);
    if (progress.stopRequested()) return;
    tell(tested);
  }
}

}  // namespace cordreach::planning
