// SPDX-License-Identifier: GPL-3.0-or-later
#include "planning/cord_choice.h"

#include <algorithm>
#include <array>

#include "planning/cord_site.h"
#include "planning/outlet_choice.h"
#include "rules/copper.h"
#include "rules/finding_builder.h"
#include "rules/judge.h"
#include "rules/rule_table.h"
#include "rules/voltage_limits.h"
#include "study/assess.h"
#include "study/assumptions.h"

namespace cordreach::planning {

namespace {

using rules::Severity;

struct Judged {
  study::HookupAnswer answer;
  Severity verdict;
  std::optional<rules::Finding> worst;
};

Judged judgeOn(const CordQuestion& question, units::Current breaker, const site::Cord* extension) {
  const site::Site site = cordSite(question, breaker, extension);
  const study::Answer answer = study::assess(site);
  const auto findings = rules::judge(site, answer);
  const site::HookupId& id = cordSiteHookup();
  const study::HookupAnswer* hookup = answer.find(id);
  CORDREACH_EXPECTS(hookup != nullptr);
  Judged judged{*hookup, rules::verdictOf(id, findings), {}};
  for (const rules::Finding& finding : findings) {
    if (finding.severity == judged.verdict && !finding.hookups.empty()) {
      judged.worst = finding;
      break;
    }
  }
  return judged;
}

// On the breaker that is known, or on the stricter of the usual two.
Judged judgeWith(const CordQuestion& question, const site::Cord* extension) {
  if (question.breaker) return judgeOn(question, *question.breaker, extension);
  Judged small = judgeOn(question, 15.0 * units::ampere, extension);
  Judged large = judgeOn(question, 20.0 * units::ampere, extension);
  if (small.verdict != large.verdict) return small.verdict > large.verdict ? small : large;
  return small.answer.voltage.likely <= large.answer.voltage.likely ? small : large;
}

std::vector<rules::Reason> whyOf(const CordQuestion& question, const Judged& judged) {
  if (judged.worst) return judged.worst->why;
  const auto limits =
      rules::voltageLimitsOf(question.inlet, judged.answer.nominal, rules::ruleOf("machine.voltage").limitFraction());
  return {{"cord.within_limits",
           {rules::volts("voltage_v", judged.answer.voltage.likely), rules::volts("limit_v", limits.low)},
           {}}};
}

CordCandidate candidateOf(const CordQuestion& question, const site::Cord& cord, bool ofCart) {
  const Judged judged = judgeWith(question, &cord);
  const study::HookupAnswer& answer = judged.answer;
  const auto percent = [&](units::Voltage drop) { return 100.0 * (drop / answer.nominal); };
  CordCandidate candidate{cord.make.size->value,
                          cord.make.length->value,
                          cord.make.type,
                          {},
                          cord.label,
                          answer.voltage,
                          {percent(answer.drop.likely), percent(answer.drop.low), percent(answer.drop.high)},
                          answer.cords.front().conductor,
                          judged.verdict,
                          judged.worst ? judged.worst->code : "",
                          whyOf(question, judged)};
  if (ofCart) candidate.cord = cord.id;
  return candidate;
}

// SJTW from 16 to 10 AWG in the lengths that every supplier keeps.
std::vector<site::Cord> commonStock(const site::CordMake& own) {
  std::vector<site::Cord> cords;
  for (const int gauge : {16, 14, 12, 10}) {
    for (const double feet : {25.0, 50.0, 75.0, 100.0}) {
      site::Cord cord{.id = site::CordId("stock")};
      cord.make.type = "SJTW";
      cord.make.size = site::known(units::WireSize::awg(gauge));
      cord.make.conductors = site::known(3);
      cord.make.length = site::known(feet * units::foot);
      const std::string ends = own.plug.empty() ? "5-15" : own.plug;
      cord.make.plug = ends;
      cord.sockets = {ends};
      cords.push_back(cord);
    }
  }
  return cords;
}

std::vector<site::Cord> cartOf(const site::Site& site) {
  std::vector<site::Cord> cords;
  for (const site::Cord& cord : site.all<site::Cord>()) {
    if (!cord.outOfService && cord.make.size && cord.make.length && !cord.sockets.empty()) cords.push_back(cord);
  }
  std::stable_sort(cords.begin(), cords.end(), [](const site::Cord& a, const site::Cord& b) {
    const auto key = [](const site::Cord& cord) {
      return std::pair(cord.make.size->value.area().si(), cord.make.length->value.si());
    };
    return key(a) < key(b);
  });
  return cords;
}

void adviseWithout(const CordQuestion& question, CordAdvice& advice) {
  const Judged judged = judgeWith(question, nullptr);
  advice.verdict = judged.verdict;
  const bool sound = judged.verdict < Severity::Caution;
  advice.reason = sound ? "cord.not_needed" : "cord.not_needed_but_unsound";
  advice.arguments.push_back(rules::volts("voltage_v", judged.answer.voltage.likely));
  if (judged.worst) advice.arguments.push_back(rules::text(sound ? "notice" : "limit", judged.worst->code));
}

void adviseAmong(const CordQuestion& question, CordAdvice& advice) {
  const units::WireSize own = study::sizeOf(question.inlet.cord);
  for (std::size_t i = 0; i < advice.candidates.size() && !advice.choice; ++i) {
    const CordCandidate& candidate = advice.candidates[i];
    const bool sound = candidate.verdict < Severity::Caution;
    if (sound && rules::isSizeHeavier(candidate.size, own)) advice.choice = i;
  }
  if (advice.choice) {
    const CordCandidate& chosen = advice.candidates[*advice.choice];
    advice.reason = "cord.chosen";
    advice.verdict = chosen.verdict;
    advice.arguments.push_back(rules::text("size", chosen.size.name()));
    advice.arguments.push_back(rules::number("length_m", chosen.length.in(units::metre)));
    if (!chosen.label.empty()) advice.arguments.push_back(rules::text("cord", chosen.label));
    return;
  }
  advice.reason = advice.candidates.empty() ? "cord.none_long_enough" : "cord.none_works";
  advice.verdict = Severity::Caution;
  if (advice.candidates.empty()) return;
  // What stops the heaviest is what no cord of this cart cures.
  const CordCandidate& heaviest = advice.candidates.back();
  if (!heaviest.limit.empty()) advice.arguments.push_back(rules::text("limit", heaviest.limit));
}

}  // namespace

CordAdvice chooseCord(const CordQuestion& question) {
  const units::Length needed = question.distance + kSlack;
  const units::Length own = study::lengthOf(question.inlet.cord).value;
  CordAdvice advice{false, {}, {}, {}, Severity::Ok, {}};
  advice.arguments = {rules::number("needed_m", needed.in(units::metre)), rules::number("own_m", own.in(units::metre))};
  advice.extensionNeeded = own < needed;
  if (!advice.extensionNeeded) {
    adviseWithout(question, advice);
    return advice;
  }
  const bool ofCart = question.cart != nullptr;
  const auto cords = ofCart ? cartOf(*question.cart) : commonStock(question.inlet.cord);
  for (const site::Cord& cord : cords) {
    if (own + cord.make.length->value < needed) continue;
    advice.candidates.push_back(candidateOf(question, cord, ofCart));
  }
  adviseAmong(question, advice);
  return advice;
}

}  // namespace cordreach::planning
