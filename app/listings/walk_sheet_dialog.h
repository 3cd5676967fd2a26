// SPDX-License-Identifier: GPL-3.0-or-later
// The walk sheet before it is printed: page by page as it will come out, and into a PDF file.
#pragma once

#include <QDialog>
#include <memory>

#include "document/session.h"
#include "listings/walk_sheet.h"

class QLabel;
class QPushButton;

namespace cordreach::app {

class ChoiceBox;

class WalkSheetDialog : public QDialog {
  Q_OBJECT

 public:
  explicit WalkSheetDialog(Session& session, QWidget* parent = nullptr);

  [[nodiscard]] const WalkSheet& sheet() const { return *m_sheet; }
  [[nodiscard]] int page() const { return m_page; }
  void turn(int pages);
  // Errors: those of io::replaceFile.
  [[nodiscard]] base::Result<base::Done> save(const QString& path);

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void make();
  void turnTo(int page);
  void chooseAndSave();

  Session& m_session;
  std::unique_ptr<WalkSheet> m_sheet;
  int m_page = 0;
  ChoiceBox* m_floors;
  QWidget* m_view;
  QLabel* m_where;
  QPushButton* m_back;
  QPushButton* m_on;
  QLabel* m_fault;
};

}  // namespace cordreach::app
