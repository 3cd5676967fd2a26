// SPDX-License-Identifier: GPL-3.0-or-later
// A listing as Qt's table: filtered and sorted here, so that rows stay where they are while people type in them. What
// is written goes into the document, one undo step a deed.
#pragma once

#include <QAbstractTableModel>
#include <string>
#include <unordered_map>
#include <vector>

#include "document/session.h"
#include "document/surveyor.h"
#include "listings/listing.h"

namespace cordreach::app {

class ListingModel : public QAbstractTableModel {
  Q_OBJECT

 public:
  enum Role { kIsUnknown = Qt::UserRole + 1 };

  ListingModel(Session& session, const Surveyor& surveyor, ListingKind kind, QObject* parent = nullptr);

  [[nodiscard]] const Listing& listing() const { return m_listing; }
  [[nodiscard]] ListingContext context() const;      // for writing, with who writes today
  [[nodiscard]] ListingContext readContext() const;  // quicker
  [[nodiscard]] std::string id(int row) const { return m_rows.at(static_cast<std::size_t>(row)); }
  [[nodiscard]] int rowOf(const std::string& id) const;  // -1: not shown
  [[nodiscard]] int total() const { return m_total; }    // without the filter
  [[nodiscard]] rules::Subject subject(int row) const { return {m_listing.subjectKind(), id(row)}; }

  // Only rows in one of whose cells all these words stand, capitals not looked at.
  void setFilter(const QString& words);
  // Of outlets: as somebody walks past them; by a click on a heading it ends.
  void setWalking(bool walking);
  [[nodiscard]] bool isWalking() const { return m_walking; }
  // One edit; false, and refused() said, when a cell can't be.
  bool write(const std::vector<CellText>& cells);
  // Everything shown, headings first; what is unknown as "?".
  [[nodiscard]] io::Table table() const;
  void reword();

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
  [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role) override;
  void sort(int column, Qt::SortOrder order) override;

 signals:
  void refused(const QString& sentence);
  void filled();  // other rows, or in another order

 private:
  void follow(const DocumentChange& change);
  void fill();
  void keepOrder();
  void setRows(std::vector<std::string> rows);
  [[nodiscard]] std::vector<std::string> ordered() const;
  [[nodiscard]] bool passes(const ListingContext& in, const std::string& id, const QStringList& words) const;

  Session& m_session;
  const Surveyor& m_surveyor;
  const Listing& m_listing;
  std::vector<std::string> m_rows;
  std::unordered_map<std::string, int> m_rowOf;
  int m_total = 0;
  QString m_filter;
  bool m_walking = false;
  int m_sortColumn = -1;  // by name
  Qt::SortOrder m_sortOrder = Qt::AscendingOrder;
};

}  // namespace cordreach::app
