// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/ask_dialog.h"

#include <QDialogButtonBox>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "look/look.h"
#include "panels/field_row.h"
#include "shell/say.h"

namespace cordreach::app {

namespace {

constexpr double kWidthPx = 420;

QLabel* wrapped(const QString& text, QWidget* parent) {
  auto* label = new QLabel(text, parent);
  label->setTextFormat(Qt::PlainText);
  label->setWordWrap(true);
  return label;
}

}  // namespace

AskDialog::AskDialog(const text::Phrasebook& book, const Words& words, const std::vector<Field>& fields, Deed deed,
                     QWidget* parent)
    : QDialog(parent), m_book(book), m_deed(std::move(deed)) {
  setWindowTitle(QString::fromStdString(words.title));
  setMinimumWidth(look::scaled(kWidthPx));
  auto* layout = new QVBoxLayout(this);
  layout->setSpacing(8);
  if (!words.explanation.empty()) layout->addWidget(wrapped(QString::fromStdString(words.explanation), this));
  for (const Field& field : fields) {
    Field shown = field;
    // Nothing is written before the deed; a field without a writer would stand there switched off.
    shown.write = [](const site::Site&, std::string_view) { return base::Result<site::Edit>(site::Edit{}); };
    m_rows.push_back(new FieldRow(shown, book, this));
    layout->addWidget(m_rows.back());
  }
  m_fault = wrapped({}, this);
  QPalette palette = m_fault->palette();
  palette.setColor(QPalette::WindowText, look::severityColors(rules::Severity::Danger, look::tokens().dark).asText);
  m_fault->setPalette(palette);
  m_fault->hide();
  layout->addWidget(m_fault);
  layout->addStretch();
  auto* buttons = new QDialogButtonBox(this);
  QPushButton* yes = buttons->addButton(QString::fromStdString(words.deed), QDialogButtonBox::AcceptRole);
  yes->setDefault(true);
  buttons->addButton(say(book, "panel.cancel"), QDialogButtonBox::RejectRole);
  layout->addWidget(buttons);
  connect(buttons, &QDialogButtonBox::accepted, this, &AskDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  if (!m_rows.empty()) m_rows.front()->editor()->setFocus();
}

FieldRow* AskDialog::row(const std::string& key) const {
  for (FieldRow* row : m_rows) {
    if (row->field().key == key) return row;
  }
  return nullptr;
}

void AskDialog::accept() {
  Answers answers;
  for (const FieldRow* row : m_rows) answers[row->field().key] = row->typed();
  if (const auto fault = m_deed(answers)) {
    m_fault->setText(sentenceOf(m_book, *fault));
    m_fault->setAccessibleName(m_fault->text());
    m_fault->show();
    return;
  }
  QDialog::accept();
}

}  // namespace cordreach::app
