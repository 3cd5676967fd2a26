// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/findings_panel.h"

#include <QDate>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>
#include <algorithm>

#include "look/look.h"
#include "panels/ask_dialog.h"
#include "panels/details_dialog.h"
#include "panels/finding_edits.h"
#include "panels/finding_groups.h"
#include "panels/finding_row.h"
#include "panels/link_button.h"
#include "shell/say.h"
#include "text/finding_text.h"

namespace cordreach::app {

namespace {

// More than fit on a few screens; the rest comes on asking, so that a building full of faults stays quick.
constexpr std::size_t kFirst = 40;

Field questionField(const text::Phrasebook& book, const std::string& key) {
  return {.key = key, .label = book.say("field." + key)};
}

}  // namespace

FindingsPanel::FindingsPanel(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
  m_head = new QLabel(this);
  m_head->setWordWrap(true);
  m_empty = new QLabel(this);
  m_empty->setWordWrap(true);
  m_always = new QLabel(this);
  m_always->setWordWrap(true);
  m_list = new QWidget(this);
  m_layout = new QVBoxLayout(m_list);
  m_layout->setContentsMargins(0, 0, 8, 0);
  m_layout->setSpacing(10);
  m_more = new LinkButton({}, this);
  auto* scroll = new QScrollArea(this);
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll->setFocusPolicy(Qt::NoFocus);
  scroll->setWidget(m_list);
  auto* outer = new QVBoxLayout(this);
  outer->setContentsMargins(0, 0, 0, 0);
  outer->setSpacing(8);
  outer->addWidget(m_head);
  outer->addWidget(m_empty);
  outer->addWidget(scroll, 1);
  outer->addWidget(m_more);
  outer->addWidget(m_always);
  connect(m_more, &LinkButton::clicked, this, [this] {
    m_showsAll = true;
    rebuild();
  });
  connect(&session.judge, &JudgeService::judged, this, &FindingsPanel::take);
  connect(&session.judge, &JudgeService::busyChanged, this, &FindingsPanel::freshen);
  connect(&session.document, &Document::changed, this, &FindingsPanel::freshen);
  connect(&session.document, &Document::supposed, this, &FindingsPanel::freshen);
  m_shown = session.judge.last();
  rebuild();
}

QString FindingsPanel::head() const { return m_head->text(); }

bool FindingsPanel::isStale() const {
  return m_shown == nullptr || m_shown->number < m_session.judge.latest() ||
         m_shown->site != m_session.document.shown();
}

void FindingsPanel::take(const std::shared_ptr<const Verdict>& verdict) {
  m_shown = verdict;
  rebuild();
}

void FindingsPanel::rebuild() {
  const text::Phrasebook& book = m_session.book;
  setAccessibleName(say(book, "panel.findings"));
  m_head->setFont(look::font(look::Type::HeadBold));
  m_always->setFont(look::font(look::Type::Caption));
  m_always->setText(say(book, "always"));
  m_empty->setText(say(book, "panel.findings.none"));
  while (QLayoutItem* item = m_layout->takeAt(0)) delete item;
  for (FindingRow* row : m_rows) {
    row->hide();
    row->deleteLater();
  }
  m_rows.clear();
  for (LinkButton* fold : m_folds) {
    fold->hide();
    fold->deleteLater();
  }
  m_folds.clear();
  const std::size_t count = m_shown ? m_shown->findings.size() : 0;
  const std::size_t shown = m_showsAll ? count : std::min(count, kFirst);
  m_rows.assign(shown, nullptr);
  layOut(shown);
  m_more->setText(say(book, "panel.findings.all", {{"n", static_cast<double>(count)}}));
  m_more->setVisible(shown < count);
  m_empty->setVisible(m_shown != nullptr && count == 0);
  freshen();
}

// What is about one thing stands together behind its worst, folded until it is asked for. Made in the order of the
// screen, which is that of Tab.
void FindingsPanel::layOut(std::size_t shown) {
  const auto groups = m_shown ? groupsOf(m_shown->findings, shown) : std::vector<FindingGroup>();
  for (const FindingGroup& group : groups) {
    addRow(group.findings.front());
    if (group.findings.size() > 1) addRest(group);
  }
  m_layout->addStretch();
}

void FindingsPanel::addRest(const FindingGroup& group) {
  auto* fold = new LinkButton(
      QString::fromStdString(restText(m_session.book, *m_shown->site, m_shown->findings, group)), m_list);
  auto* line = new QHBoxLayout;
  line->setContentsMargins(FindingRow::indent(), 0, 0, 0);
  line->addWidget(fold);
  m_layout->addLayout(line);
  m_folds.push_back(fold);
  for (std::size_t i = 1; i < group.findings.size(); ++i) addRow(group.findings[i]);
  const auto unfold = [this, group](bool open) {
    for (std::size_t i = 1; i < group.findings.size(); ++i) m_rows[group.findings[i]]->setVisible(open);
    if (open) {
      m_unfolded.insert(group.about.id);
    } else {
      m_unfolded.erase(group.about.id);
    }
  };
  fold->setCheckable(true);
  fold->setChecked(m_unfolded.contains(group.about.id));
  unfold(fold->isChecked());
  connect(fold, &LinkButton::toggled, this, unfold);
}

void FindingsPanel::addRow(std::size_t finding) {
  auto* row = new FindingRow({*m_shown, finding}, m_session.book, m_list);
  connect(row, &FindingRow::showAsked, this, [this, finding] { showSubject(finding); });
  connect(row, &FindingRow::numbersAsked, this, [this, finding] { showNumbers(finding); });
  connect(row, &FindingRow::doAsked, this, [this, finding] { mend(finding); });
  connect(row, &FindingRow::acceptAsked, this, [this, finding] { askToAccept(finding); });
  connect(row, &FindingRow::takeBackAsked, this, [this, finding] { takeBack(finding); });
  m_layout->addWidget(row);
  m_rows[finding] = row;
}

void FindingsPanel::freshen() {
  const bool stale = isStale();
  const double count = m_shown ? static_cast<double>(m_shown->findings.size()) : 0.0;
  base::Arguments arguments{{"n", count}};
  if (stale) arguments.push_back({"working", 1.0});
  m_head->setText(say(m_session.book, m_shown ? "panel.findings.head" : "panel.findings.first", arguments));
  m_empty->setEnabled(!stale);
  for (FindingRow* row : m_rows) row->setStale(stale);
}

void FindingsPanel::apply(const base::Result<site::Edit>& edit) {
  if (!edit.ok()) {
    emit refused(sentenceOf(m_session.book, edit.error()));
    return;
  }
  const auto done = m_session.document.apply(edit.value());
  if (!done) emit refused(sentenceOf(m_session.book, done.error()));
}

void FindingsPanel::showSubject(std::size_t finding) {
  const auto& subjects = m_shown->findings.at(finding).subjects;
  if (!subjects.empty()) m_session.selection.show(subjects.front());
}

void FindingsPanel::mend(std::size_t finding) {
  const auto verdict = m_shown;
  apply(triedAgain(m_session.document.site(), *verdict, finding, 0));
}

void FindingsPanel::askToAccept(std::size_t finding) {
  const rules::Finding found = m_shown->findings.at(finding);
  const text::Phrasebook& book = m_session.book;
  AskDialog dialog(
      book,
      {book.say("panel.accept.title"), text::wordsOf(book, found).text() + "\n\n" + book.say("panel.accept.explain"),
       book.say("panel.accept.deed")},
      {questionField(book, "accept_who"), questionField(book, "accept_reason")},
      [&](const Answers& answers) -> std::optional<base::Error> {
        const AcceptanceNote note{answers.at("accept_who"), answers.at("accept_reason"),
                                  QDate::currentDate().toString(Qt::ISODate).toStdString()};
        const auto edit = acceptEdit(m_session.document.site(), found, note);
        if (!edit.ok()) return edit.error();
        const auto done = m_session.document.apply(edit.value());
        return done ? std::nullopt : std::optional(done.error());
      },
      this);
  dialog.exec();
}

void FindingsPanel::takeBack(std::size_t finding) {
  const site::Acceptance* accepted = acceptanceOf(m_session.document.site(), m_shown->findings.at(finding));
  if (accepted != nullptr) apply(takeBackEdit(m_session.document.site(), accepted->id));
}

void FindingsPanel::showNumbers(std::size_t finding) {
  DetailsDialog dialog(m_shown, finding, m_session.book, this);
  dialog.exec();
}

void FindingsPanel::changeEvent(QEvent* event) {
  const bool isOtherLook = event->type() == QEvent::LanguageChange || event->type() == QEvent::FontChange ||
                           event->type() == QEvent::PaletteChange;
  if (isOtherLook) rebuild();
  QWidget::changeEvent(event);
}

}  // namespace cordreach::app
