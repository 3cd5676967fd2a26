// SPDX-License-Identifier: GPL-3.0-or-later
#include "listings/cell_editor.h"

#include <QAbstractItemView>
#include <QCompleter>
#include <QLineEdit>
#include <algorithm>

#include "look/look.h"

namespace cordreach::app {

namespace {

constexpr double kLeastWidthPx = 120;

}  // namespace

CellEditor::CellEditor(Choices choices, QObject* parent) : QStyledItemDelegate(parent), m_choices(std::move(choices)) {}

QModelIndex CellEditor::takeRefused() {
  if (!std::exchange(m_isFresh, false)) return {};
  return m_refused.index;
}

QWidget* CellEditor::createEditor(QWidget* parent, const QStyleOptionViewItem&, const QModelIndex& index) const {
  auto* line = new QLineEdit(parent);
  line->setFrame(false);
  line->setAutoFillBackground(true);
  const auto heading = index.model()->headerData(index.column(), Qt::Horizontal, Qt::DisplayRole).toString();
  line->setAccessibleName(heading);
  QStringList words;
  for (const std::string& choice : m_choices(index)) words << QString::fromStdString(choice);
  if (words.isEmpty()) return line;
  auto* completer = new QCompleter(words, line);
  completer->setCaseSensitivity(Qt::CaseInsensitive);
  completer->setFilterMode(Qt::MatchContains);
  completer->setMaxVisibleItems(12);
  line->setCompleter(completer);
  auto* self = const_cast<CellEditor*>(this);
  connect(line, &QLineEdit::returnPressed, self, [self, line] { self->finishFromPopup(line); });
  return line;
}

void CellEditor::finishFromPopup(QLineEdit* line) {
  QAbstractItemView* popup = line->completer()->popup();
  if (!popup->isVisible()) return;  // the view hears of Return itself
  if (popup->currentIndex().isValid()) line->setText(popup->currentIndex().data().toString());
  popup->hide();
  emit commitData(line);
  emit closeEditor(line, SubmitModelCache);
}

void CellEditor::setEditorData(QWidget* editor, const QModelIndex& index) const {
  auto* line = static_cast<QLineEdit*>(editor);
  const bool again = m_refused.index.isValid() && QModelIndex(m_refused.index) == index;
  line->setText(again ? m_refused.text : index.data(Qt::EditRole).toString());
  if (!again) line->selectAll();
}

void CellEditor::setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const {
  const QString text = static_cast<QLineEdit*>(editor)->text();
  const QPersistentModelIndex at(index);
  m_refused = {};
  if (text == index.data(Qt::EditRole).toString() || model->setData(index, text, Qt::EditRole)) return;
  m_refused = {at, text};
  m_isFresh = true;
}

void CellEditor::updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option, const QModelIndex&) const {
  QRect place = option.rect;
  place.setWidth(std::max(place.width(), look::scaled(kLeastWidthPx)));
  editor->setGeometry(place);
}

}  // namespace cordreach::app
