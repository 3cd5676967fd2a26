// SPDX-License-Identifier: GPL-3.0-or-later
// One field on screen: its label, what it is typed or chosen in, "don't know", and one sentence under it when what was
// typed can't be taken. What was typed is kept until it is taken, put right or left with Escape.
#pragma once

#include <QWidget>

#include "panels/field.h"
#include "text/phrasebook.h"

class QLabel;
class QLineEdit;
class QToolButton;
class QGridLayout;

namespace cordreach::app {

class ChoiceBox;
class TickBox;

class FieldRow : public QWidget {
  Q_OBJECT

 public:
  FieldRow(const Field& field, const text::Phrasebook& book, QWidget* parent = nullptr);

  [[nodiscard]] const Field& field() const { return m_field; }
  // The same field with a new value; leaves alone what is being typed.
  void update(const Field& field);
  [[nodiscard]] std::string typed() const;
  void showFault(const QString& sentence);  // empty: none, and the value as it is
  // What was typed is about to be the value: the document's news may show it.
  void setTaken(const std::string& typed);
  // It was not after all: typed text and the sentence that says why.
  void refuse(const std::string& typed, const QString& sentence);
  [[nodiscard]] QString fault() const;
  [[nodiscard]] QWidget* editor() const;

 signals:
  void committed();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void makeEditor();
  void arrange(QGridLayout* grid);
  void showValue();
  void fillChoices();
  void commitIfChanged();
  void sayUnknown();

  Field m_field;
  std::vector<FieldChoice> m_filled;  // what the list holds
  const text::Phrasebook& m_book;
  QLabel* m_label = nullptr;
  QLineEdit* m_line = nullptr;
  ChoiceBox* m_choice = nullptr;
  TickBox* m_flag = nullptr;
  QToolButton* m_unknown = nullptr;
  QLabel* m_note = nullptr;   // "guessed"
  QLabel* m_fault = nullptr;  // hidden while all is well
};

}  // namespace cordreach::app
