// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/field_row.h"

#include <QCheckBox>
#include <QComboBox>
#include <QEvent>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QSignalBlocker>
#include <QToolButton>

#include "look/look.h"
#include "shell/say.h"

namespace cordreach::app {

namespace {

QLabel* smallLabel(QWidget* parent, const QColor& color) {
  auto* label = new QLabel(parent);
  label->setWordWrap(true);
  label->setFont(look::font(look::Type::Caption));
  QPalette palette = label->palette();
  palette.setColor(QPalette::WindowText, color);
  label->setPalette(palette);
  label->hide();
  return label;
}

}  // namespace

FieldRow::FieldRow(const Field& field, const text::Phrasebook& book, QWidget* parent)
    : QWidget(parent), m_field(field), m_book(book) {
  m_label = new QLabel(QString::fromStdString(field.label), this);
  m_label->setWordWrap(true);
  QPalette palette = m_label->palette();
  palette.setColor(QPalette::WindowText, look::tokens().ink2);
  m_label->setPalette(palette);
  makeEditor();
  m_label->setBuddy(editor());
  editor()->setAccessibleName(m_label->text());
  editor()->installEventFilter(this);
  editor()->setEnabled(static_cast<bool>(m_field.write));
  m_note = smallLabel(this, look::tokens().ink2);
  m_fault = smallLabel(this, look::severityColors(rules::Severity::Danger, look::tokens().dark).asText);
  auto* grid = new QGridLayout(this);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setHorizontalSpacing(8);
  grid->setVerticalSpacing(2);
  grid->setColumnStretch(0, 2);
  grid->setColumnStretch(1, 3);
  grid->addWidget(m_label, 0, 0);
  grid->addWidget(editor(), 0, 1);
  if (m_unknown != nullptr) grid->addWidget(m_unknown, 0, 2);
  grid->addWidget(m_note, 1, 1, 1, 2);
  grid->addWidget(m_fault, 2, 0, 1, 3);
  showValue();
}

void FieldRow::makeEditor() {
  if (m_field.kind == FieldKind::Flag) {
    m_flag = new QCheckBox(this);
    connect(m_flag, &QCheckBox::clicked, this, &FieldRow::committed);
    return;
  }
  if (m_field.kind == FieldKind::Choice) {
    m_choice = new QComboBox(this);
    m_choice->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_choice->setMinimumContentsLength(6);
    m_choice->setFocusPolicy(Qt::StrongFocus);
    connect(m_choice, &QComboBox::activated, this, &FieldRow::committed);
    return;
  }
  m_line = new QLineEdit(this);
  m_line->setReadOnly(m_field.kind == FieldKind::Fact);
  connect(m_line, &QLineEdit::editingFinished, this, &FieldRow::commitIfChanged);
  if (!m_field.mayBeUnknown) return;
  m_unknown = new QToolButton(this);
  m_unknown->setText(QStringLiteral("?"));
  m_unknown->setFocusPolicy(Qt::StrongFocus);
  m_unknown->setToolTip(say(m_book, "panel.dont_know"));
  m_unknown->setAccessibleName(say(m_book, "panel.dont_know_of", {{"field", m_field.label}}));
  connect(m_unknown, &QToolButton::clicked, this, &FieldRow::sayUnknown);
}

QWidget* FieldRow::editor() const {
  if (m_line != nullptr) return m_line;
  if (m_choice != nullptr) return m_choice;
  return m_flag;
}

void FieldRow::update(const Field& field) {
  const bool isBeingTyped = m_line != nullptr && (m_line->isModified() || !m_fault->isHidden());
  m_field = field;
  m_label->setText(QString::fromStdString(field.label));
  if (!isBeingTyped) showValue();
}

void FieldRow::showValue() {
  const QString text = QString::fromStdString(m_field.text);
  if (m_flag != nullptr) {
    m_flag->setTristate(m_field.mixed);
    m_flag->setCheckState(m_field.mixed ? Qt::PartiallyChecked : m_field.text == kYes ? Qt::Checked : Qt::Unchecked);
  }
  if (m_choice != nullptr) {
    const QSignalBlocker blocker(m_choice);
    m_choice->clear();
    if (m_field.mixed) m_choice->addItem(say(m_book, "panel.several"), QStringLiteral("\n"));
    if (m_field.mayBeUnknown) m_choice->addItem(say(m_book, "panel.dont_know"), QString());
    for (const FieldChoice& choice : m_field.choices) {
      m_choice->addItem(QString::fromStdString(choice.text), QString::fromStdString(choice.key));
    }
    int at = m_field.mixed ? 0 : m_choice->findData(text);
    if (at < 0) {
      m_choice->addItem(text, text);
      at = m_choice->count() - 1;
    }
    m_choice->setCurrentIndex(at);
    m_choice->setToolTip(m_choice->currentText());
  }
  if (m_line != nullptr) {
    m_line->setText(text);
    m_line->setCursorPosition(0);
    m_line->setModified(false);
    m_line->setPlaceholderText(m_field.mixed          ? say(m_book, "panel.several")
                               : m_field.mayBeUnknown ? say(m_book, "panel.dont_know")
                                                      : QString());
  }
  m_note->setText(m_field.guessed ? say(m_book, "panel.guessed") : QString());
  m_note->setVisible(m_field.guessed);
}

std::string FieldRow::typed() const {
  if (m_flag != nullptr) return m_flag->checkState() == Qt::Unchecked ? std::string() : std::string(kYes);
  if (m_choice != nullptr) return m_choice->currentData().toString().toStdString();
  return m_line->text().toStdString();
}

void FieldRow::showFault(const QString& sentence) {
  m_fault->setText(sentence);
  m_fault->setVisible(!sentence.isEmpty());
  editor()->setAccessibleDescription(sentence);
  if (sentence.isEmpty() && m_line != nullptr) m_line->setModified(false);
  if (sentence.isEmpty()) showValue();
}

void FieldRow::setTaken(const std::string& typed) {
  m_fault->hide();
  if (m_line == nullptr) return;
  m_line->setModified(false);
  m_field.text = typed;
}

void FieldRow::refuse(const std::string& typed, const QString& sentence) {
  showFault(sentence);
  if (m_line == nullptr) {
    showValue();
    return;
  }
  m_line->setText(QString::fromStdString(typed));
  m_line->setModified(true);
}

QString FieldRow::fault() const { return m_fault->isHidden() ? QString() : m_fault->text(); }

void FieldRow::commitIfChanged() {
  if (m_line->isModified()) emit committed();
}

void FieldRow::sayUnknown() {
  m_line->clear();
  m_line->setModified(true);
  emit committed();
}

bool FieldRow::eventFilter(QObject* watched, QEvent* event) {
  // A wheel over a list that nobody opened would change the building while scrolling past.
  if (event->type() == QEvent::Wheel && watched == m_choice) {
    event->ignore();
    return true;
  }
  if (event->type() == QEvent::KeyPress && watched == m_line) {
    const auto* key = static_cast<QKeyEvent*>(event);
    if (key->key() == Qt::Key_Escape && (m_line->isModified() || !m_fault->isHidden())) {
      showFault({});
      return true;
    }
  }
  return QWidget::eventFilter(watched, event);
}

}  // namespace cordreach::app
