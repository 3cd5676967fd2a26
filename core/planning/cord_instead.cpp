// SPDX-License-Identifier: GPL-3.0-or-later
#include "planning/cord_instead.h"

#include <algorithm>

#include "planning/cord_site.h"
#include "planning/outlet_choice.h"
#include "site/walk.h"
#include "study/assumptions.h"

namespace cordreach::planning {

namespace {

constexpr std::size_t kMostTried = 4;

bool isSound(const CordAdvice& advice) {
  return advice.verdict < rules::Severity::Caution && (!advice.extensionNeeded || advice.choice);
}

OutletWish wishOf(const CordQuestion& question) {
  units::Length longest;
  for (const site::Cord& cord : cordsOf(question)) longest = std::max(longest, cord.make.length->value);
  OutletWish wish;
  wish.reach = study::lengthOf(question.inlet.cord).value + longest;
  wish.plug = question.inlet.cord.plug;
  wish.needsProtection = question.wet && !question.inlet.cord.groundFaultDevice;
  return wish;
}

}  // namespace

std::optional<CordInstead> insteadOf(const CordQuestion& question, const site::Place& work) {
  if (!question.at) return std::nullopt;
  site::Site site = cordSite(question, {}, nullptr);
  site::Hookup hookup = site.at<site::Hookup>(askedHookup(question));
  hookup.place = work;
  site.all<site::Hookup>().put(hookup);
  const auto choices = outletsFor(pluggingOf(site.at<site::Hookup>(hookup.id), site), site, wishOf(question));
  std::size_t tried = 0;
  for (const OutletChoice& choice : choices) {
    if (tried++ == kMostTried) break;
    CordQuestion there = question;
    there.at->outlet = choice.outlet->id;
    there.at->contact = choice.contact->name;
    there.distance = choice.needed - kSlack;
    if (const auto walk = site::walkBetween(*question.at->site, *choice.outlet->place, work))
      there.distance = walk->length;
    CordAdvice advice = chooseCord(there);
    if (isSound(advice)) return CordInstead{*there.at, there.distance, std::move(advice)};
  }
  return std::nullopt;
}

}  // namespace cordreach::planning
