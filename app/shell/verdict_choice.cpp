// SPDX-License-Identifier: GPL-3.0-or-later
#include "shell/verdict_choice.h"

#include <algorithm>
#include <variant>

#include "panels/names.h"
#include "shell/say.h"
#include "text/finding_text.h"
#include "text/severity_text.h"

namespace cordreach::app {

namespace {

constexpr std::size_t kMostConcerns = 2;

bool concerns(const rules::Finding& finding, const rules::Subject& subject, const site::Site& site) {
  if (std::find(finding.subjects.begin(), finding.subjects.end(), subject) != finding.subjects.end()) return true;
  return std::any_of(finding.hookups.begin(), finding.hookups.end(), [&](const site::HookupId& id) {
    if (subject.kind == rules::SubjectKind::Hookup) return id.text() == subject.id;
    const site::Hookup* hookup = site.find<site::Hookup>(id);
    return subject.kind == rules::SubjectKind::Machine && hookup != nullptr && hookup->machine.text() == subject.id;
  });
}

QString concernsOf(const rules::Finding& finding, const site::Site& site, const text::Phrasebook& book) {
  QStringList names;
  for (const rules::Subject& subject : finding.subjects) {
    const QString name = QString::fromStdString(subjectName(book, site, subject));
    if (name.isEmpty() || names.contains(name)) continue;
    names << name;
    if (names.size() == kMostConcerns) break;
  }
  return names.join(QStringLiteral(", "));
}

template <class Thing>
const Thing* firstChanged(const site::Site& planned, const site::Site& supposed) {
  for (const Thing& thing : supposed.all<Thing>()) {
    const Thing* before = planned.find<Thing>(thing.id);
    if (before == nullptr || *before != thing) return &thing;
  }
  return nullptr;
}

const site::Hookup* pluggedInto(const site::Site& site, const site::CordId& cord) {
  for (const site::Hookup& hookup : site.all<site::Hookup>()) {
    const auto* socket = std::get_if<site::CordSocket>(&hookup.socket);
    if (socket != nullptr && socket->cord == cord) return &hookup;
  }
  return nullptr;
}

// Where no machine is plugged in, nothing was judged that anybody would call sound.
VerdictWords idleWords(const site::Site& site, const text::Phrasebook& book) {
  VerdictWords words;
  words.severity = rules::Severity::Notice;
  words.signal = QString::fromStdString(text::signalWord(book, words.severity));
  words.sentence = say(book, "window.verdict.idle");
  base::Arguments arguments;
  if (site.all<site::FixedLoad>().size() > 0) arguments.push_back({"loads", 1.0});
  words.reason = say(book, "window.verdict.idle_reason", arguments);
  return words;
}

VerdictWords soundWords(const text::Phrasebook& book) {
  VerdictWords words;
  words.signal = QString::fromStdString(text::signalWord(book, rules::Severity::Ok));
  words.sentence = say(book, "window.verdict.ok");
  words.reason = say(book, "assess.unchecked");
  return words;
}

}  // namespace

std::optional<std::size_t> headingFinding(const Verdict& verdict, const std::optional<rules::Subject>& tried) {
  for (std::size_t i = 0; i < verdict.findings.size(); ++i) {
    const rules::Finding& finding = verdict.findings[i];
    if (finding.accepted || finding.severity == rules::Severity::Ok) continue;
    if (!verdict.supposed || !tried || concerns(finding, *tried, *verdict.site)) return i;
  }
  return std::nullopt;
}

std::optional<rules::Subject> triedMachine(const site::Site& planned, const site::Site& supposed) {
  const site::Hookup* hookup = firstChanged<site::Hookup>(planned, supposed);
  const site::ExtensionUse* use = firstChanged<site::ExtensionUse>(planned, supposed);
  if (hookup == nullptr && use != nullptr) hookup = pluggedInto(supposed, use->cord);
  if (hookup == nullptr) return std::nullopt;
  return rules::Subject{rules::SubjectKind::Machine, hookup->machine.text()};
}

VerdictWords wordsOf(const Verdict& verdict, const std::optional<rules::Subject>& tried, const text::Phrasebook& book) {
  const std::optional<std::size_t> at = headingFinding(verdict, tried);
  if (!at && verdict.site->all<site::Hookup>().size() == 0) return idleWords(*verdict.site, book);
  if (!at) return soundWords(book);
  const rules::Finding& finding = verdict.findings[*at];
  const text::FindingWords said = text::wordsOf(book, finding);
  VerdictWords words;
  words.finding = at;
  words.severity = finding.severity;
  words.signal = QString::fromStdString(said.signal);
  words.concerns = concernsOf(finding, *verdict.site, book);
  words.sentence = QString::fromStdString(said.head);
  words.reason = QString::fromStdString(said.body);
  words.order = QString::fromStdString(said.order);
  words.seeking = verdict.remedies.empty() && !verdict.supposed;
  if (*at < verdict.remedies.size() && !verdict.remedies[*at].empty()) {
    const text::RemedyWords remedy = text::wordsOf(book, verdict.remedies[*at].front());
    words.button = QString::fromStdString(remedy.order);
    words.after = QString::fromStdString(remedy.after);
    if (!words.after.isEmpty()) words.after[0] = words.after[0].toUpper();
  }
  return words;
}

QString VerdictWords::spoken() const {
  QStringList parts;
  for (const QString& part : {signal, concerns, sentence, reason, button.isEmpty() ? order : button}) {
    if (!part.isEmpty()) parts << (part.endsWith('.') ? part : part + '.');
  }
  return parts.join(' ');
}

}  // namespace cordreach::app
