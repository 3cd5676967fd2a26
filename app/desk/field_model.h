// SPDX-License-Identifier: GPL-3.0-or-later
// The field of gauges against lengths as a table, for the view and for the reader.
#pragma once

#include <QAbstractTableModel>

#include "desk/cord_model.h"

namespace cordreach::app {

class FieldModel : public QAbstractTableModel {
  Q_OBJECT

 public:
  explicit FieldModel(CordModel& model, QObject* parent = nullptr);

  [[nodiscard]] CordModel& cords() const { return m_model; }
  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 private:
  CordModel& m_model;
};

[[nodiscard]] inline CordCell cellOf(const QModelIndex& index) {
  return {static_cast<std::size_t>(index.row()), static_cast<std::size_t>(index.column())};
}

}  // namespace cordreach::app
