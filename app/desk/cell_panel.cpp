// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/cell_panel.h"

#include <QEvent>
#include <QLabel>
#include <QPainter>
#include <QVBoxLayout>

#include "desk/cart_rows.h"
#include "desk/cell_words.h"
#include "desk/field_view.h"
#include "desk/limit_bar.h"
#include "look/look.h"
#include "look/severity_mark.h"
#include "shell/say.h"
#include "study/assumptions.h"
#include "text/severity_text.h"

namespace cordreach::app {

namespace {

constexpr std::size_t kLimits = 5;
constexpr int kMark = 20;

QPixmap markOf(rules::Severity severity, double ratio) {
  const int side = look::scaled(kMark);
  QPixmap mark(QSize(side, side) * ratio);
  mark.setDevicePixelRatio(ratio);
  mark.fill(Qt::transparent);
  QPainter painter(&mark);
  painter.setRenderHint(QPainter::Antialiasing);
  look::paintSeverityMark(painter, QRectF(0, 0, side, side), severity, look::tokens().dark);
  return mark;
}

}  // namespace

CellPanel::CellPanel(CordModel& model, const FieldView& field, QWidget* parent)
    : QWidget(parent),
      m_model(model),
      m_field(field),
      m_head(new QLabel(this)),
      m_line(new QLabel(this)),
      m_near(new QLabel(this)),
      m_cartHead(new QLabel(this)),
      m_cartRows(new QWidget(this)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 4, 0);
  column->setSpacing(8);
  for (QLabel* label : {m_head, m_line, m_near}) {
    label->setWordWrap(true);
    column->addWidget(label);
  }
  for (std::size_t i = 0; i < kLimits; ++i) {
    auto* bar = new LimitBar(this);
    m_bars.push_back(bar);
    column->addWidget(bar);
  }
  column->addSpacing(8);
  m_cartHead->setWordWrap(true);
  column->addWidget(m_cartHead);
  m_cart = new QVBoxLayout(m_cartRows);
  m_cart->setContentsMargins(0, 0, 0, 0);
  m_cart->setSpacing(6);
  column->addWidget(m_cartRows);
  column->addStretch(1);
  connect(&model, &CordModel::answerChanged, this, &CellPanel::refresh);
  connect(&field, &FieldView::explainedChanged, this, &CellPanel::showCandidate);
  dress();
  refresh();
}

void CellPanel::dress() {
  m_head->setFont(look::font(look::Type::HeadBold));
  m_line->setFont(look::font(look::Type::Body));
  m_near->setFont(look::font(look::Type::Caption));
  m_cartHead->setFont(look::font(look::Type::HeadBold));
}

void CellPanel::refresh() {
  showCandidate();
  showCart();
}

void CellPanel::showCandidate() {
  const text::Phrasebook& book = m_model.book();
  const auto cell = m_field.explained();
  const CordAnswer* answer = m_model.answer();
  const planning::CordCandidate* candidate = cell ? m_model.grid().at(cell->row, cell->column) : nullptr;
  // Of the cord that is chosen its own figures stand here, not those of stock like it.
  if (answer != nullptr && answer->advice.choice && (!cell || m_model.chosenCell() == cell)) {
    candidate = &answer->advice.candidates[*answer->advice.choice];
  }
  m_near->setVisible(candidate != nullptr);
  m_near->setText(say(book, "desk.near"));
  if (candidate == nullptr) {
    m_head->setText(say(book, "desk.no_cell"));
    m_line->setText(say(book, "desk.no_cell.how"));
    for (LimitBar* bar : m_bars) bar->hide();
    return;
  }
  m_head->setText(candidateName(book, *candidate));
  QString line = QString::fromStdString(text::signalWord(book, candidate->verdict));
  const QString why = candidateLine(book, *candidate);
  if (!why.isEmpty()) line += QStringLiteral(": ") + why;
  m_line->setText(line);
  for (std::size_t i = 0; i < m_bars.size(); ++i) {
    const bool there = i < candidate->limits.size();
    m_bars[i]->setVisible(there);
    if (!there) continue;
    const LimitWords words = limitWords(book, candidate->limits[i]);
    m_bars[i]->setWords(words, words.name + ": " + words.value);
  }
}

void CellPanel::showCart() {
  while (QLayoutItem* item = m_cart->takeAt(0)) {
    item->widget()->deleteLater();
    item->widget()->hide();
    delete item;
  }
  const text::Phrasebook& book = m_model.book();
  const CordAnswer* answer = m_model.answer();
  const bool isCart = m_model.inputs().cordsBy == CordsBy::Cart;
  const bool shown = answer != nullptr && isCart && !answer->advice.candidates.empty();
  m_cartHead->setVisible(shown);
  m_cartHead->setText(say(book, "desk.cart"));
  if (!shown) return;
  const units::WireSize own = study::sizeOf(answer->asked.question.inlet.cord);
  for (const CartRow& one : cartRows(book, answer->advice, own)) addRow(one);
}

void CellPanel::addRow(const CartRow& one) {
  auto* row = new QWidget(m_cartRows);
  auto* line = new QHBoxLayout(row);
  line->setContentsMargins(0, 0, 0, 0);
  auto* mark = new QLabel(row);
  mark->setPixmap(markOf(one.severity, devicePixelRatioF()));
  mark->setFixedWidth(look::scaled(kMark));
  const QString signal = QString::fromStdString(text::signalWord(m_model.book(), one.severity));
  mark->setAccessibleName(signal);
  auto* words = new QLabel(one.words, row);
  words->setTextFormat(Qt::PlainText);
  words->setWordWrap(true);
  words->setAccessibleName(signal + QStringLiteral(", ") + one.words);
  line->addWidget(mark, 0, Qt::AlignTop);
  line->addWidget(words, 1);
  m_cart->addWidget(row);
}

QString CellPanel::spoken() const {
  QStringList parts{m_head->text(), m_line->text()};
  for (const LimitBar* bar : m_bars) {
    if (!bar->isHidden()) parts << bar->accessibleName();
  }
  return parts.join(QStringLiteral(". "));
}

void CellPanel::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange) dress();
  if (event->type() == QEvent::LanguageChange || event->type() == QEvent::FontChange ||
      event->type() == QEvent::PaletteChange) {
    refresh();
  }
}

}  // namespace cordreach::app
