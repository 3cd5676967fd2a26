// SPDX-License-Identifier: GPL-3.0-or-later
// A panel as its directory shows it, with where it is, who has its key, and whom to call.
#pragma once

#include <QWidget>

#include "document/session.h"
#include "document/surveyor.h"

class QLabel;
class QTableView;

namespace cordreach::app {

class CellEditor;
class ChoiceBox;
class ScheduleModel;

class ScheduleView : public QWidget {
  Q_OBJECT

 public:
  ScheduleView(Session& session, const Surveyor& surveyor, QWidget* parent = nullptr);

  [[nodiscard]] ScheduleModel* model() const { return m_model; }
  [[nodiscard]] QTableView* table() const { return m_table; }
  [[nodiscard]] ChoiceBox* panels() const { return m_panels; }

 signals:
  void refused(const QString& sentence);

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void connectAll();
  void fillPanels();
  void choosePanel(int index);
  void followSelection();
  void chooseCircuit();
  void tellPanel();
  void reword();
  void fitColumns();

  Session& m_session;
  ScheduleModel* m_model;
  QLabel* m_word;
  ChoiceBox* m_panels;
  QLabel* m_about;
  QLabel* m_empty;
  QTableView* m_table;
  bool m_following = false;
};

}  // namespace cordreach::app
