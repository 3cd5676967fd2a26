// SPDX-License-Identifier: GPL-3.0-or-later
// A finding is told once, under the first hookup that it colours, and named in short under the others.
#include "console/assess_page.h"

#include <algorithm>
#include <array>
#include <set>

#include "console/page.h"
#include "rules/judge.h"
#include "site/assigning.h"
#include "text/finding_text.h"
#include "text/quantity_text.h"

namespace cordreach::console {

namespace {

using rules::Severity;
using text::Align;

const text::Indent kInner{"  ", "  "};
const text::Indent kReason{"  ", "       "};
constexpr std::size_t kMostReasons = 4;
constexpr units::Current kIdle = 0.05 * units::ampere;  // reads as 0 A

class AssessPage {
 public:
  AssessPage(const SiteAnswer& answer, const text::Phrasebook& book, bool color)
      : m_answer(answer), m_book(book), m_page(book, color) {}

  std::string written() {
    head();
    std::vector<const study::HookupAnswer*> hookups = worstFirst();
    for (const study::HookupAnswer* hookup : hookups) {
      if (verdictOf(*hookup) > Severity::Ok) unsound(*hookup);
    }
    building();
    sound(hookups);
    circuits();
    m_page.gap();
    m_page.paragraph(m_book.say("assess.unchecked"));
    return m_page.finished();
  }

 private:
  [[nodiscard]] Severity verdictOf(const study::HookupAnswer& hookup) const {
    return rules::verdictOf(hookup.id, m_answer.findings);
  }

  [[nodiscard]] std::vector<const study::HookupAnswer*> worstFirst() const {
    std::vector<const study::HookupAnswer*> hookups;
    for (const study::HookupAnswer& hookup : m_answer.answer.hookups) hookups.push_back(&hookup);
    std::stable_sort(hookups.begin(), hookups.end(),
                     [&](const auto* a, const auto* b) { return verdictOf(*a) > verdictOf(*b); });
    return hookups;
  }

  void head() {
    m_page.heading(m_answer.site.name.empty() ? m_book.say("assess.unnamed") : m_answer.site.name);
    constexpr std::array kWords{"ok", "notice", "caution", "warning", "danger"};
    const Severity worst = m_answer.worst();
    const auto& hookups = m_answer.answer.hookups;
    const auto sound = std::count_if(hookups.begin(), hookups.end(),
                                     [&](const auto& hookup) { return verdictOf(hookup) < Severity::Caution; });
    const std::string counts = hookups.empty()
                                   ? m_book.say("assess.empty")
                                   : m_book.say("assess.counts", {{"hookups", static_cast<double>(hookups.size())},
                                                                  {"sound", static_cast<double>(sound)}});
    const std::string word = kWords.at(static_cast<std::size_t>(worst));
    m_page.verdict(worst, m_book.say("assess.overall", {{"worst", word}}) + " " + counts);
  }

  [[nodiscard]] std::string titleOf(const study::HookupAnswer& hookup, bool withHours = true) const {
    const site::Site& site = m_answer.site;
    const site::Machine& machine = site.at<site::Machine>(hookup.machine);
    base::Arguments arguments{{"machine", machine.name}};
    if (machine.inlets.size() > 1) arguments.push_back({"inlet", hookup.inlet});
    if (const auto& hours = site.at<site::Hookup>(hookup.id).hours; hours && withHours) {
      arguments.push_back({"hours_from_s", hours->from.si()});
      arguments.push_back({"hours_until_s", hours->until.si()});
    }
    if (hookup.outlet) {
      const site::Outlet& outlet = site.at<site::Outlet>(*hookup.outlet);
      arguments.push_back({"outlet", outlet.label});
      if (outlet.contacts.size() > 1) arguments.push_back({"contact", hookup.contact});
    }
    std::string cords;
    for (const study::CordAnswer& cord : hookup.cords) {
      if (cord.id) cords += (cords.empty() ? "" : ", ") + site.at<site::Cord>(*cord.id).label;
    }
    arguments.push_back({"cords", cords});
    return m_book.say("assess.hookup", arguments);
  }

