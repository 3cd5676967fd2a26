// SPDX-License-Identifier: GPL-3.0-or-later
// One field on screen: its label, what it is typed or chosen in, "don't know", and one sentence under it when what was
// typed can't be taken. What was typed is kept until it is taken, put right or left with Escape.
#pragma once

#include <QWidget>

#include "panels/field.h"
#include "text/phrasebook.h"

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QToolButton;

namespace cordreach::app {

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
  void showValue();
  void commitIfChanged();
  void sayUnknown();

  Field m_field;
  const text::Phrasebook& m_book;
  QLabel* m_label = nullptr;
  QLineEdit* m_line = nullptr;
  QComboBox* m_choice = nullptr;
  QCheckBox* m_flag = nullptr;
  QToolButton* m_unknown = nullptr;
  QLabel* m_note = nullptr;   // "guessed"
  QLabel* m_fault = nullptr;  // hidden while all is well
};

}  // namespace cordreach::app
