// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/field_model.h"

#include "desk/cell_words.h"
#include "desk/cord_words.h"

namespace cordreach::app {

FieldModel::FieldModel(CordModel& model, QObject* parent) : QAbstractTableModel(parent), m_model(model) {
  connect(&model, &CordModel::answerChanged, this, [this] {
    emit dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
    emit headerDataChanged(Qt::Horizontal, 0, columnCount() - 1);
    emit headerDataChanged(Qt::Vertical, 0, rowCount() - 1);
  });
}

int FieldModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(m_model.grid().sizes.size());
}

int FieldModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(m_model.grid().lengths.size());
}

QVariant FieldModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  if (role == Qt::DisplayRole) return cellWords(m_model, cellOf(index)).head;
  if (role == Qt::AccessibleTextRole || role == Qt::ToolTipRole) return cellWords(m_model, cellOf(index)).spoken;
  return {};
}

QVariant FieldModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (role != Qt::DisplayRole && role != Qt::AccessibleTextRole) return {};
  const auto at = static_cast<std::size_t>(section);
  const CordGrid& grid = m_model.grid();
  if (orientation == Qt::Vertical) return gaugeText(m_model.book(), grid.sizes.at(at));
  return lengthText(m_model.book(), grid.lengths.at(at));
}

}  // namespace cordreach::app
