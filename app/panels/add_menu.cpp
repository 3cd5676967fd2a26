// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/add_menu.h"

#include <QEvent>
#include <memory>

#include "panels/machine_types.h"
#include "shell/say.h"

namespace cordreach::app {

AddMenu::AddMenu(Session& session, Where where, QWidget* parent)
    : QMenu(parent), m_session(session), m_where(std::move(where)) {
  fill();
}

void AddMenu::fill() {
  clear();
  const text::Phrasebook& book = m_session.book;
  setTitle(say(book, "panel.add"));
  addDialog(this, "panel.add.panel", [this] { return panelDialog(parentWidget()); });
  addDialog(this, "panel.add.breakers", [this] { return breakersDialog(parentWidget()); });
  addDialog(this, "panel.add.outlet", [this] { return outletDialog(parentWidget()); });
  addDialog(this, "panel.add.load", [this] { return loadDialog(parentWidget()); });
  addSeparator();
  QMenu* machines = addMenu(say(book, "panel.add.machine"));
  for (const MachineType& type : machineTypes()) {
    addDialog(machines, "machine_type." + type.id, [this, id = type.id] { return machineDialog(id, parentWidget()); });
  }
  addDialog(this, "panel.add.cord", [this] { return cordDialog(parentWidget()); });
  addDialog(this, "panel.add.pad", [this] { return padDialog(parentWidget()); });
}

void AddMenu::addDialog(QMenu* menu, const std::string& code, Make make) {
  QAction* action = menu->addAction(say(m_session.book, code));
  action->setObjectName(QString::fromStdString(code));
  connect(action, &QAction::triggered, this, [make = std::move(make)] {
    const std::unique_ptr<AskDialog> dialog(make());
    dialog->exec();
  });
}

std::optional<site::Place> AddMenu::place() const {
  if (m_where) {
    if (auto place = m_where()) return place;
  }
  return std::nullopt;
}

std::optional<base::Error> AddMenu::take(const NewEdit& edit) {
  if (!edit.ok()) return edit.error();
  const auto done = m_session.document.apply(edit.value());
  if (!done) return done.error();
  // What has a place is in the middle of what is looked at: nothing need be shown.
  if (const auto subject = addedBy(edit.value())) m_session.selection.choose({*subject});
  return std::nullopt;
}

AskDialog* AddMenu::dialog(const std::string& code, const std::vector<Field>& fields, AskDialog::Deed deed,
                           QWidget* parent) {
  const text::Phrasebook& book = m_session.book;
  const std::string title = say(book, code).remove(u'…').remove(u'&').toStdString();  // without what menus need
  return new AskDialog(book, {title, {}, book.say("panel.add.deed")}, fields, std::move(deed), parent);
}

void AddMenu::changeEvent(QEvent* event) {
  if (event->type() == QEvent::LanguageChange) fill();
  QMenu::changeEvent(event);
}

}  // namespace cordreach::app
