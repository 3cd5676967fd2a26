// SPDX-License-Identifier: GPL-3.0-or-later
#include "listings/walk_sheet.h"

#include <QBuffer>
#include <QFontMetricsF>
#include <QPainter>
#include <QPdfWriter>
#include <QRegularExpression>
#include <algorithm>
#include <array>

#include "panels/names.h"
#include "shell/say.h"
#include "site/file_words.h"
#include "site/walking_order.h"

namespace cordreach::app {

namespace {

// All in points.
constexpr double kMargin = 40;
constexpr double kHeadHeight = 86;
constexpr double kFootHeight = 48;
constexpr double kLeastRow = 24;  // room for handwriting
constexpr double kCellMargin = 4;
constexpr int kTextPt = 9;
constexpr int kSmallPt = 8;

struct Column {
  const char* code;
  double share;  // of the width
};
constexpr std::array<Column, 6> kColumns{{{"walk.outlet", 0.12},
                                          {"walk.where", 0.24},
                                          {"walk.known", 0.20},
                                          {"walk.breaker", 0.14},
                                          {"walk.how", 0.10},
                                          {"walk.remarks", 0.20}}};

QFont fontOf(int points, bool bold = false) {
  QFont font(QStringLiteral("DejaVu Sans"));
  font.setPixelSize(points);  // a unit of the painter is a point
  font.setBold(bold);
  return font;
}

QRectF columnBox(double width, std::size_t column, double top, double height) {
  double left = kMargin;
  for (std::size_t i = 0; i < column; ++i) left += kColumns.at(i).share * width;
  return {left, top, kColumns.at(column).share * width, height};
}

// Between words, and within one only where it is wider than its cell.
int wrapping(const QFontMetricsF& metrics, const QString& text, double width) {
  const QStringList words = text.split(QRegularExpression(QStringLiteral("\\s")), Qt::SkipEmptyParts);
  const bool fits =
      std::ranges::all_of(words, [&](const QString& word) { return metrics.horizontalAdvance(word) <= width; });
  return fits ? Qt::TextWordWrap : Qt::TextWrapAnywhere;
}

QRectF textBox(const QRectF& cell) { return cell.adjusted(kCellMargin, 3, -kCellMargin, -3); }

}  // namespace

WalkSheet::WalkSheet(const site::Site& site, const text::Phrasebook& book, const std::optional<site::FloorId>& floor)
    : m_book(book), m_title(QString::fromStdString(site.name)) {
  if (m_title.isEmpty()) m_title = say(book, "window.unnamed");
  const site::Floor* one = floor ? site.find<site::Floor>(*floor) : nullptr;
  m_floor = one != nullptr ? QString::fromStdString(one->name) : say(book, "walk.all_floors");
  readRows(site, floor);
  breakPages();
}

QPageSize WalkSheet::pageSize() const {
  return QPageSize(m_book.locale().units == text::UnitSystem::Us ? QPageSize::Letter : QPageSize::A4);
}

QString WalkSheet::knownOf(const site::Site& site, const site::Outlet& outlet) const {
  QStringList lines;
  for (const site::Contact& contact : outlet.contacts) {
    const site::Circuit* circuit = contact.assignment ? site.find<site::Circuit>(contact.assignment->circuit) : nullptr;
    QString line = circuit == nullptr
                       ? say(m_book, "word.unknown")
                       : QString::fromStdString(circuitName(site, *circuit)) + QStringLiteral(", ") +
                             say(m_book, "field.how." + std::string(site::fileWord(contact.assignment->how)));
    if (!lines.contains(line)) lines << line;
  }
  return lines.join(QLatin1Char('\n'));
}

void WalkSheet::readRows(const site::Site& site, const std::optional<site::FloorId>& floor) {
  for (const site::OutletId& id : site::walkingOrder(site)) {
    const site::Outlet& outlet = site.at<site::Outlet>(id);
    if (floor && (!outlet.place || outlet.place->floor != *floor)) continue;
    QStringList where;
    const site::Floor* on = outlet.place ? site.find<site::Floor>(outlet.place->floor) : nullptr;
    if (!floor && on != nullptr) where << QString::fromStdString(on->name);
    for (const std::string& part : {outlet.room, outlet.wall}) {
      if (!part.empty()) where << QString::fromStdString(part);
    }
    m_rows.push_back({QString::fromStdString(outletName(outlet)), where.join(QStringLiteral(", ")),
                      knownOf(site, outlet), kLeastRow});
  }
}

// A text that needs several lines makes its row higher.
void WalkSheet::breakPages() {
  const QSizeF page = pageSize().size(QPageSize::Point);
  const double width = page.width() - 2 * kMargin;
  const double room = page.height() - 2 * kMargin - kHeadHeight - kFootHeight;
  const QFontMetricsF plain(fontOf(kTextPt));
  const QFontMetricsF bold(fontOf(kTextPt, true));
  const QFontMetricsF small(fontOf(kSmallPt));
  m_pages.assign(1, {});
  double used = 0;
  for (std::size_t i = 0; i < m_rows.size(); ++i) {
    Row& row = m_rows[i];
    const auto height = [&](const QFontMetricsF& metrics, std::size_t column, const QString& text) {
      const QRectF box = textBox(columnBox(width, column, 0, 1e6));
      return metrics.boundingRect(box, wrapping(metrics, text, box.width()), text).height() + 6;
    };
    row.height =
        std::max({kLeastRow, height(bold, 0, row.outlet), height(plain, 1, row.where), height(small, 2, row.known)});
    row.height = std::min(row.height, room);
    if (used + row.height > room && !m_pages.back().empty()) {
      m_pages.emplace_back();
      used = 0;
    }
    m_pages.back().push_back(i);
    used += row.height;
  }
}

void WalkSheet::paintHead(QPainter& painter, int page) const {
  const double width = pageSize().size(QPageSize::Point).width() - 2 * kMargin;
  painter.setFont(fontOf(14, true));
  const QRectF title(kMargin, kMargin, width, 20);
  painter.drawText(title, Qt::AlignLeft | Qt::AlignVCenter,
                   say(m_book, "walk.title", {{"building", m_title.toStdString()}, {"floor", m_floor.toStdString()}}));
  painter.setFont(fontOf(kTextPt));
  painter.drawText(QRectF(kMargin, kMargin + 22, width, 14), Qt::AlignLeft | Qt::AlignVCenter, say(m_book, "walk.who"));
  painter.drawText(QRectF(kMargin, kMargin + 22, width, 14), Qt::AlignRight | Qt::AlignVCenter,
                   say(m_book, "walk.page", {{"n", page + 1.0}, {"of", static_cast<double>(pageCount())}}));
  painter.setFont(fontOf(kSmallPt));
  painter.drawText(QRectF(kMargin, kMargin + 38, width, 12), Qt::AlignLeft | Qt::AlignVCenter, say(m_book, "walk.key"));
  painter.setFont(fontOf(kTextPt, true));
  for (std::size_t i = 0; i < kColumns.size(); ++i) {
    const QRectF box = textBox(columnBox(width, i, kMargin + 52, kHeadHeight - 52));
    painter.drawText(box, Qt::AlignLeft | Qt::AlignBottom | Qt::TextWordWrap, say(m_book, kColumns.at(i).code));
  }
}

void WalkSheet::paintRow(QPainter& painter, const Row& row, double top) const {
  const double width = pageSize().size(QPageSize::Point).width() - 2 * kMargin;
  const auto cell = [&](std::size_t column) { return columnBox(width, column, top, row.height); };
  painter.setPen(QPen(Qt::black, 0.5));
  for (std::size_t i = 0; i < kColumns.size(); ++i) painter.drawRect(cell(i));
  const auto put = [&](std::size_t column, const QFont& font, const QString& text) {
    const QRectF box = textBox(cell(column));
    painter.setFont(font);
    painter.drawText(box, Qt::AlignLeft | Qt::AlignVCenter | wrapping(QFontMetricsF(font), text, box.width()), text);
  };
  put(0, fontOf(kTextPt, true), row.outlet);
  put(1, fontOf(kTextPt), row.where);
  put(2, fontOf(kSmallPt), row.known);
}

void WalkSheet::paintFoot(QPainter& painter) const {
  const QSizeF page = pageSize().size(QPageSize::Point);
  painter.setFont(fontOf(kSmallPt));
  const QRectF box(kMargin, page.height() - kMargin - kFootHeight + 6, page.width() - 2 * kMargin, kFootHeight - 6);
  painter.drawText(box, Qt::AlignLeft | Qt::AlignBottom | Qt::TextWordWrap,
                   say(m_book, "walk.caution") + QLatin1Char('\n') + say(m_book, "always"));
}

void WalkSheet::paint(QPainter& painter, int page) const {
  painter.save();
  painter.setPen(QPen(Qt::black, 0.5));
  painter.setBrush(Qt::NoBrush);
  paintHead(painter, page);
  double top = kMargin + kHeadHeight;
  for (const std::size_t row : m_pages.at(static_cast<std::size_t>(page))) {
    paintRow(painter, m_rows[row], top);
    top += m_rows[row].height;
  }
  paintFoot(painter);
  painter.restore();
}

QByteArray WalkSheet::pdf() const {
  QBuffer buffer;
  buffer.open(QIODevice::WriteOnly);
  {
    QPdfWriter writer(&buffer);
    writer.setResolution(72);
    writer.setPageSize(pageSize());
    writer.setPageMargins(QMarginsF());
    writer.setTitle(m_title);
    writer.setCreator(QStringLiteral("Cordreach"));
    QPainter painter(&writer);
    for (int page = 0; page < pageCount(); ++page) {
      if (page > 0) writer.newPage();
      paint(painter, page);
    }
  }
  return buffer.data();
}

QStringList WalkSheet::outlets() const {
  QStringList names;
  for (const Row& row : m_rows) names << row.outlet;
  return names;
}

}  // namespace cordreach::app
