// SPDX-License-Identifier: GPL-3.0-or-later
#include "planning/cord_choice.h"

#include <algorithm>
#include <array>

#include "planning/cord_plan.h"
#include "planning/outlet_choice.h"
#include "rules/copper.h"
#include "rules/finding_builder.h"
#include "rules/rule_table.h"
#include "rules/voltage_limits.h"
#include "site/queries.h"
#include "study/assumptions.h"

namespace cordreach::planning {

namespace {

using rules::Severity;

std::vector<rules::Reason> whyOf(const CordQuestion& question, const JudgedCase& judged) {
  if (judged.worst) return judged.worst->why;
  const auto limits =
      rules::voltageLimitsOf(question.inlet, judged.answer.nominal, rules::ruleOf("machine.voltage").limitFraction());
  return {{"cord.within_limits",
           {rules::volts("voltage_v", judged.answer.voltage.likely), rules::volts("limit_v", limits.low)},
           {}}};
}

CordCandidate candidateOf(const CordQuestion& question, const site::Cord& cord) {
  const std::vector<JudgedCase> cases = judgeCases(question, &cord);
  const JudgedCase& judged = strictest(cases);
  const study::HookupAnswer& answer = judged.answer;
  const auto percent = [&](units::Voltage drop) { return 100.0 * (drop / answer.nominal); };
  CordCandidate candidate{cord.make.size->value,
                          cord.make.length->value,
                          cord.make.type,
                          {},
                          cord.label,
                          isPlannedElsewhere(question, cord.id),
                          answer.voltage,
                          {percent(answer.drop.likely), percent(answer.drop.low), percent(answer.drop.high)},
                          answer.cords.front().conductor,
                          judged.verdict,
                          judged.worst ? judged.worst->code : "",
                          whyOf(question, judged),
                          judged.limits,
                          {}};
  if (question.cart != nullptr && !question.jacket) candidate.cord = cord.id;
  for (const JudgedCase& one : cases) candidate.byBreaker.push_back(one.verdict);
  return candidate;
}

// From 16 to 10 AWG in the lengths that every supplier keeps.
std::vector<site::Cord> commonStock(const site::CordMake& own) {
  std::vector<site::Cord> cords;
  for (const int gauge : {16, 14, 12, 10}) {
    for (const int feet : kStockFeet) {
      cords.push_back(stockCord(own, units::WireSize::awg(gauge), feet * units::foot));
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

// One stock size more: the first that clearly has more copper.
units::WireSize oneSizeHeavier(const units::WireSize& own) {
  for (const int gauge : {16, 14, 12, 10, 8, 6}) {
    if (rules::isSizeHeavier(units::WireSize::awg(gauge), own)) return units::WireSize::awg(gauge);
  }
  return own;
}

// Sound by that measure and at least one size heavier than the machine's own.
bool isTakeable(const CordQuestion& question, const CordCandidate& candidate, Severity verdict) {
  return verdict < Severity::Caution && rules::isSizeHeavier(candidate.size, study::sizeOf(question.inlet.cord));
}

// The first that may be taken and is not in use elsewhere.
template <class Verdict>
std::optional<std::size_t> firstSound(const CordQuestion& question, const std::vector<CordCandidate>& candidates,
                                      Verdict verdictOf) {
  for (std::size_t i = 0; i < candidates.size(); ++i) {
    if (!candidates[i].plannedElsewhere && isTakeable(question, candidates[i], verdictOf(candidates[i]))) return i;
  }
  return std::nullopt;
}

void name(const CordCandidate& candidate, base::Arguments& arguments) {
  arguments.push_back(rules::text("size", candidate.size.name()));
  arguments.push_back(rules::number("length_m", candidate.length.in(units::metre)));
  if (!candidate.label.empty()) arguments.push_back(rules::text("cord", candidate.label));
}

void adviseWithout(const CordQuestion& question, CordAdvice& advice) {
  const std::vector<JudgedCase> cases = judgeCases(question, nullptr);
  const JudgedCase& judged = strictest(cases);
  advice.verdict = judged.verdict;
  const bool sound = judged.verdict < Severity::Caution;
  advice.reason = sound ? "cord.not_needed" : "cord.not_needed_but_unsound";
  advice.arguments.push_back(rules::volts("voltage_v", judged.answer.voltage.likely));
  if (judged.worst) advice.arguments.push_back(rules::text(sound ? "notice" : "limit", judged.worst->code));
  if (!sound && cases.size() > 1 && cases.back().verdict < Severity::Caution) {
    advice.findOut = "find.breaker";
    advice.findOutArguments = {rules::amperes("rating_a", likelyBreakers(question).back())};
  }
}

void adviseAmong(const CordQuestion& question, CordAdvice& advice) {
  advice.choice = firstSound(question, advice.candidates, [](const CordCandidate& one) { return one.verdict; });
  if (advice.choice) {
    const CordCandidate& chosen = advice.candidates[*advice.choice];
    advice.reason = "cord.chosen";
    advice.verdict = chosen.verdict;
    name(chosen, advice.arguments);
    return;
  }
  advice.reason = advice.candidates.empty() ? "cord.none_long_enough" : "cord.none_works";
  advice.verdict = Severity::Caution;
  if (advice.candidates.empty()) return;
  if (std::any_of(advice.candidates.begin(), advice.candidates.end(), [&](const CordCandidate& one) {
        return one.plannedElsewhere && isTakeable(question, one, one.verdict);
      })) {
    advice.reason = "cord.none_free";
    return;
  }
  const auto best = std::min_element(advice.candidates.begin(), advice.candidates.end(),
                                     [](const auto& a, const auto& b) { return a.verdict < b.verdict; });
  advice.verdict = std::max(advice.verdict, best->verdict);
  // What stops the heaviest is what no cord of this cart cures.
  const CordCandidate& heaviest = advice.candidates.back();
  if (!heaviest.limit.empty()) advice.arguments.push_back(rules::text("limit", heaviest.limit));
}

void sayWhatElse(const CordQuestion& question, CordAdvice& advice) {
  if (!question.at) return;
  const site::Circuit* circuit = site::circuitOf(*question.at->site, {question.at->outlet, question.at->contact});
  if (circuit != nullptr) {
    advice.alsoOn = circuitUsers(*question.at->site, circuit->id, question.hours, question.at->hookup);
  }
  advice.takenBy = takenBy(question);
}

// Which single unknown, were it known to be well, would give a better answer.
void findOutAmong(const CordQuestion& question, CordAdvice& advice) {
  const std::size_t likely = question.at ? 1 : likelyBreakers(question).size();
  if (likely > 1) {
    const auto onLarger =
        firstSound(question, advice.candidates, [](const CordCandidate& one) { return one.byBreaker.back(); });
    if (onLarger && (!advice.choice || *onLarger < *advice.choice)) {
      advice.findOut = "find.breaker";
      advice.findOutArguments = {rules::amperes("rating_a", likelyBreakers(question).back())};
      name(advice.candidates[*onLarger], advice.findOutArguments);
      return;
    }
  }
  const auto stops = [&](std::string_view code) {
    const CordCandidate* shown = advice.choice               ? &advice.candidates[*advice.choice]
                                 : advice.candidates.empty() ? nullptr
                                                             : &advice.candidates.back();
    return shown != nullptr && shown->limit == code;
  };
  const bool byVolts =
      stops("machine.voltage") || stops("unknown.matters") || stops("drop.branch") || stops("drop.total");
  if (byVolts && !question.at && !question.run) advice.findOut = "find.run";
  if (advice.findOut.empty() && !advice.choice && question.inlet.plate && question.inlet.plate->isGuess()) {
    advice.findOut = "find.plate";
  }
}

}  // namespace

site::Cord stockCord(const site::CordMake& own, const units::WireSize& size, units::Length length) {
  site::Cord cord{.id = site::CordId("stock")};
  cord.make.type = "SJTW";
  cord.make.size = site::known(size);
  cord.make.conductors = site::known(3);
  cord.make.length = site::known(length);
  const std::string ends = own.plug.empty() ? "5-15" : own.plug;
  cord.make.plug = ends;
  cord.sockets = {ends};
  return cord;
}

std::vector<site::Cord> cordsOf(const CordQuestion& question) {
  if (question.jacket) {
    site::Cord cord = stockCord(question.inlet.cord, units::WireSize::awg(16), 50.0 * units::foot);
    cord.id = site::CordId("jacket");
    const std::string ends = cord.make.plug;
    cord.make = *question.jacket;
    if (cord.make.plug.empty()) cord.make.plug = ends;
    if (!cord.make.size || !cord.make.length) return {};
    return {cord};
  }
  return question.cart != nullptr ? cartOf(*question.cart) : commonStock(question.inlet.cord);
}

std::vector<CordCandidate> judgeCords(const CordQuestion& question, const std::vector<site::Cord>& cords,
                                      const base::Progress& progress) {
  std::vector<CordCandidate> judged;
  for (const site::Cord& cord : cords) {
    if (progress.stopRequested()) break;
    judged.push_back(candidateOf(question, cord));
    if (progress.report) progress.report(static_cast<double>(judged.size()) / static_cast<double>(cords.size()));
  }
  return judged;
}

units::Length neededFor(const CordQuestion& question) { return question.distance + kSlack; }

bool reaches(const CordQuestion& question, units::Length extension) {
  return study::lengthOf(question.inlet.cord).value + extension >= neededFor(question);
}

CordAdvice adviseFrom(const CordQuestion& question, const std::vector<CordCandidate>& judged) {
  const units::Length needed = neededFor(question);
  const units::Length own = study::lengthOf(question.inlet.cord).value;
  const units::WireSize ownSize = study::sizeOf(question.inlet.cord);
  CordAdvice advice;
  advice.ruleOfThumb = oneSizeHeavier(ownSize);
  advice.arguments = {rules::number("needed_m", needed.in(units::metre)), rules::number("own_m", own.in(units::metre)),
                      rules::text("own_size", ownSize.name())};
  advice.extensionNeeded = own < needed;
  sayWhatElse(question, advice);
  if (!advice.extensionNeeded) {
    adviseWithout(question, advice);
    return advice;
  }
  for (const CordCandidate& candidate : judged) {
    if (reaches(question, candidate.length)) advice.candidates.push_back(candidate);
  }
  adviseAmong(question, advice);
  findOutAmong(question, advice);
  return advice;
}

CordAdvice chooseCord(const CordQuestion& question) {
  std::vector<site::Cord> cords = cordsOf(question);
  if (reaches(question, {})) cords.clear();
  std::erase_if(cords, [&](const site::Cord& cord) { return !reaches(question, cord.make.length->value); });
  return adviseFrom(question, judgeCords(question, cords));
}

}  // namespace cordreach::planning
