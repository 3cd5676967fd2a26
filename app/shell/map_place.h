// SPDX-License-Identifier: GPL-3.0-or-later
// The place Map: the floor sketch and, at its right, what was found and what is chosen.
#pragma once

#include <QWidget>

#include "document/session.h"

class QVBoxLayout;
class QHBoxLayout;

namespace cordreach::app {

class MapPlace : public QWidget {
  Q_OBJECT

 public:
  explicit MapPlace(Session& session, QWidget* parent = nullptr);

  void setColumn(int width, bool visible);
  [[nodiscard]] QWidget* work() const { return m_work; }
  [[nodiscard]] QWidget* column() const { return m_column; }

 private:
  QWidget* m_work;
  QWidget* m_column;
};

}  // namespace cordreach::app
