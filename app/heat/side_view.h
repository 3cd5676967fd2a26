// SPDX-License-Identifier: GPL-3.0-or-later
// One side at the clock's time: how the jacket feels, the cord cut through, and the cord along the floor from plug to
// socket. How it feels comes before the degrees.
#pragma once

#include <QRectF>
#include <QWidget>

#include "heat/heat_model.h"
#include "text/phrasebook.h"

namespace cordreach::app {

class SideView : public QWidget {
  Q_OBJECT

 public:
  SideView(HeatModel& model, const text::Phrasebook& book, std::size_t side, QWidget* parent = nullptr);
  // The cut-through and its words; with less than comfortable what is said shorter, or elsewhere, is left out.
  [[nodiscard]] QSize minimumSizeHint() const override;
  [[nodiscard]] int labelledHeight() const;     // with degrees
  [[nodiscard]] int comfortableHeight() const;  // and the hand's words
  [[nodiscard]] QSize sizeHint() const override;
  // Where the cord is drawn, cut through.
  [[nodiscard]] QRectF cutBox() const { return fit().cut; }

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  struct Fit {
    bool hand = false;
    bool degrees = false;
    bool floor = false;
    QRectF cut;
  };

  [[nodiscard]] Fit fit() const;
  [[nodiscard]] static int drawingHeight(int label);
  void describe();
  void measure();
  void paintLabel(QPainter& painter, const QRectF& box, const QPointF& to, const QString& figure,
                  const QString& word) const;
  void paintFloor(QPainter& painter, const QRectF& box, const study::DemonstrationPoint& point) const;

  HeatModel& m_model;
  const text::Phrasebook& m_book;
  std::size_t m_side;
  // For the longest of all words that may stand there, so that nothing moves or is cut while the clock runs.
  int m_handHeight = 0;
  int m_labelWidth = 0;
  int m_labelHeight = 0;
  int m_wordHeight = 0;  // of a label without its degrees
};

}  // namespace cordreach::app
