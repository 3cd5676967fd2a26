// SPDX-License-Identifier: GPL-3.0-or-later
// A listing on screen, with the keys that spreadsheets have: typing begins an edit, Return goes to the row below, Tab
// to the next cell, Delete says "don't know", copy and paste go to and from any spreadsheet. What is chosen is chosen
// on the map too.
#pragma once

#include <QTableView>
#include <set>

#include "document/session.h"
#include "listings/listing_model.h"

namespace cordreach::app {

class CellEditor;

class ListingTable : public QTableView {
  Q_OBJECT

 public:
  ListingTable(Session& session, ListingModel* model, QWidget* parent = nullptr);

  [[nodiscard]] ListingModel& listing() const { return *m_model; }
  void copy() const;
  // From the top left of what is selected on, or into all of it when one cell was copied.
  void paste();
  // All selected cells in one undo step.
  void forget();
  // This text into that column of every row in which something is selected. Error: the first that can't be.
  [[nodiscard]] std::optional<base::Error> setForChosen(int column, const std::string& text);
  [[nodiscard]] std::vector<int> chosenRows() const;
  void fitColumns();

 signals:
  void refused(const QString& sentence);

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) override;
  void selectionChanged(const QItemSelection& selected, const QItemSelection& deselected) override;
  void showEvent(QShowEvent* event) override;

 private:
  void askAgain(const QModelIndex& at);
  void showChosen();
  void widenColumns();
  void reveal(const rules::Subject& subject);
  [[nodiscard]] QItemSelectionRange bounds() const;

  Session& m_session;
  ListingModel* m_model;
  CellEditor* m_editor;
  bool m_fitting = false;     // widths are being set to what is written
  std::set<int> m_setByHand;  // columns
  bool m_following = false;   // the selection is being taken from elsewhere
};

}  // namespace cordreach::app
