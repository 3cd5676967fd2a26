// SPDX-License-Identifier: GPL-3.0-or-later
#include "study/day_loads.h"

#include <algorithm>
#include <cmath>

#include "physics/charger.h"
#include "physics/start_class.h"
#include "timeline/part_load.h"

namespace cordreach::study {

namespace {

using timeline::Change;
using timeline::ChangeKind;
using units::Duration;

constexpr int kTaperSteps = 12;  // own: each a fifth less than the one before

Change changeAt(Duration at, ChangeKind kind, const LoadSpan& span) {
  Change change;
  change.at = at;
  change.kind = kind;
  change.load = span.place;
  if (kind == ChangeKind::On) change.law = span.law;
  return change;
}

void addOnAndOff(Duration from, Duration until, const LoadSpan& span, std::vector<Change>& changes) {
  changes.push_back(changeAt(from, ChangeKind::On, span));
  changes.back().start = span.start;
  if (until < span.until || !span.untilTheEnd) changes.push_back(changeAt(until, ChangeKind::Off, span));
}

void addCycle(const LoadSpan& span, std::vector<Change>& changes) {
  const site::Cycle& cycle = *span.cycle;
  const Duration period = cycle.on + cycle.off;
  const double before = std::floor((span.from - *cycle.firstOn) / period);
  for (Duration on = *cycle.firstOn + before * period; on < span.until; on += period) {
    const Duration from = std::max(on, span.from);
    const Duration until = std::min(on + cycle.on, span.until);
    if (from < until) addOnAndOff(from, until, span, changes);
  }
}

void addCharge(const LoadSpan& span, std::vector<Change>& changes) {
  addOnAndOff(span.from, span.until, span, changes);
  const physics::Charger charger{span.charge->constant, span.charge->taper};
  const Duration step = charger.taper / kTaperSteps;
  for (int i = 0; i <= kTaperSteps; ++i) {
    const Duration since = charger.constant + static_cast<double>(i) * step;
    if (span.from + since >= span.until) break;
    const bool full = i == kTaperSteps || !(step > Duration{});
    const double share = full ? physics::kChargedShare : physics::chargeRmsShare(charger, since, since + step);
    Change change = changeAt(span.from + since, ChangeKind::On, span);
    change.law = std::make_shared<timeline::PartLoad>(span.law, share);
    change.silent = true;
    changes.push_back(std::move(change));
    if (full) break;
  }
}

}  // namespace

void addChanges(const LoadSpan& span, std::vector<Change>& changes) {
  if (span.cycle) {
    addCycle(span, changes);
  } else if (span.charge) {
    addCharge(span, changes);
  } else {
    addOnAndOff(span.from, span.until, span, changes);
  }
}

std::optional<timeline::StartPeak> startPeakOf(const physics::StartMachine& machine) {
  physics::Nameplate plate = machine.plate;
  if (!(plate.current > units::Current{})) return std::nullopt;
  // A letter that is none says nothing.
  if (const auto amps = physics::startAmps(machine, physics::StartEdge::Typical))
    plate.lockedRotorCurrent = amps.value();
  const physics::StartBand band = physics::startBand(plate);
  if (!(band.peakTypical > plate.current)) return std::nullopt;
  return timeline::StartPeak{physics::makeStartLaw(plate, physics::StartEdge::Typical),
                             band.duration(physics::StartEdge::Typical)};
}

}  // namespace cordreach::study
