// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/cart_rows.h"

#include <algorithm>
#include <tuple>

#include "desk/cell_words.h"
#include "rules/copper.h"
#include "shell/say.h"

namespace cordreach::app {

namespace {

using planning::CordCandidate;

bool isAlike(const CordCandidate& a, const CordCandidate& b) {
  return a.size == b.size && a.length == b.length && a.verdict == b.verdict && a.limit == b.limit &&
         a.plannedElsewhere == b.plannedElsewhere;
}

// Sound, and still not to be chosen beside a machine's own cord of that size.
bool isTooLight(const CordCandidate& candidate, const units::WireSize& own) {
  return candidate.verdict < rules::Severity::Caution && !rules::isSizeHeavier(candidate.size, own);
}

CartRow rowOf(const text::Phrasebook& book, const CordCandidate& candidate, const units::WireSize& own) {
  QString words = candidateName(book, candidate);
  const bool tooLight = isTooLight(candidate, own) && !candidate.plannedElsewhere;
  const QString line = tooLight ? say(book, "desk.cart.not_heavier") : candidateLine(book, candidate);
  if (!line.isEmpty()) words += QStringLiteral(": ") + line;
  const bool held = candidate.plannedElsewhere || tooLight;
  return {held ? std::max(candidate.verdict, rules::Severity::Notice) : candidate.verdict, words};
}

}  // namespace

std::vector<CartRow> cartRows(const text::Phrasebook& book, const planning::CordAdvice& advice,
                              const units::WireSize& own) {
  const auto rank = [&](const CordCandidate& one) {
    const bool isChosen = advice.choice && isAlike(one, advice.candidates[*advice.choice]);
    return std::tuple(!isChosen, one.verdict >= rules::Severity::Caution, one.plannedElsewhere, isTooLight(one, own),
                      one.verdict);
  };
  std::vector<CordCandidate> groups;
  for (const CordCandidate& candidate : advice.candidates) {
    const auto same = std::ranges::find_if(groups, [&](const CordCandidate& one) { return isAlike(one, candidate); });
    if (same == groups.end()) {
      groups.push_back(candidate);
    } else {
      same->label += ", " + candidate.label;
    }
  }
  std::ranges::stable_sort(groups, {}, rank);
  std::vector<CartRow> rows;
  for (const CordCandidate& group : groups) rows.push_back(rowOf(book, group, own));
  return rows;
}

}  // namespace cordreach::app
