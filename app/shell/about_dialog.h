// SPDX-License-Identifier: GPL-3.0-or-later
// What this program is, under which licences, whose numbers it uses, and what it must never be taken for.
#pragma once

#include <QDialog>

#include "text/phrasebook.h"

namespace cordreach::app {

class AboutDialog : public QDialog {
  Q_OBJECT

 public:
  AboutDialog(const text::Phrasebook& book, QWidget* parent);
};

}  // namespace cordreach::app
