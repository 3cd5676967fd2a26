// SPDX-License-Identifier: GPL-3.0-or-later
// How a breaker was found and by whom, for what is written down next: the same two fields over the plan and over the
// listing of outlets.
#pragma once

#include <QWidget>

#include "document/surveyor.h"
#include "text/phrasebook.h"

class QLabel;
class QLineEdit;

namespace cordreach::app {

class ChoiceBox;

class FoundFields : public QWidget {
  Q_OBJECT

 public:
  FoundFields(Surveyor& surveyor, const text::Phrasebook& book, QWidget* parent = nullptr);

  void reword();
  [[nodiscard]] ChoiceBox* how() const { return m_how; }
  [[nodiscard]] QLineEdit* who() const { return m_who; }

 private:
  void follow();
  void take();

  Surveyor& m_surveyor;
  const text::Phrasebook& m_book;
  QLabel* m_howWord;
  ChoiceBox* m_how;
  QLabel* m_whoWord;
  QLineEdit* m_who;
};

}  // namespace cordreach::app
