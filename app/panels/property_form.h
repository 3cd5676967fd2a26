// SPDX-License-Identifier: GPL-3.0-or-later
// Renders groups of fields and takes what is typed into the document: one undo step a field.
#pragma once

#include <QWidget>
#include <vector>

#include "document/session.h"
#include "panels/field.h"

class QVBoxLayout;

namespace cordreach::app {

class FieldRow;

class PropertyForm : public QWidget {
  Q_OBJECT

 public:
  explicit PropertyForm(Session& session, QWidget* parent = nullptr);

  // `about` names what they are of: another one lets go of what was typed and not taken.
  void show(const QString& about, FieldGroups groups);
  // Builds all anew the next time: language, text size or colours are others.
  void forget() { m_about = QChar(0); }
  [[nodiscard]] FieldRow* row(const std::string& key) const;

 private:
  void build(const FieldGroups& groups);
  [[nodiscard]] bool isSameShape(const FieldGroups& groups) const;
  void take(FieldRow* row);

  Session& m_session;
  QString m_about;
  QVBoxLayout* m_layout;
  std::vector<FieldRow*> m_rows;
};

}  // namespace cordreach::app
