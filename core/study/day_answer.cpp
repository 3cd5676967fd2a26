// SPDX-License-Identifier: GPL-3.0-or-later
#include "study/day_answer.h"

#include <algorithm>

#include "study/breaker_answer.h"
#include "study/day_span.h"

namespace cordreach::study {

namespace {

using units::Duration;
using Users = std::vector<HookupAnswer*>;

template <class T>
void raiseTo(const T& likely, Band<T>& band) {
  if (likely <= band.likely) return;
  band.high = band.high + (likely - band.likely);
  band.likely = likely;
}

class Course {
 public:
  Course(const site::Site& site, const DayRun& run, Answer& answer) : m_site(site), m_run(run), m_answer(answer) {}

  void add() {
    for (const DayCircuit& circuit : m_run.circuits) addTrip(circuit);
    for (const DayCord& cord : m_run.cords) addHeat(cord);
    for (const DayEvent& event : m_run.events) {
      if (event.kind == DayEventKind::Stall) addStall(event);
    }
  }

 private:
  [[nodiscard]] Duration clock(const Duration& since) const { return m_run.start + since; }

  // Of what changes in time, those that are plugged in then, also if it is the end of their hours.
  template <class Uses>
  Users usersAt(const Duration& time, Uses uses) {
    Users users;
    for (HookupAnswer& answer : m_answer.hookups) {
      const auto& hookup = m_site.at<site::Hookup>(answer.id);
      const bool then = !hookup.hours || (hookup.hours->from <= time && time <= hookup.hours->until);
      if (then && changesInTime(m_site, hookup) && uses(answer)) users.push_back(&answer);
    }
    return users;
  }

  void addTrip(const DayCircuit& circuit) {
    if (!circuit.trip || !(circuit.trip->likely || circuit.trip->earliest)) return;
    const bool likely = circuit.trip->likely.has_value();
    const Duration at = likely ? *circuit.trip->likely : *circuit.trip->earliest;
    if (const auto* panel = std::get_if<site::PanelId>(&circuit.subject)) return addMain(*panel, circuit, clock(at));
    const auto* id = std::get_if<site::CircuitId>(&circuit.subject);
    const Users users = usersAt(clock(at), [&](const HookupAnswer& answer) {
      if (id != nullptr) return answer.circuit == *id;
      return !answer.circuit && answer.outlet && DaySubject(*answer.outlet) == circuit.subject;
    });
    if (users.empty()) return;  // what trips without them was not planned with them
    BreakerAnswer course = courseOf(circuit, clock(at));
    for (HookupAnswer* user : users) merge(course, user->breaker);
    if (id == nullptr) return;
    const auto own = std::find_if(m_answer.circuits.begin(), m_answer.circuits.end(),
                                  [&](const CircuitAnswer& answer) { return answer.id == *id; });
    if (own != m_answer.circuits.end()) merge(course, own->breaker);
  }

  void addMain(const site::PanelId& panel, const DayCircuit& circuit, const Duration& at) {
    const Users users = usersAt(at, [&](const HookupAnswer& answer) {
      if (!answer.circuit) return false;
      std::optional<site::PanelId> from = m_site.at<site::Circuit>(*answer.circuit).panel;
      while (from && *from != panel) from = m_site.at<site::Panel>(*from).fedFrom;
      return from.has_value();
    });
    if (users.empty()) return;
    const auto byMoments = std::find_if(m_answer.mains.begin(), m_answer.mains.end(),
                                        [&](const MainAnswer& answer) { return answer.id == panel; });
    MainAnswer main{panel, courseOf(circuit, at), {}};
    const auto& rating = m_site.at<site::Panel>(panel).mainRating;
    if (rating) main.breaker.rating = rating->value;
    for (const HookupAnswer* user : users) main.hookups.push_back(user->id);
    if (byMoments == m_answer.mains.end()) {
      m_answer.mains.push_back(std::move(main));
    } else if (withinRun(main.breaker) > withinRun(byMoments->breaker)) {
      *byMoments = std::move(main);
    } else if (withinRun(main.breaker) == withinRun(byMoments->breaker)) {
      byMoments->breaker.tripsAt = at;
      for (const site::HookupId& user : main.hookups) {
        if (!std::ranges::count(byMoments->hookups, user)) byMoments->hookups.push_back(user);
      }
    }
  }

