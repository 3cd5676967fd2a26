// SPDX-License-Identifier: GPL-3.0-or-later
// F6: from one region of the window to the next, whatever stands in it.
#pragma once

#include <QVector>

class QWidget;

namespace cordreach::app {

struct FocusRing {
  QVector<QWidget*> regions;

  // To the first widget that takes the focus in the next region that has one.
  void step(bool forward) const;
};

}  // namespace cordreach::app
