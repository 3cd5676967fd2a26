// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/property_form.h"

#include <QLabel>
#include <QPointer>
#include <QVBoxLayout>

#include "look/look.h"
#include "panels/field_row.h"
#include "shell/say.h"

namespace cordreach::app {

PropertyForm::PropertyForm(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
  m_layout = new QVBoxLayout(this);
  m_layout->setContentsMargins(0, 0, 0, 0);
  m_layout->setSpacing(6);
}

void PropertyForm::show(const QString& about, FieldGroups groups) {
  if (about != m_about || !isSameShape(groups)) {
    m_about = about;
    build(groups);
    return;
  }
  std::size_t at = 0;
  for (const FieldGroup& group : groups) {
    for (const Field& field : group.fields) m_rows[at++]->update(field);
  }
}

FieldRow* PropertyForm::row(const std::string& key) const {
  for (FieldRow* row : m_rows) {
    if (row->field().key == key) return row;
  }
  return nullptr;
}

bool PropertyForm::isSameShape(const FieldGroups& groups) const {
  std::size_t at = 0;
  for (const FieldGroup& group : groups) {
    for (const Field& field : group.fields) {
      if (at >= m_rows.size()) return false;
      const Field& shown = m_rows[at++]->field();
      if (shown.key != field.key || shown.kind != field.kind || shown.label != field.label) return false;
    }
  }
  return at == m_rows.size();
}

void PropertyForm::build(const FieldGroups& groups) {
  std::string focused;
  for (const FieldRow* row : m_rows) {
    if (row->editor()->hasFocus()) focused = row->field().key;
  }
  while (QLayoutItem* item = m_layout->takeAt(0)) {
    if (item->widget() != nullptr) {
      item->widget()->hide();
      item->widget()->deleteLater();
    }
    delete item;
  }
  m_rows.clear();
  for (const FieldGroup& group : groups) {
    if (!group.title.empty()) {
      auto* title = new QLabel(QString::fromStdString(group.title), this);
      title->setTextFormat(Qt::PlainText);
      title->setFont(look::font(look::Type::BodyBold));
      title->setWordWrap(true);
      title->setContentsMargins(0, 8, 0, 0);
      m_layout->addWidget(title);
    }
    for (const Field& field : group.fields) {
      auto* row = new FieldRow(field, m_session.book, this);
      connect(row, &FieldRow::committed, this, [this, row] { take(row); });
      m_layout->addWidget(row);
      m_rows.push_back(row);
    }
  }
  if (FieldRow* row = focused.empty() ? nullptr : this->row(focused)) row->editor()->setFocus();
}

void PropertyForm::take(FieldRow* row) {
  const Field field = row->field();
  if (!field.write) return;
  const QPointer<FieldRow> alive(row);
  const std::string typed = row->typed();
  const auto edit = field.write(m_session.document.site(), typed);
  if (!edit.ok()) {
    row->showFault(sentenceOf(m_session.book, edit.error()));
    return;
  }
  if (edit.value().changes.empty()) {
    row->showFault({});
    return;
  }
  row->setTaken(typed);
  const auto done = m_session.document.apply(edit.value());
  // The change may have built the form anew, without this row.
  if (!done && alive) alive->refuse(typed, sentenceOf(m_session.book, done.error()));
}

}  // namespace cordreach::app