  [[nodiscard]] std::vector<std::size_t> findingsOf(const study::HookupAnswer& hookup) const {
    std::vector<std::size_t> indices;
    for (std::size_t i = 0; i < m_answer.findings.size(); ++i) {
      const auto& colours = m_answer.findings[i].hookups;
      if (std::find(colours.begin(), colours.end(), hookup.id) != colours.end()) indices.push_back(i);
    }
    return indices;
  }

  void unsound(const study::HookupAnswer& hookup) {
    m_page.gap();
    m_page.rule(titleOf(hookup));
    const std::vector<std::size_t> indices = findingsOf(hookup);
    std::vector<std::size_t> open;
    for (const std::size_t index : indices) {
      if (tell(index, index == indices.front())) open.push_back(index);
    }
    orders(open);
  }

  void building() {
    std::vector<std::size_t> open;
    for (std::size_t i = 0; i < m_answer.findings.size(); ++i) {
      if (m_told.count(i) == 0) open.push_back(i);
    }
    if (open.empty()) return;
    m_page.gap();
    m_page.rule(m_book.say("assess.building"));
    for (const std::size_t index : open) {
      tell(index, true);
      orders({index});
    }
  }

  // False when there is nothing left to do about it here.
  bool tell(std::size_t index, bool withReasons) {
    const rules::Finding& finding = m_answer.findings[index];
    const text::FindingWords words = text::wordsOf(m_book, finding);
    if (!m_told.insert(index).second || finding.accepted) {
      const char* code = finding.accepted ? "assess.accepted" : "assess.told";
      m_page.verdict(finding.severity, m_book.say(code, {{"head", words.head}}), kInner);
      return false;
    }
    m_page.verdict(finding.severity, words.text(), kInner);
    if (withReasons) m_page.paragraph(m_book.say("assess.why", {{"reasons", reasonsOf(words)}}), kReason);
    return true;
  }

  [[nodiscard]] std::string reasonsOf(const text::FindingWords& words) const {
    std::string reasons;
    std::size_t told = 0;
    for (const text::ReasonWords& reason : words.why) {
      if (told++ == kMostReasons) break;
      reasons += (reasons.empty() ? "" : "; ") +
                 (reason.share ? m_book.say("assess.reason_share",
                                            {{"reason", reason.text}, {"share_percent", 100.0 * *reason.share}})
                               : reason.text);
    }
    return reasons;
  }

  // One change often mends all of a hookup's findings, so each order is given once: of the worst finding all that were
  // tried, of the others what is not among them.
  void orders(const std::vector<std::size_t>& indices) {
    std::set<std::string> given;
    for (const std::size_t index : indices) {
      const auto& remedies = m_answer.remedies[index];
      const bool answered = std::any_of(remedies.begin(), remedies.end(), [&](const planning::Remedy& remedy) {
        return given.count(text::wordsOf(m_book, remedy).order) != 0;
      });
      if (answered) continue;
      const char* code = "assess.do";
      for (const planning::Remedy& remedy : remedies) {
        const text::RemedyWords words = text::wordsOf(m_book, remedy);
        given.insert(words.order);
        m_page.paragraph(m_book.say(code, {{"order", words.order}, {"after", words.after}}), kReason);
        code = "assess.or";
      }
      if (remedies.empty()) untried(m_answer.findings[index], given);
    }
  }

  // No change was tried with success. A notice beside an order that is given already adds none of its own.
  void untried(const rules::Finding& finding, std::set<std::string>& given) {
    const bool pressing = finding.severity >= Severity::Caution;
    const std::string order = text::wordsOf(m_book, finding).order;
    if ((!pressing && !given.empty()) || !given.insert(order).second) return;
    m_page.paragraph(m_book.say(pressing ? "assess.none_found" : "assess.do", {{"order", order}}), kReason);
  }

