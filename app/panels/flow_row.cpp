// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/flow_row.h"

#include <algorithm>

namespace cordreach::app {

FlowRow::FlowRow(int gapPx) : m_gapPx(gapPx) {}

FlowRow::~FlowRow() {
  for (QLayoutItem* item : m_items) delete item;
}

void FlowRow::addItem(QLayoutItem* item) { m_items.push_back(item); }

QLayoutItem* FlowRow::itemAt(int index) const {
  return index >= 0 && index < count() ? m_items[static_cast<std::size_t>(index)] : nullptr;
}

QLayoutItem* FlowRow::takeAt(int index) {
  QLayoutItem* item = itemAt(index);
  if (item != nullptr) m_items.erase(m_items.begin() + index);
  return item;
}

int FlowRow::heightForWidth(int width) const { return place({0, 0, width, 0}, false); }

QSize FlowRow::minimumSize() const {
  QSize least;
  for (const QLayoutItem* item : m_items) least = least.expandedTo(item->minimumSize());
  return least;
}

void FlowRow::setGeometry(const QRect& rect) {
  QLayout::setGeometry(rect);
  place(rect, true);
}

int FlowRow::place(const QRect& rect, bool really) const {
  int x = rect.x();
  int y = rect.y();
  int lineHeight = 0;
  for (QLayoutItem* item : m_items) {
    const int width = std::min(item->sizeHint().width(), rect.width());
    const int height = item->hasHeightForWidth() ? item->heightForWidth(width) : item->sizeHint().height();
    if (x > rect.x() && x + width > rect.x() + rect.width()) {
      x = rect.x();
      y += lineHeight;
      lineHeight = 0;
    }
    if (really) item->setGeometry({x, y, width, height});
    x += width + m_gapPx;
    lineHeight = std::max(lineHeight, height);
  }
  return y + lineHeight - rect.y();
}

}  // namespace cordreach::app
