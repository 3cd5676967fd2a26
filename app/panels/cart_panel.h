// SPDX-License-Identifier: GPL-3.0-or-later
// The cords of the cart: name, gauge, length, tag, state; put out of service and back.
#pragma once

#include <QWidget>
#include <optional>

#include "document/session.h"
#include "panels/ask_dialog.h"

class QLabel;
class QPushButton;
class QTableWidget;

namespace cordreach::app {

class CartPanel : public QWidget {
  Q_OBJECT

 public:
  explicit CartPanel(Session& session, QWidget* parent = nullptr);

  [[nodiscard]] QTableWidget* table() const { return m_table; }
  // Asks why and who, made but not shown; its deed is the edit.
  [[nodiscard]] AskDialog* serviceDialog(const site::CordId& cord);
  void putBack(const site::CordId& cord);

 signals:
  void refused(const QString& sentence);

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void rebuild();
  void nameControls();
  void follow();
  void press();
  [[nodiscard]] std::optional<site::CordId> current() const;
  void fillRow(int row, const site::Cord& cord);

  Session& m_session;
  QTableWidget* m_table;
  QLabel* m_empty;
  QPushButton* m_service;
};

}  // namespace cordreach::app