  void sound(const std::vector<const study::HookupAnswer*>& hookups) {
    std::vector<std::vector<std::string>> rows;
    for (const study::HookupAnswer* hookup : hookups) {
      if (verdictOf(*hookup) == Severity::Ok) rows.push_back(soundRow(*hookup));
    }
    if (rows.empty()) return;
    m_page.gap();
    m_page.table({{m_book.say("assess.sound")},
                  {m_book.say("assess.column.current"), Align::Right},
                  {m_book.say("assess.column.voltage"), Align::Right},
                  {m_book.say("assess.column.cord"), Align::Right}},
                 rows);
  }

  [[nodiscard]] std::vector<std::string> soundRow(const study::HookupAnswer& hookup) const {
    double hottestC = -273.15;
    for (const study::CordAnswer& cord : hookup.cords) {
      if (cord.conductor) hottestC = std::max(hottestC, cord.conductor->likely.celsius());
    }
    return {titleOf(hookup, false), amperes(hookup.current.likely),
            text::quantityText(m_book, "voltage_v", hookup.voltage.likely.si(), {true}),
            hookup.cords.empty() ? std::string{} : text::quantityText(m_book, "conductor_c", hottestC)};
  }

  // Closest to its rating first; what carries nothing is only named.
  void circuits() {
    std::vector<const study::CircuitAnswer*> loaded;
    std::string idle;
    for (const study::CircuitAnswer& circuit : m_answer.answer.circuits) {
      if (circuit.current.likely >= kIdle) {
        loaded.push_back(&circuit);
      } else {
        idle += (idle.empty() ? "" : ", ") + labelOf(circuit);
      }
    }
    const auto margin = [](const study::CircuitAnswer* circuit) {
      return circuit->breaker.rating ? circuit->breaker.rating->si() - circuit->current.likely.si() : 0.0;
    };
    std::stable_sort(loaded.begin(), loaded.end(), [&](const auto* a, const auto* b) { return margin(a) < margin(b); });
    std::vector<std::vector<std::string>> rows;
    for (const study::CircuitAnswer* circuit : loaded) rows.push_back(circuitRow(*circuit));
    if (!rows.empty()) {
      m_page.gap();
      m_page.table({{m_book.say("assess.column.circuit")},
                    {m_book.say("assess.column.purpose")},
                    {m_book.say("assess.column.rating"), Align::Right},
                    {m_book.say("assess.column.load"), Align::Right},
                    {m_book.say("assess.column.margin"), Align::Right},
                    {m_book.say("assess.column.trips"), Align::Right}},
                   rows);
    }
    if (!idle.empty()) m_page.paragraph(m_book.say("assess.idle", {{"circuits", idle}}));
  }

  [[nodiscard]] std::string labelOf(const study::CircuitAnswer& circuit) const {
    return site::circuitNumberOf(m_answer.site, m_answer.site.at<site::Circuit>(circuit.id));
  }

  [[nodiscard]] std::vector<std::string> circuitRow(const study::CircuitAnswer& circuit) const {
    const site::Circuit& known = m_answer.site.at<site::Circuit>(circuit.id);
    const auto& rating = circuit.breaker.rating;
    const auto& trip = circuit.breaker.trip;
    std::string trips = m_book.say("word.unknown");
    if (trip)
      trips = trip->likely ? text::quantityText(m_book, "likely_s", trip->likely->si()) : m_book.say("assess.holds");
    return {labelOf(circuit),
            known.purpose,
            rating ? text::quantityText(m_book, "rating_a", rating->si()) : m_book.say("word.unknown"),
            amperes(circuit.current.likely),
            rating ? amperes(*rating - circuit.current.likely) : std::string{},
            trips};
  }

  [[nodiscard]] std::string amperes(units::Current current) const {
    return text::quantityText(m_book, "current_a", current.si(), {true});
  }

  const SiteAnswer& m_answer;
  const text::Phrasebook& m_book;
  Page m_page;
  std::set<std::size_t> m_told;
};

}  // namespace

std::string assessPage(const SiteAnswer& answer, const text::Phrasebook& book, bool color) {
  return AssessPage(answer, book, color).written();
}

}  // namespace cordreach::console
