// SPDX-License-Identifier: GPL-3.0-or-later
// Who speaks in the verdict band: each place of the window has one, and the band shows that of the place in front.
#pragma once

#include <QObject>

#include "shell/verdict_choice.h"

namespace cordreach::app {

class VerdictSource : public QObject {
  Q_OBJECT

 public:
  using QObject::QObject;

  // Without a signal word: nothing was worked out yet.
  [[nodiscard]] virtual const VerdictWords& words() const = 0;
  // Of what is on screen now. Words that are not are shown dimmed, and their button is off.
  [[nodiscard]] virtual bool isFresh() const = 0;
  // Makes the change that the button names, as one step that can be undone.
  virtual void press() = 0;

 signals:
  void changed();  // words or freshness
  void refused(const QString& sentence);
};

}  // namespace cordreach::app
