// SPDX-License-Identifier: GPL-3.0-or-later
// The place Cord: one question with four inputs, its answer in the band above, the field of all cords under it, the
// limits of the cell that is looked at beside it, and the what-ifs.
#pragma once

#include "desk/cord_model.h"
#include "shell/place.h"

class QLabel;
class QScrollArea;

namespace cordreach::app {

class CellPanel;
class CordVerdict;
class FieldView;
class MoreBelow;
class QuestionRow;
class WhatIfRow;

class CordPlace : public Place {
  Q_OBJECT

 public:
  explicit CordPlace(Session& session, QWidget* parent = nullptr);

  [[nodiscard]] std::string code() const override { return "cord"; }
  [[nodiscard]] VerdictSource* verdict() const override;
  [[nodiscard]] QWidget* work() const override;
  [[nodiscard]] QWidget* column() const override;
  void setColumn(int width, bool visible) override;

  [[nodiscard]] CordModel& model() { return m_model; }
  [[nodiscard]] QuestionRow* question() const { return m_question; }
  [[nodiscard]] FieldView* field() const { return m_field; }
  [[nodiscard]] CellPanel* cell() const { return m_cell; }
  [[nodiscard]] WhatIfRow* whatIfs() const { return m_whatIfs; }

 protected:
  void showEvent(QShowEvent* event) override;
  void hideEvent(QHideEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  void dress();

  CordModel m_model;
  CordVerdict* m_verdict;
  QuestionRow* m_question;
  QLabel* m_head;
  QLabel* m_note;
  FieldView* m_field;
  CellPanel* m_cell;
  QScrollArea* m_sheet;  // scrolls where large type leaves the field too little room
  QScrollArea* m_column;
  MoreBelow* m_moreCells;
  MoreBelow* m_moreCords;
  WhatIfRow* m_whatIfs;
};

}  // namespace cordreach::app
