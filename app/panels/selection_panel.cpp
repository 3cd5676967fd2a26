// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/selection_panel.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QVBoxLayout>

#include "look/look.h"
#include "panels/delete_things.h"
#include "panels/link_button.h"
#include "panels/names.h"
#include "panels/new_things.h"
#include "panels/place_list.h"
#include "panels/property_fields.h"
#include "panels/property_form.h"
#include "shell/question.h"
#include "shell/say.h"

namespace cordreach::app {

namespace {

constexpr std::size_t kMostTogether = 200;  // the fields of more take longer than a hand is still

base::Arguments countsOf(const GoneAlong& along) {
  base::Arguments counts;
  const auto add = [&](const char* name, std::size_t count) {
    if (count > 0) counts.push_back({name, static_cast<double>(count)});
  };
  add("panels", along.panels);
  add("circuits", along.circuits);
  add("runs", along.runs);
  add("loads", along.loads);
  add("hookups", along.hookups);
  add("extensions", along.extensions);
  add("unassigned", along.unassigned);
  add("acceptances", along.acceptances);
  return counts;
}

// One line a kind of thing, so that no sentence has to join them.
QString alongText(const text::Phrasebook& book, const GoneAlong& along) {
  QString text = say(book, "panel.delete.along");
  for (const base::Argument& count : countsOf(along)) {
    text += QStringLiteral("\n") + say(book, "panel.delete." + count.name, {{"n", std::get<double>(count.value)}});
  }
  return text;
}

}  // namespace

SelectionPanel::SelectionPanel(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
  m_title = new QLabel(this);
  m_title->setTextFormat(Qt::PlainText);
  m_title->setWordWrap(true);
  m_empty = new QLabel(this);
  m_empty->setWordWrap(true);
  m_dark = new LinkButton({}, this);
  m_dark->setObjectName("dark");
  connect(m_dark, &LinkButton::clicked, this, [this] {
    if (const auto single = m_session.selection.single()) emit darkWanted(*single);
  });
  m_form = new PropertyForm(session, this);
  m_copy = new QPushButton(this);
  m_delete = new QPushButton(this);
  auto* buttons = new QHBoxLayout;
  buttons->addWidget(m_copy);
  buttons->addWidget(m_delete);
  buttons->addStretch();
  auto* inside = new QWidget(this);
  auto* inner = new QVBoxLayout(inside);
  inner->setContentsMargins(0, 0, 8, 0);
  inner->addWidget(m_form);
  inner->addLayout(buttons);
  inner->addStretch();
  auto* scroll = new QScrollArea(this);
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll->setFocusPolicy(Qt::NoFocus);
  scroll->setWidget(inside);
  auto* outer = new QVBoxLayout(this);
  outer->setContentsMargins(0, 0, 0, 0);
  outer->setSpacing(8);
  outer->addWidget(m_title);
  outer->addWidget(m_dark);
  outer->addWidget(m_empty);
  outer->addWidget(scroll, 1);
  connect(m_copy, &QPushButton::clicked, this, &SelectionPanel::copyChosen);
  connect(m_delete, &QPushButton::clicked, this, &SelectionPanel::deleteChosen);
  connect(&session.selection, &Selection::changed, this, [this, scroll] {
    rebuild();
    scroll->verticalScrollBar()->setValue(0);
  });
  connect(&session.document, &Document::changed, this, &SelectionPanel::rebuild);
  nameControls();
  rebuild();
}

void SelectionPanel::nameControls() {
  const text::Phrasebook& book = m_session.book;
  setAccessibleName(say(book, "panel.selection"));
  m_title->setFont(look::font(look::Type::HeadBold));
  m_copy->setText(say(book, "panel.copy"));
  m_delete->setText(say(book, "panel.delete"));
  m_dark->setText(say(book, "place.dark.link"));
}

QString SelectionPanel::titleOf() const {
  const auto& chosen = m_session.selection.chosen();
  const site::Site& site = m_session.document.site();
  if (chosen.empty()) return say(m_session.book, "panel.whole_site");
  if (chosen.size() == 1) return QString::fromStdString(subjectName(m_session.book, site, chosen.front()));
  return say(m_session.book, "panel.chosen", {{"n", static_cast<double>(chosen.size())}});
}

void SelectionPanel::rebuild() {
  const site::Site& site = m_session.document.site();
  const auto& chosen = m_session.selection.chosen();
  m_title->setText(titleOf());
  const bool tooMany = chosen.size() > kMostTogether;
  FieldGroups groups;
  if (chosen.empty()) groups = siteFields(site, m_session.book);
  if (!chosen.empty() && !tooMany) groups = commonFieldsOf(site, chosen, m_session.book);
  m_empty->setText(say(m_session.book, tooMany ? "panel.too_many" : "panel.several_kinds"));
  m_empty->setVisible(groups.empty() && chosen.size() > 1);
  QString about;
  for (const rules::Subject& subject : chosen) {
    about += QString::number(static_cast<int>(subject.kind)) + QString::fromStdString(subject.id) + QLatin1Char('\n');
  }
  m_form->show(about, std::move(groups));
  const auto single = m_session.selection.single();
  m_dark->setVisible(single && !breakersOf(site, *single).empty());
  m_copy->setVisible(!chosen.empty());
  m_delete->setVisible(!chosen.empty());
}

void SelectionPanel::deleteChosen() {
  const auto chosen = m_session.selection.chosen();
  if (chosen.empty()) return;
  const Deletion deletion = deletionOf(m_session.document.site(), chosen);
  if (!deletion.along.nothing()) {
    const Question question{say(m_session.book, "panel.delete.ask", {{"name", titleOf().toStdString()}}),
                            alongText(m_session.book, deletion.along),
                            {say(m_session.book, "panel.delete"), say(m_session.book, "panel.cancel")}};
    if (ask(this, question) != 0) return;
  }
  m_session.selection.clear();
  const auto done = m_session.document.apply(deletion.edit);
  if (!done) emit refused(sentenceOf(m_session.book, done.error()));
}

void SelectionPanel::copyChosen() {
  const site::Edit edit = copyOf(m_session.document.site(), m_session.selection.chosen());
  if (edit.changes.empty()) return;
  const auto done = m_session.document.apply(edit);
  if (!done) {
    emit refused(sentenceOf(m_session.book, done.error()));
    return;
  }
  if (const auto subject = addedBy(edit)) m_session.selection.choose({*subject});
}

void SelectionPanel::changeEvent(QEvent* event) {
  const bool isOtherLook = event->type() == QEvent::LanguageChange || event->type() == QEvent::FontChange ||
                           event->type() == QEvent::PaletteChange;
  if (isOtherLook) {
    m_form->forget();
    nameControls();
    rebuild();
  }
  QWidget::changeEvent(event);
}

}  // namespace cordreach::app
