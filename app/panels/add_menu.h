// SPDX-License-Identifier: GPL-3.0-or-later
// The menu of what can be added, each with a small dialog of its own. What is added is chosen afterwards.
#pragma once

#include <QMenu>
#include <functional>
#include <optional>

#include "document/session.h"
#include "panels/ask_dialog.h"
#include "panels/new_things.h"

namespace cordreach::app {

class AddMenu : public QMenu {
  Q_OBJECT

 public:
  using Where = std::function<std::optional<site::Place>()>;

  // `where` answers where a new thing is put: the middle of what the map shows, say.
  AddMenu(Session& session, Where where, QWidget* parent = nullptr);

  // The dialogs, made but not shown: their deed adds the thing.
  [[nodiscard]] AskDialog* panelDialog(QWidget* parent);
  [[nodiscard]] AskDialog* breakersDialog(QWidget* parent);
  [[nodiscard]] AskDialog* outletDialog(QWidget* parent);
  [[nodiscard]] AskDialog* loadDialog(QWidget* parent);
  [[nodiscard]] AskDialog* machineDialog(const std::string& type, QWidget* parent);
  [[nodiscard]] AskDialog* cordDialog(QWidget* parent);
  [[nodiscard]] AskDialog* padDialog(QWidget* parent);

 protected:
  void changeEvent(QEvent* event) override;

 private:
  using Make = std::function<AskDialog*()>;

  void fill();
  void addDialog(QMenu* menu, const std::string& code, Make make);
  [[nodiscard]] std::optional<site::Place> place() const;
  [[nodiscard]] std::optional<base::Error> take(const NewEdit& edit);
  [[nodiscard]] AskDialog* dialog(const std::string& code, const std::vector<Field>& fields, AskDialog::Deed deed,
                                  QWidget* parent);

  Session& m_session;
  Where m_where;
};

}  // namespace cordreach::app
