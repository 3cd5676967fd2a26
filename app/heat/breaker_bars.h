// SPDX-License-Identifier: GPL-3.0-or-later
// How far the breaker has warmed toward tripping: the earliest of its kind, the likely one, the latest, for A and B.
// The tick at the end is the trip.
#pragma once

#include <QWidget>

#include "heat/heat_model.h"
#include "text/phrasebook.h"

namespace cordreach::app {

class BreakerBars : public QWidget {
  Q_OBJECT

 public:
  BreakerBars(HeatModel& model, const text::Phrasebook& book, QWidget* parent = nullptr);
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  void describe();
  void paintBar(QPainter& painter, const QRect& row, std::size_t side, std::size_t curve) const;
  // "48 %"; once it has tripped, so.
  [[nodiscard]] QString stateOf(std::size_t side, std::size_t curve) const;
  [[nodiscard]] bool hasTripped(std::size_t side, std::size_t curve) const;

  HeatModel& m_model;
  const text::Phrasebook& m_book;
};

}  // namespace cordreach::app
