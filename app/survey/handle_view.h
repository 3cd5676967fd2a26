// SPDX-License-Identifier: GPL-3.0-or-later
// A picture with points on it that are dragged with the pointer or nudged with the arrow keys; what lies under the one
// in hand is shown larger beside it.
#pragma once

#include <QImage>
#include <QStringList>
#include <QWidget>
#include <vector>

class QPainter;

namespace cordreach::app {

class HandleView : public QWidget {
  Q_OBJECT

 public:
  enum class Joined { Line, Outline };

  // The image as it is seen and the size of the sheet that the points are counted in, which may have more pixels.
  HandleView(QImage image, const QSize& sheet, Joined joined, QWidget* parent = nullptr);

  void setPoints(const std::vector<QPointF>& points, const QStringList& names);  // in pixels of the sheet
  [[nodiscard]] const std::vector<QPointF>& points() const { return m_points; }
  [[nodiscard]] int active() const { return m_active; }
  // Where it is in the widget.
  [[nodiscard]] QPointF toWidget(const QPointF& pixel) const;

  [[nodiscard]] QSize sizeHint() const override;

 signals:
  void moved();

 protected:
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  bool event(QEvent* event) override;

 private:
  [[nodiscard]] QRectF frame() const;
  [[nodiscard]] QRectF loupe() const;
  [[nodiscard]] QPointF toSheet(const QPointF& widget) const;
  void moveActive(const QPointF& pixel);
  void take(int index);
  void paintLoupe(QPainter& painter);

  QImage m_image;
  QSize m_sheet;
  Joined m_joined;
  std::vector<QPointF> m_points;
  QStringList m_names;
  int m_active = 0;
  bool m_isHeld = false;  // by the pointer
};

}  // namespace cordreach::app
