// SPDX-License-Identifier: GPL-3.0-or-later
// The whole field: every gauge against every length, each cell with its verdict by mark, word and ground, and the limit
// that decides it. A heavy line is the edge of what is sound. Arrows and the pointer go from cell to cell.
#pragma once

#include <QTableView>

#include "desk/field_model.h"

namespace cordreach::app {

class FieldView : public QTableView {
  Q_OBJECT

 public:
  explicit FieldView(CordModel& model, QWidget* parent = nullptr);

  // The cell that is pointed at, else the one that was arrowed to, else that of the chosen cord.
  [[nodiscard]] std::optional<CordCell> explained() const;
  [[nodiscard]] QSize sizeHint() const override;

 signals:
  void explainedChanged();

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;

 private:
  void fit();
  void follow();
  void rename();
  void paintEdge(QPainter& painter) const;
  [[nodiscard]] bool isSound(int row, int column) const;

  CordModel& m_model;
  FieldModel* m_cells;
  std::optional<CordCell> m_pointed;
  bool m_arrowed = false;  // the current cell was gone to by hand
};

}  // namespace cordreach::app
