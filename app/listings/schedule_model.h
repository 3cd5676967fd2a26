// SPDX-License-Identifier: GPL-3.0-or-later
// A panel's schedule as a table: two spaces a row, the odd one at the left, what each feeds at the outer edges.
#pragma once

#include <QAbstractTableModel>
#include <optional>

#include "document/session.h"
#include "document/surveyor.h"
#include "listings/listing.h"
#include "site/panel_schedule.h"

namespace cordreach::app {

class ScheduleModel : public QAbstractTableModel {
  Q_OBJECT

 public:
  // Left half; the right half has them the other way round.
  enum Column { kFeeds, kRating, kKind, kNumber, kHalf };

  ScheduleModel(Session& session, const Surveyor& surveyor, QObject* parent = nullptr);

  void show(const std::optional<site::PanelId>& panel);
  [[nodiscard]] const std::optional<site::PanelId>& panel() const { return m_panel; }
  [[nodiscard]] std::vector<site::CircuitId> circuitsAt(const QModelIndex& index) const;
  [[nodiscard]] QModelIndex indexOf(const site::CircuitId& circuit) const;
  void reword();

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
  [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
  // What it feeds and its rating; in an empty space that adds a breaker there.
  bool setData(const QModelIndex& index, const QVariant& value, int role) override;

 signals:
  void refused(const QString& sentence);

 private:
  struct Cell {
    const site::ScheduleSpace* space = nullptr;  // none: of a circuit whose number names no space, or nothing
    std::vector<site::CircuitId> circuits;
    Column column = kFeeds;
  };

  void fill();
  [[nodiscard]] Cell cellAt(const QModelIndex& index) const;
  [[nodiscard]] QString textOf(const Cell& cell) const;
  [[nodiscard]] std::string kindOf(const site::Circuit& circuit) const;
  [[nodiscard]] std::string numberOf(const Cell& cell) const;
  bool write(const Cell& cell, const std::string& text);
  bool addBreaker(int space, Column column, const std::string& text);
  bool take(const std::variant<site::Edit, CellFault>& made);
  [[nodiscard]] ListingContext context() const;
  [[nodiscard]] std::size_t listingColumn(Column column) const;

  Session& m_session;
  const Surveyor& m_surveyor;
  std::optional<site::PanelId> m_panel;
  site::PanelSchedule m_schedule;
};

}  // namespace cordreach::app
