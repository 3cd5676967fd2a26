// SPDX-License-Identifier: GPL-3.0-or-later
// How a cell of the field and its row's head are painted.
#pragma once

#include <QHeaderView>
#include <QStyledItemDelegate>

#include "desk/cell_words.h"
#include "desk/field_model.h"

namespace cordreach::app {

class FieldPainting : public QStyledItemDelegate {
  Q_OBJECT

 public:
  FieldPainting(const FieldModel& cells, QObject* parent);
  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;

 private:
  void paintWords(QPainter& painter, const QRect& box, const CellWords& words) const;
  void paintCart(QPainter& painter, const QRect& box, const CordCell& cell) const;

  const FieldModel& m_cells;
};

// The lengths over the columns.
class LengthHeader : public QHeaderView {
  Q_OBJECT

 public:
  LengthHeader(const FieldModel& cells, QWidget* parent);
  [[nodiscard]] QSize sizeHint() const override;

 protected:
  void paintSection(QPainter* painter, const QRect& box, int section) const override;

 private:
  const FieldModel& m_cells;
};

// The gauge with a disc as large as its copper.
class GaugeHeader : public QHeaderView {
  Q_OBJECT

 public:
  GaugeHeader(const FieldModel& cells, QWidget* parent);
  [[nodiscard]] QSize sizeHint() const override;

 protected:
  void paintSection(QPainter* painter, const QRect& box, int section) const override;

 private:
  const FieldModel& m_cells;
};

}  // namespace cordreach::app
