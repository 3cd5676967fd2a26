// SPDX-License-Identifier: GPL-3.0-or-later
// A against B at the clock's time: every figure of both sides, as a small table.
#pragma once

#include <QWidget>
#include <array>
#include <vector>

#include "heat/heat_model.h"
#include "text/phrasebook.h"

namespace cordreach::app {

class FigureTable : public QWidget {
  Q_OBJECT

 public:
  FigureTable(HeatModel& model, const text::Phrasebook& book, QWidget* parent = nullptr);

  struct Row {
    QString name;
    std::array<QString, kSides> values;
  };
  [[nodiscard]] std::vector<Row> rows() const;
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

 protected:
  void paintEvent(QPaintEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  void describe();

  HeatModel& m_model;
  const text::Phrasebook& m_book;
};

}  // namespace cordreach::app
