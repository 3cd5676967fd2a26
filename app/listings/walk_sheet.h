// SPDX-License-Identifier: GPL-3.0-or-later
// The sheet to carry round: outlets in walking order, with room to write down which breaker feeds each. Painted alike
// on paper and on screen.
#pragma once

#include <QByteArray>
#include <QPageSize>
#include <QString>
#include <QStringList>
#include <optional>
#include <vector>

#include "site/site.h"
#include "text/phrasebook.h"

class QPainter;

namespace cordreach::app {

// Of one floor, or of the whole building; outlets without a place are in the latter only.
class WalkSheet {
 public:
  WalkSheet(const site::Site& site, const text::Phrasebook& book, const std::optional<site::FloorId>& floor);

  // Letter where feet are used, else A4.
  [[nodiscard]] QPageSize pageSize() const;
  [[nodiscard]] int pageCount() const { return static_cast<int>(m_pages.size()); }
  // One unit of the painter is a point, 1/72 inch; the page's top left corner is at the origin.
  void paint(QPainter& painter, int page) const;
  [[nodiscard]] QByteArray pdf() const;
  // In the order of the sheet, for a reader that can't see it.
  [[nodiscard]] QStringList outlets() const;

 private:
  struct Row {
    QString outlet;
    QString where;
    QString known;
    double height = 0;
  };

  void readRows(const site::Site& site, const std::optional<site::FloorId>& floor);
  void breakPages();
  void paintHead(QPainter& painter, int page) const;
  void paintRow(QPainter& painter, const Row& row, double top) const;
  void paintFoot(QPainter& painter) const;
  [[nodiscard]] QString knownOf(const site::Site& site, const site::Outlet& outlet) const;

  const text::Phrasebook& m_book;
  QString m_title;
  QString m_floor;
  std::vector<Row> m_rows;
  std::vector<std::vector<std::size_t>> m_pages;  // rows of each
};

}  // namespace cordreach::app
