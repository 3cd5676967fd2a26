// SPDX-License-Identifier: GPL-3.0-or-later
// Somebody else's table on its way into a listing: which column is which, and row by row what would come of it.
#pragma once

#include <QDialog>
#include <vector>

#include "document/session.h"
#include "document/surveyor.h"
#include "io/table_import.h"
#include "listings/listing.h"

class QLabel;
class QPushButton;
class QTableWidget;
class QVBoxLayout;

namespace cordreach::app {

class ChoiceBox;

class ImportDialog : public QDialog {
  Q_OBJECT

 public:
  ImportDialog(Session& session, const Surveyor& surveyor, ListingKind kind, io::Table table,
               QWidget* parent = nullptr);

  [[nodiscard]] const io::ImportPreview& preview() const { return m_preview; }
  // Of each column of the table, the choice what it is; the first says: leave it out.
  [[nodiscard]] const std::vector<ChoiceBox*>& choices() const { return m_choices; }
  [[nodiscard]] QPushButton* deed() const { return m_deed; }
  void accept() override;  // makes the edit: one undo step

 private:
  QWidget* buildChoices();
  void look();
  void fillOutcome();
  [[nodiscard]] QString outcomeOf(const io::ImportedRow& row) const;

  Session& m_session;
  const Surveyor& m_surveyor;
  const Listing& m_listing;
  io::Table m_table;
  std::vector<io::ImportColumn> m_columns;
  io::ImportPreview m_preview;
  std::vector<ChoiceBox*> m_choices;
  QLabel* m_summary;
  QTableWidget* m_outcome;
  QLabel* m_fault;
  QPushButton* m_deed;
};

}  // namespace cordreach::app
