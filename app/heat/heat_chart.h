// SPDX-License-Identifier: GPL-3.0-or-later
// The curves with the clock over them. The clock is dragged anywhere on the curves, or moved by keys: arrows 1 min,
// with Shift 10, Home, End; Space plays. Where it stands, every value of that time is marked.
#pragma once

#include <QPixmap>
#include <QWidget>

#include "heat/curve_strips.h"
#include "heat/heat_plot.h"

namespace cordreach::app {

class HeatChart : public QWidget {
  Q_OBJECT

 public:
  HeatChart(HeatModel& model, const text::Phrasebook& book, QWidget* parent = nullptr);

  void setWishes(const PlotWishes& wishes);
  [[nodiscard]] const PlotWishes& wishes() const { return m_wishes; }
  [[nodiscard]] const HeatPlot& plot() const { return m_plot; }
  // While on, what is painted keeps its lines as lines: for a picture that can be scaled.
  void setVector(bool on) { m_vector = on; }
  [[nodiscard]] QSize sizeHint() const override;
  // With curves of 120 px and what stands above and below them.
  [[nodiscard]] QSize minimumSizeHint() const override;
  // The same with curves of 160 px.
  [[nodiscard]] int comfortableHeight() const;

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void renew();
  void build();
  [[nodiscard]] int stripsHeight() const;
  void describe();
  void paintNothingYet();

  HeatModel& m_model;
  const text::Phrasebook& m_book;
  PlotWishes m_wishes;
  HeatPlot m_plot;
  CurveStrips m_strips;
  QPixmap m_drawn;  // of the plot; null: it has changed
  bool m_vector = false;
};

}  // namespace cordreach::app
