// SPDX-License-Identifier: GPL-3.0-or-later
// Typing in a cell: a line that completes what may stand there. What was refused comes back to be mended, not lost.
#pragma once

#include <QPersistentModelIndex>
#include <QStyledItemDelegate>
#include <functional>
#include <vector>

class QLineEdit;

namespace cordreach::app {

class CellEditor : public QStyledItemDelegate {
  Q_OBJECT

 public:
  using Choices = std::function<std::vector<std::string>(const QModelIndex& index)>;

  explicit CellEditor(Choices choices, QObject* parent = nullptr);

  // The cell whose text was not taken last, once.
  [[nodiscard]] QModelIndex takeRefused();
  // What was refused is not wanted any more.
  void giveUp() { m_refused = {}; }

  QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  void setEditorData(QWidget* editor, const QModelIndex& index) const override;
  void setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const override;
  // Return while the completions are open takes the one that is chosen there, and ends the edit as it does without.
  void finishFromPopup(QLineEdit* line);
  void updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                            const QModelIndex& index) const override;

 private:
  struct Refused {
    QPersistentModelIndex index;
    QString text;
  };

  Choices m_choices;
  mutable Refused m_refused;
  mutable bool m_isFresh = false;  // refused since takeRefused()
};

}  // namespace cordreach::app
