// SPDX-License-Identifier: GPL-3.0-or-later
// The properties of whatever is chosen; of the site itself when nothing is.
#pragma once

#include <QWidget>

#include "document/session.h"

class QLabel;
class QPushButton;

namespace cordreach::app {

class LinkButton;
class PropertyForm;

class SelectionPanel : public QWidget {
  Q_OBJECT

 public:
  explicit SelectionPanel(Session& session, QWidget* parent = nullptr);

  [[nodiscard]] PropertyForm* form() const { return m_form; }
  void rebuild();
  // Asks first when something goes along. Nothing chosen: nothing happens.
  void deleteChosen();
  void copyChosen();

 signals:
  void refused(const QString& sentence);
  void darkWanted(const cordreach::rules::Subject& subject);  // what goes dark with its breaker

 protected:
  void changeEvent(QEvent* event) override;

 private:
  [[nodiscard]] QString titleOf() const;
  void nameControls();

  Session& m_session;
  QLabel* m_title;
  QLabel* m_empty;
  LinkButton* m_dark;
  PropertyForm* m_form;
  QPushButton* m_copy;
  QPushButton* m_delete;
};

}  // namespace cordreach::app
