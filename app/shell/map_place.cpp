// SPDX-License-Identifier: GPL-3.0-or-later
#include "shell/map_place.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

namespace cordreach::app {

namespace {
constexpr int kMargin = 24;
constexpr int kGap = 28;
}  // namespace

MapPlace::MapPlace(Session& /*session*/, QWidget* parent)
    : QWidget(parent), m_work(new QWidget(this)), m_column(new QWidget(this)) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(kMargin, 0, kMargin, 12);
  row->setSpacing(kGap);
  row->addWidget(m_work, 1);
  row->addWidget(m_column);
  auto* column = new QVBoxLayout(m_column);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(kMargin);
}

void MapPlace::setColumn(int width, bool visible) {
  m_column->setFixedWidth(width);
  m_column->setVisible(visible);
}

}  // namespace cordreach::app
