// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/near_limit.h"

#include <algorithm>
#include <optional>

#include "rules/finding_builder.h"
#include "study/assumptions.h"

namespace cordreach::rules {

namespace {

constexpr double kPlanned = 0.8;    // NEC 210.20(A)
constexpr double kHalf = 0.5;       // own
constexpr double kMostlyOff = 0.2;  // own: on for less than this part of the time, it is rarely met
constexpr units::Duration kAllNight = 6.0 * units::hour;  // own

bool mostlyOff(const site::FixedLoad& load) { return load.cycle && load.cycle->onFraction() < kMostlyOff; }
bool lasts(const site::FixedLoad& load) { return !load.cycle && (!load.hours || load.hours->length() >= kAllNight); }

template <class Counts>
units::Current sumOf(const std::vector<const site::FixedLoad*>& loads, Counts counts) {
  units::Current sum;
  for (const site::FixedLoad* load : loads) {
    if (counts(*load)) sum += study::currentOf(*load);
  }
  return sum;
}

bool reaches(units::Current sum, units::Current rating, double fraction) { return sum >= rating * (fraction - 1e-9); }

std::optional<NearLimitReason> reasonFor(const std::vector<const site::FixedLoad*>& loads, units::Current rating) {
  if (reaches(sumOf(loads, lasts), rating, kPlanned)) return NearLimitReason::Loaded;
  const auto any = [](const site::FixedLoad&) { return true; };
  if (reaches(sumOf(loads, any), rating, kPlanned)) return NearLimitReason::Together;
  const auto allNight = [](const site::FixedLoad& load) { return load.hours && lasts(load); };
  if (reaches(sumOf(loads, allNight), rating, kHalf)) return NearLimitReason::AllNight;
  const auto oftenOn = [](const site::FixedLoad& load) { return !mostlyOff(load); };
  if (reaches(sumOf(loads, oftenOn), rating, kHalf)) return NearLimitReason::BeforeAny;
  return {};
}

std::vector<Reason> reasonsOf(std::vector<const site::FixedLoad*> loads, units::Current sum) {
  std::stable_sort(loads.begin(), loads.end(), [](const site::FixedLoad* a, const site::FixedLoad* b) {
    return study::currentOf(*a) > study::currentOf(*b);
  });
  std::vector<Reason> why;
  for (const site::FixedLoad* load : loads) {
    const units::Current current = study::currentOf(*load);
    why.push_back({load->cycle ? "share.cycling_load" : "share.fixed_load",
                   {amperes("current_a", current), text("load", load->name)},
                   current / sum});
  }
  return why;
}

}  // namespace

std::string_view nameOf(NearLimitReason reason) {
  switch (reason) {
    case NearLimitReason::Loaded:
      return "loaded";
    case NearLimitReason::Together:
      return "together";
    case NearLimitReason::BeforeAny:
      return "before_any";
    case NearLimitReason::AllNight:
      return "all_night";
  }
  return "loaded";
}

std::vector<NearLimit> nearLimit(const site::Site& site) {
  std::vector<NearLimit> list;
  for (const site::Circuit& circuit : site.all<site::Circuit>()) {
    if (!circuit.rating || circuit.use == site::UseClass::Never) continue;
    std::vector<const site::FixedLoad*> loads;
    for (const site::FixedLoad& load : site.all<site::FixedLoad>()) {
      if (load.circuit == circuit.id && !load.off) loads.push_back(&load);
    }
    const auto reason = reasonFor(loads, circuit.rating->value);
    if (!reason) continue;
    const units::Current sum = sumOf(loads, [](const site::FixedLoad&) { return true; });
    list.push_back({circuit.id, *reason, sum, 100.0 * (sum / circuit.rating->value), reasonsOf(loads, sum)});
  }
  std::stable_sort(list.begin(), list.end(),
                   [](const NearLimit& a, const NearLimit& b) { return a.loadPercent > b.loadPercent; });
  return list;
}

}  // namespace cordreach::rules
