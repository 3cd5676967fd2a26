// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/field_row.h"

#include <QEvent>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QSignalBlocker>
#include <QToolButton>

#include "look/look.h"
#include "panels/plain_controls.h"
#include "shell/say.h"

namespace cordreach::app {

namespace {

constexpr double kLabelPx = 104;
constexpr double kUnknownPx = 28;
constexpr double kStackedScale = 1.5;

QLabel* smallLabel(QWidget* parent, const QColor& color) {
  auto* label = new QLabel(parent);
  label->setTextFormat(Qt::PlainText);
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
  m_label->setTextFormat(Qt::PlainText);
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
  arrange(new QGridLayout(this));
  showValue();
}

// Large text has no room for two columns: the label then stands above.
void FieldRow::arrange(QGridLayout* grid) {
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setHorizontalSpacing(6);
  grid->setVerticalSpacing(2);
  const bool isStacked = look::present().textScale >= kStackedScale;
  const int editorRow = isStacked ? 1 : 0;
  const int editorColumn = isStacked ? 0 : 1;
  if (isStacked) {
    grid->addWidget(m_label, 0, 0, 1, 3);
  } else {
    m_label->setFixedWidth(look::scaled(kLabelPx));
    grid->addWidget(m_label, 0, 0);
  }
  const Qt::Alignment side = m_flag != nullptr ? Qt::AlignLeft : Qt::Alignment();
  const int endColumn = m_unknown != nullptr ? 2 : 3;
  grid->addWidget(editor(), editorRow, editorColumn, 1, endColumn - editorColumn, side);
  grid->setColumnStretch(1, 1);
  if (m_unknown != nullptr) {
    m_unknown->setFixedWidth(look::scaled(kUnknownPx));
    grid->addWidget(m_unknown, editorRow, 2);
  }
  grid->addWidget(m_note, 2, editorColumn, 1, 3 - editorColumn);
  grid->addWidget(m_fault, 3, 0, 1, 3);
}

void FieldRow::makeEditor() {
  if (m_field.kind == FieldKind::Flag) {
    m_flag = new TickBox(this);
    connect(m_flag, &TickBox::clicked, this, &FieldRow::committed);
    return;
  }
  if (m_field.kind == FieldKind::Choice) {
    m_choice = new ChoiceBox(this);
    connect(m_choice, &ChoiceBox::activated, this, &FieldRow::committed);
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

// Lists of all outlets are long: filled again only when they are others.
void FieldRow::fillChoices() {
  std::vector<FieldChoice> wanted;
  if (m_field.mixed) wanted.push_back({"\n", m_book.say("panel.several")});
  if (m_field.mayBeUnknown) wanted.push_back({"", m_book.say("panel.dont_know")});
  wanted.insert(wanted.end(), m_field.choices.begin(), m_field.choices.end());
  if (wanted == m_filled && m_choice->count() == static_cast<int>(wanted.size())) return;
  m_choice->clear();
  for (const FieldChoice& choice : wanted) {
    m_choice->addItem(QString::fromStdString(choice.text), QString::fromStdString(choice.key));
  }
  m_filled = std::move(wanted);
}

void FieldRow::showValue() {
  const QString text = QString::fromStdString(m_field.text);
  if (m_flag != nullptr) {
    m_flag->setTristate(m_field.mixed);
    m_flag->setCheckState(m_field.mixed ? Qt::PartiallyChecked : m_field.text == kYes ? Qt::Checked : Qt::Unchecked);
  }
  if (m_choice != nullptr) {
    const QSignalBlocker blocker(m_choice);
    fillChoices();
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
