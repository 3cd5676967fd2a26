// SPDX-License-Identifier: GPL-3.0-or-later
// The lists of the Map: one kind of thing at a time as a table, with its filter, its way in and out, and for outlets
// the way of the walk.
#pragma once

#include <QWidget>
#include <array>

#include "document/session.h"
#include "document/surveyor.h"
#include "listings/listing.h"

class QAction;
class QLabel;
class QLineEdit;
class QMenu;
class QStackedWidget;
class QTabBar;
class QToolButton;

namespace cordreach::app {

class AskDialog;
class FoundFields;
class ImportDialog;
class ListingTable;
class TickBox;

class ListingsView : public QWidget {
  Q_OBJECT

 public:
  ListingsView(Session& session, Surveyor& surveyor, QWidget* parent = nullptr);

  [[nodiscard]] ListingKind kind() const;
  void show(ListingKind kind);
  using QWidget::show;
  [[nodiscard]] ListingTable* table() const { return table(kind()); }
  [[nodiscard]] ListingTable* table(ListingKind kind) const { return m_tables.at(static_cast<std::size_t>(kind)); }
  [[nodiscard]] QLineEdit* filter() const { return m_filter; }
  void walk(bool walking);

  // Null, and refused() said, when the file can't be read.
  [[nodiscard]] ImportDialog* importDialog(const QString& path);
  // Null when nothing is chosen, or its column can't be written.
  [[nodiscard]] AskDialog* bulkDialog();
  // CSV, or a spreadsheet by the name's ending ".xlsx".
  [[nodiscard]] base::Result<base::Done> save(const QString& path) const;

 signals:
  void refused(const QString& sentence);

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void buildTables();
  void buildMenu();
  void arrange();
  void connectAll();
  void reword();
  void fillMenu();
  void count();
  void chooseAndImport();
  void chooseAndSave(const char* suffix);
  void setForChosen();
  void showWalkSheet();

  Session& m_session;
  Surveyor& m_surveyor;
  QTabBar* m_kinds;
  QLineEdit* m_filter;
  QToolButton* m_more;
  QMenu* m_menu;
  QWidget* m_outletRow;
  FoundFields* m_found;
  TickBox* m_walking;
  QLabel* m_walkingWord;
  QStackedWidget* m_stack;
  std::array<ListingTable*, kListingKinds> m_tables{};
  QLabel* m_count;
  std::vector<std::pair<QAction*, std::string>> m_actions;
};

}  // namespace cordreach::app
