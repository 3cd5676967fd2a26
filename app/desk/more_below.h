// SPDX-License-Identifier: GPL-3.0-or-later
// Stands below what scrolls while there is more of it to come, and goes on by a page when pressed. Keys scroll the area
// itself, so that it takes no focus.
#pragma once

#include "panels/link_button.h"
#include "text/phrasebook.h"

class QScrollArea;

namespace cordreach::app {

class MoreBelow : public LinkButton {
  Q_OBJECT

 public:
  MoreBelow(QScrollArea& area, const text::Phrasebook& book, QWidget* parent);
  // Its room is kept while nothing is below, so that the area does not grow and shrink with it; not when the area is
  // out of sight.
  void setReserved(bool reserved);

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void freshen();

  QScrollArea& m_area;
  const text::Phrasebook& m_book;
};

}  // namespace cordreach::app
