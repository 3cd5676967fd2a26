// SPDX-License-Identifier: GPL-3.0-or-later
// One sentence to a person, with answers that say what they do.
#pragma once

#include <QString>
#include <QStringList>

class QWidget;

namespace cordreach::app {

struct Question {
  QString sentence;
  QString detail;       // what is behind it; may be empty
  QStringList answers;  // the first is what Return does, the last what Escape does
};

// The answer's place in the list.
[[nodiscard]] int ask(QWidget* parent, const Question& question);

}  // namespace cordreach::app
