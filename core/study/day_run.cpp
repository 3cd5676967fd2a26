// SPDX-License-Identifier: GPL-3.0-or-later
#include "study/day_run.h"

#include <algorithm>

#include "study/day_plan.h"

namespace cordreach::study {

namespace {

DayEventKind kindOf(timeline::EventKind kind) {
  switch (kind) {
    case timeline::EventKind::On:
      return DayEventKind::On;
    case timeline::EventKind::Off:
      return DayEventKind::Off;
    case timeline::EventKind::Lay:
      return DayEventKind::Lay;
    case timeline::EventKind::Stall:
      return DayEventKind::Stall;
    case timeline::EventKind::OverLimit:
      return DayEventKind::OverRating;
    case timeline::EventKind::BeyondModel:
      return DayEventKind::BeyondModel;
    case timeline::EventKind::Trip:
      break;
  }
  return DayEventKind::Trip;
}

std::optional<DaySubject> subjectOf(const DayPlan& plan, const timeline::Event& event) {
  switch (event.kind) {
    case timeline::EventKind::Trip:
      return plan.protectedPoles[event.protectedPoles];
    case timeline::EventKind::Lay:
    case timeline::EventKind::OverLimit:
    case timeline::EventKind::BeyondModel:
      return plan.conductors[event.conductor];
    default:
      return plan.loads.at(event.load);
  }
}

bool feedsThrough(const DayPlan& plan, const timeline::Conductor& conductor, const timeline::LoadPlace& place) {
  const network::Circuit& circuit = plan.day.network.circuits[place.circuit];
  const auto onTheWay = [&](const timeline::BranchPlace& branch) {
    if (branch.circuit != place.circuit) return false;
    std::size_t node = circuit.loads[place.load].node;
    while (node > branch.node) node = circuit.nodes[node].parent;
    return node == branch.node;
  };
  return std::any_of(conductor.places.begin(), conductor.places.end(), onTheWay);
}

bool concerns(const DayPlan& plan, const timeline::Event& event, const timeline::LoadPlace& load) {
  if (event.kind == timeline::EventKind::Trip) {
    return timeline::feeds(plan.day, plan.day.protectedPoles[event.protectedPoles], load);
  }
  const bool ofCord = event.kind == timeline::EventKind::OverLimit || event.kind == timeline::EventKind::BeyondModel;
  return ofCord && feedsThrough(plan, plan.day.conductors[event.conductor], load);
}

DayEvent eventOf(const DayPlan& plan, const std::vector<timeline::Event>& all, std::size_t index,
                 const DaySubject& subject) {
  const timeline::Event& event = all[index];
  DayEvent result{event.at, kindOf(event.kind), subject};
  result.current = event.rmsA * units::ampere;
  result.voltage = event.voltageV * units::volt;
  for (std::size_t i = index; i-- > 0;) {
    if (all[i].kind != timeline::EventKind::On || !concerns(plan, event, all[i].load)) continue;
    result.after = plan.loads.at(all[i].load);
    result.since = event.at - all[i].at;
    break;
  }
  return result;
}

// How long before that time something came on last through what `holds`; from the beginning on when nothing has.
template <class Holds>
units::Duration sinceLastOn(const timeline::DayResult& result, const std::optional<units::Duration>& time,
                            Holds holds) {
  if (!time) return {};
  units::Duration last{};
  for (const timeline::Event& event : result.events) {
    if (event.kind == timeline::EventKind::On && event.at <= *time && holds(event.load)) last = event.at;
  }
  return *time - last;
}

DayCircuit circuitOf(const DayPlan& plan, const timeline::DayResult& result, std::size_t index) {
  const timeline::ProtectedPoles& poles = plan.day.protectedPoles[index];
  DayCircuit circuit{plan.protectedPoles[index], {}, result.largestA[index] * units::ampere};
  if (!poles.breaker) return circuit;
  circuit.trip = result.trips[index];
  const auto holds = [&](const timeline::LoadPlace& load) { return timeline::feeds(plan.day, poles, load); };
  circuit.earliestSince = sinceLastOn(result, circuit.trip->earliest, holds);
  circuit.likelySince = sinceLastOn(result, circuit.trip->likely, holds);
  return circuit;
}

DayCord cordOf(const DayPlan& plan, const timeline::DayResult& result, std::size_t index) {
  const timeline::Conductor& conductor = plan.day.conductors[index];
  const timeline::Peak& peak = result.peaks[index];
  DayCord cord{*plan.conductors[index], peak.conductor, peak.surface, conductor.limit, peak.limitAt,
               peak.beyondModel,        peak.at};
  cord.limitSince = sinceLastOn(result, peak.limitAt,
                                [&](const timeline::LoadPlace& load) { return feedsThrough(plan, conductor, load); });
  return cord;
}

// Indices of the conductors that are cords.
std::vector<std::size_t> cordsOf(const DayPlan& plan) {
  std::vector<std::size_t> cords;
  for (std::size_t i = 0; i < plan.conductors.size(); ++i) {
    if (plan.conductors[i]) cords.push_back(i);
  }
  return cords;
}

DaySample sampleOf(const timeline::Sample& sample, const std::vector<std::size_t>& cords) {
  DaySample result;
  result.at = sample.at;
  for (const double rmsA : sample.circuitA) result.circuits.push_back(rmsA * units::ampere);
  for (const std::size_t i : cords) {
    result.cords.push_back(sample.conductorA[i] * units::ampere);
    result.conductors.push_back(sample.conductors[i]);
    result.surfaces.push_back(sample.surfaces[i]);
  }
  return result;
}

DayRun answered(const DayPlan& plan, const timeline::DayResult& result) {
  DayRun run;
  run.start = plan.start;
  run.until = plan.day.until;
  run.guessedCycles = plan.guessedCycles;
  run.stopped = result.stopped;
  for (std::size_t i = 0; i < result.events.size(); ++i) {
    if (const auto subject = subjectOf(plan, result.events[i])) {
      run.events.push_back(eventOf(plan, result.events, i, *subject));
    }
  }
  for (std::size_t i = 0; i < plan.protectedPoles.size(); ++i) run.circuits.push_back(circuitOf(plan, result, i));
  const std::vector<std::size_t> cords = cordsOf(plan);
  for (const std::size_t i : cords) run.cords.push_back(cordOf(plan, result, i));
  for (const timeline::Sample& sample : result.samples) run.samples.push_back(sampleOf(sample, cords));
  return run;
}

}  // namespace

DayRun runDay(const site::Site& site, const DayRunOptions& options) {
  const DayPlan plan = dayPlanOf(site, options.until, options.panels);
  timeline::DayOptions dayOptions;
  dayOptions.acting = options.breakersAct ? timeline::Acting::Likely : timeline::Acting::None;
  dayOptions.sampleEvery = options.sampleEvery;
  dayOptions.progress = options.progress;
  DayRun run = answered(plan, timeline::runDay(plan.day, dayOptions));
  const auto trips = [](const DayCircuit& circuit) { return circuit.trip && circuit.trip->likely; };
  const bool anyTrip = std::any_of(run.circuits.begin(), run.circuits.end(), trips);
  if (!anyTrip || !options.breakersAct || !options.followLate || run.stopped) return run;
  // What the likely breaker took out, the latest one would have gone on carrying: its time is another day's.
  dayOptions.acting = timeline::Acting::Latest;
  dayOptions.sampleEvery.reset();
  dayOptions.progress.report = {};
  const timeline::DayResult late = timeline::runDay(plan.day, dayOptions);
  for (std::size_t i = 0; i < run.circuits.size(); ++i) {
    if (trips(run.circuits[i])) run.circuits[i].trip->latest = late.trips[i].latest;
  }
  run.stopped = late.stopped;
  return run;
}

}  // namespace cordreach::study
