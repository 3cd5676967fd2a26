// SPDX-License-Identifier: GPL-3.0-or-later
// Ctrl+F: one line to type in and what it finds under it. Arrows go through the list from the line itself, Return goes
// to the thing.
#pragma once

#include <QDialog>
#include <memory>
#include <vector>

#include "document/session.h"
#include "panels/find_things.h"

class QLabel;
class QLineEdit;
class QListWidget;

namespace cordreach::app {

class FindDialog : public QDialog {
  Q_OBJECT

 public:
  explicit FindDialog(Session& session, QWidget* parent = nullptr);

  [[nodiscard]] QLineEdit* line() const { return m_line; }
  [[nodiscard]] QListWidget* list() const { return m_list; }
  [[nodiscard]] QString said() const;
  // Ready to be typed in: what was typed last is chosen.
  void begin();

 signals:
  void wanted(const cordreach::rules::Subject& subject);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void readSite();
  void find();
  void go();

  Session& m_session;
  std::unique_ptr<ThingIndex> m_index;
  std::vector<FoundThing> m_found;
  QLineEdit* m_line;
  QListWidget* m_list;
  QLabel* m_said;
};

}  // namespace cordreach::app
