// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/find_dialog.h"

#include <QApplication>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "look/look.h"
#include "shell/say.h"

namespace cordreach::app {

namespace {

constexpr double kWidthPx = 460;
constexpr double kHeightPx = 420;
constexpr std::size_t kMostShown = 200;

}  // namespace

FindDialog::FindDialog(Session& session, QWidget* parent)
    : QDialog(parent),
      m_session(session),
      m_line(new QLineEdit(this)),
      m_list(new QListWidget(this)),
      m_said(new QLabel(this)) {
  resize(look::scaled(kWidthPx), look::scaled(kHeightPx));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(16, 16, 16, 12);
  column->setSpacing(8);
  column->addWidget(m_line);
  column->addWidget(m_list, 1);
  column->addWidget(m_said);
  m_list->setWordWrap(true);
  m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  m_said->setTextFormat(Qt::PlainText);
  m_said->setWordWrap(true);
  m_line->setClearButtonEnabled(true);
  m_line->installEventFilter(this);
  connect(m_line, &QLineEdit::textChanged, this, &FindDialog::find);
  connect(m_line, &QLineEdit::returnPressed, this, &FindDialog::go);
  connect(m_list, &QListWidget::itemClicked, this, &FindDialog::go);
  connect(m_list, &QListWidget::itemActivated, this, &FindDialog::go);
  connect(&session.document, &Document::changed, this, [this] {
    if (isVisible()) readSite();
  });
}

QString FindDialog::said() const { return m_said->text(); }

void FindDialog::begin() {
  const text::Phrasebook& book = m_session.book;
  setWindowTitle(say(book, "find.title"));
  m_line->setAccessibleName(say(book, "find.title"));
  m_line->setPlaceholderText(say(book, "find.hint"));
  m_list->setAccessibleName(say(book, "find.list"));
  m_said->setFont(look::font(look::Type::Caption));
  m_line->selectAll();
  readSite();
  show();
  raise();
  activateWindow();
  m_line->setFocus();
}

void FindDialog::readSite() {
  m_index = std::make_unique<ThingIndex>(m_session.book, m_session.document.site());
  find();
}

void FindDialog::find() {
  const text::Phrasebook& book = m_session.book;
  m_found = m_index->find(m_line->text());
  m_list->clear();
  for (std::size_t i = 0; i < std::min(m_found.size(), kMostShown); ++i) {
    const FoundThing& one = m_found[i];
    m_list->addItem(one.where.isEmpty() ? one.name : one.name + QStringLiteral(" – ") + one.where);
  }
  m_list->setCurrentRow(m_found.empty() ? -1 : 0);
  const bool isAsked = !m_line->text().trimmed().isEmpty();
  const base::Arguments arguments{{"n", static_cast<double>(m_found.size())},
                                  {"typed", m_line->text().trimmed().toStdString()}};
  m_said->setText(!isAsked          ? say(book, "find.ask")
                  : m_found.empty() ? say(book, "find.none", arguments)
                                    : say(book, "find.count", arguments));
  setAccessibleDescription(m_said->text());
}

// The line keeps the focus; these keys are the list's.
bool FindDialog::eventFilter(QObject* watched, QEvent* event) {
  if (watched != m_line || event->type() != QEvent::KeyPress) return QDialog::eventFilter(watched, event);
  const int key = static_cast<QKeyEvent*>(event)->key();
  if (key != Qt::Key_Up && key != Qt::Key_Down && key != Qt::Key_PageUp && key != Qt::Key_PageDown) return false;
  QApplication::sendEvent(m_list, event);
  return true;
}

void FindDialog::go() {
  const int row = m_list->currentRow();
  if (row < 0 || row >= static_cast<int>(m_found.size())) return;
  const rules::Subject thing = m_found[static_cast<std::size_t>(row)].thing;
  hide();
  emit wanted(thing);
}

}  // namespace cordreach::app
