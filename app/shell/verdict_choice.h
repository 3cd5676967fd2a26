// SPDX-License-Identifier: GPL-3.0-or-later
// The one sentence at the head of the sheet: which finding it is, and in which words.
#pragma once

#include <QString>
#include <QStringList>
#include <optional>

#include "compute/verdict.h"
#include "rules/finding.h"
#include "text/phrasebook.h"

namespace cordreach::app {

// Which finding heads the sheet: the worst that is not accepted. While something is tried on the map, the worst that
// concerns it. Nothing: all is sound as far as we know.
[[nodiscard]] std::optional<std::size_t> headingFinding(const Verdict& verdict,
                                                        const std::optional<rules::Subject>& tried);

// Whose plug is being tried: the machine whose way to its outlet differs between the two sites.
[[nodiscard]] std::optional<rules::Subject> triedMachine(const site::Site& planned, const site::Site& supposed);

struct VerdictWords {
  rules::Severity severity = rules::Severity::Ok;
  QString signal;
  QString concerns;      // what it is about: "Burnisher, Outlet 1-13"
  QString sentence;      // what will happen
  QString reason;        // how much against what
  QString order;         // what to do where no tried change is at hand
  QString button;        // the change on the button; empty: none
  QString after;         // what it will then be
  bool seeking = false;  // changes are still being tried
  std::optional<std::size_t> finding;

  [[nodiscard]] QString spoken() const;
};

[[nodiscard]] VerdictWords wordsOf(const Verdict& verdict, const std::optional<rules::Subject>& tried,
                                   const text::Phrasebook& book);

}  // namespace cordreach::app
