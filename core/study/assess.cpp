// SPDX-License-Identifier: GPL-3.0-or-later
#include "study/assess.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <map>

#include "study/circuit_answer.h"
#include "study/day_answer.h"
#include "study/day_run.h"
#include "study/day_span.h"
#include "study/hookup_answer.h"
#include "study/load_start.h"
#include "study/main_answer.h"
#include "study/moments.h"
#include "study/panel_family.h"
#include "study/panel_states.h"

namespace cordreach::study {

namespace {

PanelFamilies panelFamilies(const site::Site& site, const StudyOptions& options) {
  PanelFamilies families = panelFamiliesOf(site);
  if (!options.panels) return families;
  std::erase_if(families, [&](const auto& family) {
    return std::none_of(family.second.begin(), family.second.end(),
                        [&](const auto& id) { return options.panels->contains(id); });
  });
  return families;
}

std::optional<Band<units::Voltage>> worstVoltage(const PanelStates& states, const Tap& tap) {
  std::optional<Band<units::Voltage>> worst;
  for (const PanelState& state : states.states) {
    const auto voltsAt = [&](std::size_t corner) {
      const auto& poles = state.settled[corner].warm.circuits[tap.circuit].nodeV[tap.node];
      return std::abs(tap.toPole ? poles[tap.pole] - poles[*tap.toPole] : poles[tap.pole]) * units::volt;
    };
    const auto band = bandOf(voltsAt(0), voltsAt(1), voltsAt(2));
    if (!worst || band.likely < worst->likely) worst = band;
  }
  return worst;
}

class FamilyStudy {
 public:
  FamilyStudy(const site::Site& site, const PanelStates& states) : m_site(site), m_states(states) {}

  void addTo(Answer& answer) {
    addCircuits(answer);
    for (const auto& [outlet, circuit] : m_states.wiring().supposed) {
      m_supposedDays.insert({circuit, supposedDayOf(m_site, m_states, {circuit, 0, 1})});
    }
    for (const auto& hookup : m_site.all<site::Hookup>()) {
      if (auto one = hookupAnswerOf(m_site, m_states, hookup, m_supposedDays, m_days)) {
        answer.hookups.push_back(std::move(*one));
      }
    }
    addOutlets(answer);
    auto starts = loadStartsOf(m_site, m_states, m_days);
    std::move(starts.begin(), starts.end(), std::back_inserter(answer.loadStarts));
    auto mains = mainsOf(m_site, m_states);
    std::move(mains.begin(), mains.end(), std::back_inserter(answer.mains));
  }

 private:
  void addCircuits(Answer& answer) {
    const Groups& groups = m_states.wiring().groups;
    for (const auto& [id, place] : groups.places) {
      const auto& circuit = m_site.at<site::Circuit>(id);
      const Poles poles{place.group, groups.groups[place.group].firstPoles[place.member],
                        std::max<std::size_t>(1, circuit.phases.size())};
      const auto& day = m_days.insert({id, dayOf(m_site, m_states, circuit, poles)}).first->second;
      answer.circuits.push_back(worstOf(circuit, m_states, day));
    }
  }

  void addOutlets(Answer& answer) const {
    const site::CircuitId* last = nullptr;
    bool isOurs = false;
    for (const auto& outlet : m_site.all<site::Outlet>()) {
      for (const auto& contact : outlet.contacts) {
        if (!contact.assignment) continue;
        // Neighbours are mostly on one circuit.
        const site::CircuitId& circuit = contact.assignment->circuit;
        if (last == nullptr || *last != circuit) isOurs = m_days.contains(circuit);
        last = &circuit;
        if (!isOurs) continue;
        const auto tap = tapOf(m_states.wiring(), m_site, outlet, contact);
        const bool live = tap && !contact.dead;
        answer.outlets.push_back({outlet.id, contact.name, live ? worstVoltage(m_states, *tap) : std::nullopt});
      }
    }
  }

  const site::Site& m_site;
  const PanelStates& m_states;
  std::map<site::CircuitId, CircuitDay> m_days;
  std::map<std::size_t, CircuitDay> m_supposedDays;
};

// Contacts nobody has traced belong to no panel; they are listed all the same.
void addUntracedOutlets(const site::Site& site, Answer& answer) {
  for (const auto& outlet : site.all<site::Outlet>()) {
    for (const auto& contact : outlet.contacts) {
      if (!contact.assignment) answer.outlets.push_back({outlet.id, contact.name, std::nullopt});
    }
  }
}

// A machine whose cords end in no outlet draws nothing; it is answered all the same, so that nothing goes missing.
void addHangingHookups(const site::Site& site, Answer& answer) {
  const auto answered = [&](const site::HookupId& id) {
    return std::any_of(answer.hookups.begin(), answer.hookups.end(), [&](const auto& one) { return one.id == id; });
  };
  for (const auto& hookup : site.all<site::Hookup>()) {
    if (!answered(hookup.id)) answer.hookups.push_back(blankAnswerOf(hookup));
  }
}

// What has hours, through the day: as it is planned, so no what-if.
void addDay(const site::Site& site, const PanelFamilies& families, const StudyOptions& options, Answer& answer) {
  if (!options.inTime || !options.lostNeutral.empty()) return;
  const auto span = daySpanOf(site, families);
  if (!span || options.progress.stopRequested()) return;
  DayRunOptions day;
  day.until = span->until;
  day.panels = span->panels;
  day.followLate = false;
  day.progress.stop = options.progress.stop;
  addCourse(site, runDay(site, day), answer);
}

void sortById(Answer& answer) {
  const auto byId = [](const auto& a, const auto& b) { return a.id < b.id; };
  std::stable_sort(answer.circuits.begin(), answer.circuits.end(), byId);
  std::stable_sort(answer.hookups.begin(), answer.hookups.end(), byId);
  std::stable_sort(answer.outlets.begin(), answer.outlets.end(), byId);
}

}  // namespace

Answer assess(const site::Site& site, const StudyOptions& options) {
  Answer answer;
  LoadBook book(site);
  const std::vector<Moment> moments = momentsOf(site);
  const auto families = panelFamilies(site, options);
  std::size_t done = 0;
  for (const auto& [root, panels] : families) {
    if (options.progress.stopRequested()) break;
    const PanelStates states =
        statesOf(site, moments, book, {panels, options.lostNeutral, options.likelyOnly, options.progress});
    if (options.progress.stopRequested()) break;
    FamilyStudy(site, states).addTo(answer);
    if (options.progress.report) {
      options.progress.report(static_cast<double>(++done) / static_cast<double>(families.size()));
    }
  }
  if (!options.panels && !options.progress.stopRequested()) {
    addUntracedOutlets(site, answer);
    answer.leakages = leakagesOf(site);
    addHangingHookups(site, answer);
  }
  sortById(answer);
  addDay(site, families, options, answer);
  return answer;
}

}  // namespace cordreach::study
