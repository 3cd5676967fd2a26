// SPDX-License-Identifier: GPL-3.0-or-later
// What was found, worst first, with what can be done about each.
#pragma once

#include <QWidget>
#include <memory>
#include <set>
#include <string>
#include <vector>

#include "document/session.h"

class QLabel;
class QVBoxLayout;

namespace cordreach::app {

class FindingRow;
struct FindingGroup;
class LinkButton;

class FindingsPanel : public QWidget {
  Q_OBJECT

 public:
  explicit FindingsPanel(Session& session, QWidget* parent = nullptr);

  [[nodiscard]] const std::vector<FindingRow*>& rows() const { return m_rows; }
  [[nodiscard]] QString head() const;
  // Links that unfold what else there is about a thing, and fold it again.
  [[nodiscard]] const std::vector<LinkButton*>& folds() const { return m_folds; }
  // Each of these acts on a finding of the verdict on screen.
  void showSubject(std::size_t finding);
  void mend(std::size_t finding);
  void askToAccept(std::size_t finding);
  void takeBack(std::size_t finding);
  void showNumbers(std::size_t finding);

 signals:
  void refused(const QString& sentence);

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void take(const std::shared_ptr<const Verdict>& verdict);
  void rebuild();
  void addRow(std::size_t finding);
  void addRest(const FindingGroup& group);
  void layOut(std::size_t shown);
  void freshen();
  void apply(const base::Result<site::Edit>& edit);
  [[nodiscard]] bool isStale() const;

  Session& m_session;
  std::shared_ptr<const Verdict> m_shown;
  QLabel* m_head;
  QLabel* m_empty;
  QLabel* m_always;
  QWidget* m_list;
  QVBoxLayout* m_layout;
  LinkButton* m_more;
  std::vector<FindingRow*> m_rows;  // in the order of the findings, not of the screen
  std::vector<LinkButton*> m_folds;
  std::set<std::string> m_unfolded;  // what they are about
  bool m_showsAll = false;
};

}  // namespace cordreach::app
