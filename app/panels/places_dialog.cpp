// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/places_dialog.h"

#include <QDialogButtonBox>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "look/look.h"
#include "shell/say.h"

namespace cordreach::app {

namespace {

constexpr double kWidthPx = 400;
constexpr double kHeightPx = 560;
constexpr int kRowGap = 2;

QLabel* sentence(QWidget* parent) {
  auto* label = new QLabel(parent);
  label->setTextFormat(Qt::PlainText);
  label->setWordWrap(true);
  return label;
}

}  // namespace

PlacesDialog::PlacesDialog(Session& session, Make make, QWidget* parent)
    : QDialog(parent),
      m_make(std::move(make)),
      m_head(sentence(this)),
      m_note(sentence(this)),
      m_always(sentence(this)),
      m_list(new QListWidget(this)),
      m_book(session.book) {
  resize(look::scaled(kWidthPx), look::scaled(kHeightPx));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(20, 20, 20, 16);
  column->setSpacing(10);
  m_list->setWordWrap(true);
  m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  m_list->setUniformItemSizes(false);
  m_list->setSpacing(kRowGap);
  column->addWidget(m_head);
  column->addWidget(m_list, 1);
  column->addWidget(m_note);
  column->addWidget(m_always);
  auto* buttons = new QDialogButtonBox(this);
  QPushButton* close = buttons->addButton(say(m_book, "panel.close"), QDialogButtonBox::RejectRole);
  close->setAutoDefault(false);  // Return goes to the place
  column->addWidget(buttons);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  connect(m_list, &QListWidget::itemClicked, this, [this] { go(m_list->currentRow()); });
  connect(m_list, &QListWidget::itemActivated, this, [this] { go(m_list->currentRow()); });
  connect(&session.document, &Document::changed, this, &PlacesDialog::fill);
  connect(&session.judge, &JudgeService::judged, this, &PlacesDialog::fill);
  fill();
  m_list->setFocus();
}

QString PlacesDialog::head() const { return m_head->text(); }
QString PlacesDialog::note() const { return m_note->text(); }

void PlacesDialog::fill() {
  const int before = m_list->currentRow();
  m_shown = m_make();
  setWindowTitle(m_shown.title);
  m_head->setText(m_shown.head);
  m_note->setText(m_shown.note);
  m_note->setVisible(!m_shown.note.isEmpty());
  m_always->setFont(look::font(look::Type::Caption));
  m_always->setText(say(m_book, "always"));
  m_list->setAccessibleName(m_shown.title);
  m_list->clear();
  for (const PlaceRow& row : m_shown.rows) {
    auto* item = new QListWidgetItem(row.text, m_list);
    if (row.subject) continue;
    item->setFlags(Qt::NoItemFlags);
    item->setFont(look::font(look::Type::BodyBold));
    item->setForeground(look::tokens().ink);
  }
  const auto isPlace = [](const PlaceRow& row) { return row.subject.has_value(); };
  const auto first = std::find_if(m_shown.rows.begin(), m_shown.rows.end(), isPlace) - m_shown.rows.begin();
  const bool isStill = before >= 0 && before < m_list->count() && isPlace(m_shown.rows[std::size_t(before)]);
  m_list->setCurrentRow(isStill ? before : static_cast<int>(first));
}

void PlacesDialog::go(int row) {
  if (row < 0 || row >= static_cast<int>(m_shown.rows.size())) return;
  const auto& subject = m_shown.rows[static_cast<std::size_t>(row)].subject;
  if (subject) emit wanted(*subject);
}

}  // namespace cordreach::app
