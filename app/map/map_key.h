// SPDX-License-Identifier: GPL-3.0-or-later
// The key under the plan: temperature of cords, cord thickness, how a breaker is known, and the scale.
#pragma once

#include <QWidget>

#include "text/phrasebook.h"

namespace cordreach::app {

class MapKey : public QWidget {
  Q_OBJECT

 public:
  explicit MapKey(const text::Phrasebook& book, QWidget* parent = nullptr);
  void setScale(double pxPerMetre);
  [[nodiscard]] QSize sizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  void paintTemperatures(QPainter& painter, double left);
  void paintThickness(QPainter& painter, double left);
  void paintKnown(QPainter& painter, double left);
  void paintScale(QPainter& painter, double right);
  void write(QPainter& painter, double x, double y, const QString& text, bool bold = false);

  const text::Phrasebook& m_book;
  double m_scale = 20;
};

}  // namespace cordreach::app