  // Its times counted from what came on last, as those by moments are.
  [[nodiscard]] BreakerAnswer courseOf(const DayCircuit& circuit, const Duration& at) const {
    BreakerAnswer course;
    course.trip.emplace();
    course.current = circuit.largest;
    course.tripsAt = at;
    if (!circuit.trip->likely) {
      course.trip->earliest = course.run = circuit.earliestSince;
      return course;
    }
    course.trip->likely = course.run = circuit.likelySince;
    const bool afterTheSame =
        circuit.trip->earliest && *circuit.trip->likely - *circuit.trip->earliest <= circuit.likelySince;
    if (afterTheSame) {
      course.trip->earliest = circuit.likelySince - (*circuit.trip->likely - *circuit.trip->earliest);
    } else {
      course.trip->earliest = circuit.trip->earliest ? std::optional(Duration{}) : std::nullopt;
    }
    if (circuit.trip->latest) {
      course.trip->latest = circuit.likelySince + (*circuit.trip->latest - *circuit.trip->likely);
    }
    for (const DayEvent& event : m_run.events) {
      if (event.kind == DayEventKind::Trip && event.subject == circuit.subject) course.current = event.current;
    }
    return course;
  }

  static void merge(const BreakerAnswer& course, BreakerAnswer& byMoments) {
    if (!byMoments.trip) return;
    const WithinRun before = withinRun(byMoments);
    const WithinRun now = withinRun(course);
    if (now < before) return;
    byMoments.tripsAt = course.tripsAt;
    if (now == before) return;
    byMoments.trip = course.trip;
    byMoments.current = course.current;
    byMoments.run = std::max(byMoments.run, course.run);
  }

  // Whoever uses it when it passes its limit, and whoever does when it is warmest.
  void addHeat(const DayCord& cord) {
    const auto uses = [&](const HookupAnswer& answer) { return cordIn(answer, cord) != nullptr; };
    for (const Duration& at : {clock(cord.limitAt.value_or(cord.at)), clock(cord.at)}) {
      for (HookupAnswer* user : usersAt(at, uses)) heat(cord, *cordIn(*user, cord));
    }
  }

  // Const or not, as the answer is.
  template <class Hookup>
  static auto cordIn(Hookup& answer, const DayCord& cord) -> decltype(answer.cords.data()) {
    for (auto& one : answer.cords) {
      const bool same = one.id ? DaySubject(*one.id) == cord.subject
                               : DaySubject(OwnCord{answer.machine, answer.inlet}) == cord.subject;
      if (same) return &one;
    }
    return nullptr;
  }

  void heat(const DayCord& cord, CordAnswer& answer) const {
    if (cord.limitAt) answer.limitAt = clock(*cord.limitAt);
    if (cord.limitAt && !answer.timeToLimit) answer.timeToLimit = cord.limitSince;
    if (cord.beyondModel) {
      answer.conductor.reset();
      answer.surface.reset();
    }
    if (answer.conductor) raiseTo(cord.conductor, *answer.conductor);
    if (answer.surface) raiseTo(cord.surface, *answer.surface);
  }

  void addStall(const DayEvent& event) {
    const auto* id = std::get_if<site::HookupId>(&event.subject);
    if (id == nullptr) return;
    const auto same = [&](const HookupAnswer& answer) { return answer.id == *id; };
    for (HookupAnswer* user : usersAt(clock(event.at), same)) {
      if (!user->stalledAt) user->stalledAt = clock(event.at);
      if (user->stalledCold || user->stalledWarm) continue;
      user->stalledWarm = true;
      raiseTo(event.current, user->current);
      user->voltage.likely = std::min(user->voltage.likely, event.voltage);
      user->voltage.low = std::min(user->voltage.low, event.voltage);
    }
  }

  const site::Site& m_site;
  const DayRun& m_run;
  Answer& m_answer;
};

}  // namespace

void addCourse(const site::Site& site, const DayRun& run, Answer& answer) {
  if (!run.stopped) Course(site, run, answer).add();
}

}  // namespace cordreach::study
