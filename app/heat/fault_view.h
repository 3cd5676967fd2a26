// SPDX-License-Identifier: GPL-3.0-or-later
// What a failed machine's metal does at one side: the way that a fault's current takes back through the ground wire to
// the breaker, or the gap where that is missing, and both in words. The figures are those of the verdict.
#pragma once

#include <QWidget>

#include "heat/heat_model.h"
#include "text/phrasebook.h"

namespace cordreach::app {

class FaultView : public QWidget {
  Q_OBJECT

 public:
  FaultView(HeatModel& model, const text::Phrasebook& book, std::size_t side, QWidget* parent = nullptr);

  // At either side the machine's metal has no earth: then both are shown.
  [[nodiscard]] static bool isWanted(const HeatModel& model);
  // "A: If the machine fails inside, its metal stands at 120 V and stays there. ..."
  [[nodiscard]] QString words() const;
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] int heightForWidth(int width) const override;
  [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  struct Loop;
  void describe();
  [[nodiscard]] const study::FaultAnswer* fault() const;  // at the machine; none: not studied
  [[nodiscard]] bool isBroken() const;
  void paintLoop(QPainter& painter, const QRectF& box) const;
  void paintWires(QPainter& painter, const Loop& loop) const;

  HeatModel& m_model;
  const text::Phrasebook& m_book;
  std::size_t m_side;
};

}  // namespace cordreach::app
