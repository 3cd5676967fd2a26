// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/cart_panel.h"

#include <QDate>
#include <QEvent>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QTableWidget>
#include <QVBoxLayout>
#include <memory>

#include "look/look.h"
#include "panels/equipment_state.h"
#include "panels/names.h"
#include "shell/say.h"

namespace cordreach::app {

namespace {

enum Column { kName, kGauge, kLength, kTag, kState, kColumns };

std::string today() { return QDate::currentDate().toString(Qt::ISODate).toStdString(); }

}  // namespace

CartPanel::CartPanel(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
  m_table = new QTableWidget(0, kColumns, this);
  m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
  m_table->setSelectionMode(QAbstractItemView::SingleSelection);
  m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
  m_table->setTabKeyNavigation(false);
  m_table->setShowGrid(false);
  m_table->setWordWrap(true);
  m_table->verticalHeader()->hide();
  m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  m_table->horizontalHeader()->setSectionResizeMode(kState, QHeaderView::Stretch);
  m_empty = new QLabel(this);
  m_empty->setWordWrap(true);
  m_service = new QPushButton(this);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(m_empty);
  layout->addWidget(m_table, 1);
  layout->addWidget(m_service, 0, Qt::AlignLeft);
  connect(m_table, &QTableWidget::currentCellChanged, this, &CartPanel::follow);
  connect(m_service, &QPushButton::clicked, this, &CartPanel::press);
  connect(&session.document, &Document::changed, this, &CartPanel::rebuild);
  nameControls();
  rebuild();
}

void CartPanel::nameControls() {
  const text::Phrasebook& book = m_session.book;
  setAccessibleName(say(book, "panel.cart"));
  m_table->setAccessibleName(say(book, "panel.cart"));
  m_empty->setText(say(book, "panel.cart.empty"));
  m_table->setHorizontalHeaderLabels({say(book, "panel.cart.name"), say(book, "field.size"), say(book, "field.length"),
                                      say(book, "field.tag"), say(book, "panel.cart.state")});
}

void CartPanel::fillRow(int row, const site::Cord& cord) {
  const text::Phrasebook& book = m_session.book;
  const auto put = [&](int column, const std::string& text) {
    auto* item = new QTableWidgetItem(QString::fromStdString(text));
    if (cord.outOfService) item->setForeground(look::tokens().ink2);
    item->setData(Qt::UserRole, QString::fromStdString(cord.id.text()));
    m_table->setItem(row, column, item);
  };
  const auto orUnknown = [&](const std::string& text) { return text.empty() ? book.say("word.unknown") : text; };
  put(kName, cord.label.empty() ? cord.id.text() : cord.label);
  put(kGauge, orUnknown(knownText(book, cord.make.size)));
  put(kLength, orUnknown(knownText(book, cord.make.length)));
  put(kTag, orUnknown(knownText(book, cord.tag)));
  if (!cord.outOfService) {
    put(kState, book.say("panel.cart.in_service"));
    return;
  }
  base::Arguments arguments;
  if (!cord.outOfService->reason.empty()) arguments.push_back({"reason", cord.outOfService->reason});
  put(kState, book.say("panel.cart.out", arguments));
}

void CartPanel::rebuild() {
  const auto kept = current();
  const auto& cords = m_session.document.site().all<site::Cord>();
  {
    const QSignalBlocker blocker(m_table);
    m_table->setRowCount(static_cast<int>(cords.size()));
    int row = 0;
    int wanted = -1;
    for (const site::Cord& cord : cords) {
      if (kept && *kept == cord.id) wanted = row;
      fillRow(row++, cord);
    }
    if (wanted >= 0) m_table->setCurrentCell(wanted, kName);
  }
  m_table->resizeRowsToContents();
  m_empty->setVisible(cords.empty());
  m_table->setVisible(!cords.empty());
  m_service->setVisible(!cords.empty());
  follow();
}

std::optional<site::CordId> CartPanel::current() const {
  const QTableWidgetItem* item = m_table->item(m_table->currentRow(), kName);
  if (item == nullptr) return std::nullopt;
  return site::CordId(item->data(Qt::UserRole).toString().toStdString());
}

void CartPanel::follow() {
  const auto id = current();
  const site::Cord* cord = id ? m_session.document.site().find<site::Cord>(*id) : nullptr;
  const bool isOut = cord != nullptr && cord->outOfService.has_value();
  m_service->setEnabled(cord != nullptr);
  m_service->setText(say(m_session.book, isOut ? "panel.cart.put_back" : "panel.cart.put_aside"));
  if (cord != nullptr && m_table->hasFocus()) {
    m_session.selection.choose({{rules::SubjectKind::Cord, cord->id.text()}});
  }
}

AskDialog* CartPanel::serviceDialog(const site::CordId& cord) {
  const text::Phrasebook& book = m_session.book;
  const Field reason{.key = "out_reason", .label = book.say("field.out_reason")};
  const Field who{.key = "out_who", .label = book.say("field.out_who")};
  const site::Cord* found = m_session.document.site().find<site::Cord>(cord);
  return new AskDialog(
      book,
      {book.say("panel.cart.put_aside"), found == nullptr ? std::string() : cordName(book, *found),
       book.say("panel.cart.put_aside.deed")},
      {reason, who},
      [this, cord](const Answers& said) -> std::optional<base::Error> {
        const auto edit =
            outOfService(m_session.document.site(), cord, {said.at("out_reason"), said.at("out_who"), today()});
        if (!edit.ok()) return edit.error();
        const auto done = m_session.document.apply(edit.value());
        return done ? std::nullopt : std::optional(done.error());
      },
      this);
}

void CartPanel::putBack(const site::CordId& cord) {
  const auto edit = backInService(m_session.document.site(), cord);
  if (!edit.ok()) {
    emit refused(sentenceOf(m_session.book, edit.error()));
    return;
  }
  const auto done = m_session.document.apply(edit.value());
  if (!done) emit refused(sentenceOf(m_session.book, done.error()));
}

void CartPanel::press() {
  const auto id = current();
  const site::Cord* cord = id ? m_session.document.site().find<site::Cord>(*id) : nullptr;
  if (cord == nullptr) return;
  if (cord->outOfService) {
    putBack(*id);
    return;
  }
  const std::unique_ptr<AskDialog> dialog(serviceDialog(*id));
  dialog->exec();
}

void CartPanel::changeEvent(QEvent* event) {
  if (event->type() == QEvent::LanguageChange) {
    nameControls();
    rebuild();
  }
  QWidget::changeEvent(event);
}

}  // namespace cordreach::app
