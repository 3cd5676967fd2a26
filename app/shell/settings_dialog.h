// SPDX-License-Identifier: GPL-3.0-or-later
// What a person can choose; everything takes effect at once.
#pragma once

#include <QDialog>

#include "look/settings.h"
#include "text/phrasebook.h"

class QCheckBox;
class QComboBox;

namespace cordreach::app {

class SettingsDialog : public QDialog {
  Q_OBJECT

 public:
  SettingsDialog(const look::Choices& choices, const text::Phrasebook& book, QWidget* parent);

 signals:
  void changed(const cordreach::look::Choices& choices);

 private:
  [[nodiscard]] look::Choices chosen() const;
  QComboBox* choice(const char* labelCode, const std::vector<std::string>& codes, int at);
  QCheckBox* check(const char* labelCode, bool on);

  const text::Phrasebook& m_book;
  QComboBox* m_units;
  QComboBox* m_textSize;
  QComboBox* m_ground;
  QCheckBox* m_highContrast;
  QCheckBox* m_reduceMotion;
};

}  // namespace cordreach::app
