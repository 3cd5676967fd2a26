// SPDX-License-Identifier: GPL-3.0-or-later
// Widgets side by side while there is room, else below one another.
#pragma once

#include <QLayout>
#include <vector>

namespace cordreach::app {

class FlowRow : public QLayout {
 public:
  explicit FlowRow(int gapPx);
  ~FlowRow() override;

  void addItem(QLayoutItem* item) override;
  [[nodiscard]] int count() const override { return static_cast<int>(m_items.size()); }
  [[nodiscard]] QLayoutItem* itemAt(int index) const override;
  QLayoutItem* takeAt(int index) override;
  [[nodiscard]] Qt::Orientations expandingDirections() const override { return {}; }
  [[nodiscard]] bool hasHeightForWidth() const override { return true; }
  [[nodiscard]] int heightForWidth(int width) const override;
  [[nodiscard]] QSize sizeHint() const override { return minimumSize(); }
  [[nodiscard]] QSize minimumSize() const override;
  void setGeometry(const QRect& rect) override;

 private:
  int place(const QRect& rect, bool really) const;

  int m_gapPx;
  std::vector<QLayoutItem*> m_items;
};

}  // namespace cordreach::app
