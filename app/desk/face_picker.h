// SPDX-License-Identifier: GPL-3.0-or-later
// The faces of receptacles, drawn: one is picked by what one sees, arrows go from one to the next, the first is "don't
// know".
#pragma once

#include <QWidget>
#include <string>
#include <vector>

#include "text/phrasebook.h"

namespace cordreach::app {

class FaceButton;

class FacePicker : public QWidget {
  Q_OBJECT

 public:
  explicit FacePicker(const text::Phrasebook& book, QWidget* parent = nullptr);
  // Key of the receptacle table; empty: don't know.
  [[nodiscard]] std::string face() const;
  void setFace(const std::string& key);
  void rename();

 signals:
  void picked();

 private:
  const text::Phrasebook& m_book;
  std::vector<FaceButton*> m_buttons;
};

}  // namespace cordreach::app
