// SPDX-License-Identifier: GPL-3.0-or-later
#include "map/row_bar.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QSignalBlocker>
#include <algorithm>
#include <array>
#include <utility>

#include "map/map_canvas.h"
#include "panels/field_kinds.h"
#include "panels/field_text.h"
#include "panels/plain_controls.h"
#include "shell/say.h"

namespace cordreach::app {
namespace {

const std::array<std::pair<NumberBy, const char*>, 3> kBy{{{NumberBy::Floor, "map.row.by_floor"},
                                                           {NumberBy::Room, "map.row.by_room"},
                                                           {NumberBy::Building, "map.row.by_building"}}};
constexpr double kShortFieldPx = 76;
constexpr double kLabelFieldPx = 96;

QLabel* wordFor(QWidget* buddy, QWidget* parent) {
  auto* label = new QLabel(parent);
  label->setTextFormat(Qt::PlainText);
  label->setBuddy(buddy);
  return label;
}

}  // namespace

RowBar::RowBar(MapCanvas& canvas, QWidget* parent)
    : QWidget(parent),
      m_canvas(canvas),
      m_spacing(new QLineEdit(this)),
      m_by(new ChoiceBox(this)),
      m_label(new QLineEdit(this)),
      m_receptacle(new ChoiceBox(this)) {
  m_spacingWord = wordFor(m_spacing, this);
  m_byWord = wordFor(m_by, this);
  m_labelWord = wordFor(m_label, this);
  m_receptacleWord = wordFor(m_receptacle, this);
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(8);
  const std::initializer_list<std::pair<QLabel*, QWidget*>> pairs{
      {m_spacingWord, m_spacing}, {m_byWord, m_by}, {m_labelWord, m_label}, {m_receptacleWord, m_receptacle}};
  for (const auto& [word, editor] : pairs) {
    row->addWidget(word);
    row->addWidget(editor);
  }
  row->addStretch(1);
  setFocusProxy(m_spacing);
  setTabOrder(m_spacing, m_by);
  setTabOrder(m_by, m_label);
  setTabOrder(m_label, m_receptacle);
  connect(m_spacing, &QLineEdit::editingFinished, this, &RowBar::takeSpacing);
  connect(m_label, &QLineEdit::textEdited, this,
          [this](const QString& typed) { m_canvas.row().label = tidied(typed.toStdString()); });
  connect(m_by, &ChoiceBox::activated, this, [this](int index) {
    m_canvas.row().by = kBy.at(static_cast<std::size_t>(index)).first;
    m_canvas.row().label.clear();
    refresh();
  });
  connect(m_receptacle, &ChoiceBox::activated, this,
          [this](int index) { m_canvas.row().receptacle = m_receptacle->itemData(index).toString().toStdString(); });
  connect(&canvas, &MapCanvas::rowChanged, this, &RowBar::refresh);
  reword();
}

void RowBar::reword() {
  const text::Phrasebook& book = m_canvas.session().book;
  m_spacingWord->setText(say(book, "map.row.spacing"));
  m_byWord->setText(say(book, "map.row.by"));
  m_labelWord->setText(say(book, "map.row.label"));
  m_receptacleWord->setText(say(book, "map.row.receptacle"));
  const std::initializer_list<std::pair<QLabel*, QWidget*>> pairs{
      {m_spacingWord, m_spacing}, {m_byWord, m_by}, {m_labelWord, m_label}, {m_receptacleWord, m_receptacle}};
  for (const auto& [word, editor] : pairs) editor->setAccessibleName(word->text());
  m_spacing->setFixedWidth(look::scaled(kShortFieldPx));
  m_label->setFixedWidth(look::scaled(kLabelFieldPx));
  fillChoices();
  refresh();
}

void RowBar::fillChoices() {
  const text::Phrasebook& book = m_canvas.session().book;
  const QSignalBlocker quiet(m_receptacle);
  m_by->clear();
  for (const auto& [by, code] : kBy) m_by->addItem(say(book, code));
  m_receptacle->clear();
  m_receptacle->addItem(say(book, "panel.dont_know"), QString());
  for (const FieldChoice& choice : receptacleChoices()) {
    m_receptacle->addItem(QString::fromStdString(choice.text), QString::fromStdString(choice.key));
  }
}

void RowBar::refresh() {
  const RowSettings& row = m_canvas.row();
  m_spacing->setText(QString::fromStdString(exactText(m_canvas.session().book, row.spacing)));
  m_label->setText(QString::fromStdString(row.label));
  for (std::size_t i = 0; i < kBy.size(); ++i) {
    if (kBy[i].first == row.by) m_by->setCurrentIndex(static_cast<int>(i));
  }
  m_receptacle->setCurrentIndex(std::max(0, m_receptacle->findData(QString::fromStdString(row.receptacle))));
  // By room it depends on where the row begins.
  const bool isKnown = m_canvas.floor() && row.by != NumberBy::Room;
  m_label->setPlaceholderText(
      isKnown ? QString::fromStdString(nextLabelBy(m_canvas.session().document.site(), row.by, {*m_canvas.floor(), {}}))
              : QString());
}

// What can't be read is said, and stays to be put right.
void RowBar::takeSpacing() {
  const text::Phrasebook& book = m_canvas.session().book;
  const auto read = readText<units::Length>(book, m_spacing->text().toStdString());
  const base::Error tooShort{"row.bad_spacing", {}, {}};
  if (!read.ok() || read.value() <= units::Length{}) {
    emit m_canvas.told(sentenceOf(book, read.ok() ? tooShort : read.error()));
    return;
  }
  m_canvas.row().spacing = read.value();
}

}  // namespace cordreach::app
