// SPDX-License-Identifier: GPL-3.0-or-later
#include "survey/plan_dialog.h"

#include <QDialogButtonBox>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "look/look.h"
#include "panels/field_row.h"
#include "shell/say.h"

namespace cordreach::app {

namespace {
constexpr double kWidthPx = 460;
}

PlanDialog::PlanDialog(const text::Phrasebook& book, const std::string& code, QWidget* parent)
    : QDialog(parent), m_book(book) {
  setWindowTitle(say(book, code + ".title"));
  auto* column = new QVBoxLayout(this);
  column->setSpacing(8);
  auto* explanation = new QLabel(say(book, code + ".explanation"), this);
  explanation->setTextFormat(Qt::PlainText);
  explanation->setWordWrap(true);
  column->addWidget(explanation);
  m_middle = new QVBoxLayout;
  m_middle->setSpacing(6);
  column->addLayout(m_middle, 1);
  m_fault = new QLabel(this);
  m_fault->setTextFormat(Qt::PlainText);
  m_fault->setWordWrap(true);
  QPalette palette = m_fault->palette();
  palette.setColor(QPalette::WindowText, look::severityColors(rules::Severity::Danger, look::tokens().dark).asText);
  m_fault->setPalette(palette);
  m_fault->hide();
  column->addWidget(m_fault);
  auto* buttons = new QDialogButtonBox(this);
  buttons->addButton(say(book, code + ".deed"), QDialogButtonBox::AcceptRole)->setDefault(true);
  buttons->addButton(say(book, "panel.cancel"), QDialogButtonBox::RejectRole);
  column->addWidget(buttons);
  connect(buttons, &QDialogButtonBox::accepted, this, &PlanDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
}

void PlanDialog::add(QWidget* widget, int stretch) { m_middle->addWidget(widget, stretch); }

FieldRow* PlanDialog::add(Field field) {
  // Nothing is written before the deed; a field without a writer would stand there switched off.
  field.write = [](const site::Site&, std::string_view) { return base::Result<site::Edit>(site::Edit{}); };
  auto* row = new FieldRow(field, m_book, this);
  m_middle->addWidget(row);
  m_rows.push_back(row);
  return row;
}

FieldRow* PlanDialog::row(const std::string& key) const {
  for (FieldRow* row : m_rows) {
    if (row->field().key == key) return row;
  }
  return nullptr;
}

// Lines that wrap need more height than a layout asks for before it knows its width.
void PlanDialog::showEvent(QShowEvent* event) {
  const int wide = std::max(width(), look::scaled(kWidthPx));
  resize(wide, std::max(height(), layout()->totalHeightForWidth(wide)));
  QDialog::showEvent(event);
}

void PlanDialog::accept() {
  if (m_deed) {
    m_fault->hide();
    const base::Result<DeedEnd> end = m_deed();
    if (!end) {
      m_fault->setText(sentenceOf(m_book, end.error()));
      m_fault->setAccessibleName(m_fault->text());
      m_fault->show();
    }
    if (!end || end.value() == DeedEnd::GivenUp) return;
  }
  QDialog::accept();
}

}  // namespace cordreach::app
