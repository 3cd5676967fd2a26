// SPDX-License-Identifier: GPL-3.0-or-later
// The right column of the place Cord: how near each limit is for the cell that is looked at, and the cart's cords that
// are long enough, each with its verdict.
#pragma once

#include <QWidget>
#include <vector>

#include "desk/cord_model.h"

class QLabel;
class QVBoxLayout;

namespace cordreach::app {

struct CartRow;
class FieldView;
class LimitBar;

class CellPanel : public QWidget {
  Q_OBJECT

 public:
  CellPanel(CordModel& model, const FieldView& field, QWidget* parent = nullptr);

  // What is said of the cell, for the reader and for tests.
  [[nodiscard]] QString spoken() const;
  void refresh();

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void dress();
  void showCandidate();
  void showCart();
  void addRow(const CartRow& one);

  CordModel& m_model;
  const FieldView& m_field;
  QLabel* m_head;
  QLabel* m_line;
  QLabel* m_near;
  std::vector<LimitBar*> m_bars;
  QLabel* m_cartHead;
  QVBoxLayout* m_cart;
  QWidget* m_cartRows;
};

}  // namespace cordreach::app
