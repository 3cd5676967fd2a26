// SPDX-License-Identifier: GPL-3.0-or-later
#include "listings/listing_model.h"

#include <algorithm>
#include <numeric>
#include <type_traits>

#include "look/look.h"
#include "shell/say.h"
#include "site/natural_order.h"
#include "site/walking_order.h"

namespace cordreach::app {

namespace {

// A thing came or went. Notes of what was done come with every assignment and are in no listing.
bool addsOrRemoves(const DocumentChange& change) {
  return std::ranges::any_of(change.changes, [](const site::AnyChange& any) {
    return std::visit(
        [](const auto& one) {
          using Change = std::decay_t<decltype(one)>;
          if constexpr (std::is_same_v<Change, site::HeadingChange> ||
                        std::is_same_v<Change, site::Change<site::HistoryEntry>>) {
            return false;
          } else {
            return one.before.has_value() != one.after.has_value();
          }
        },
        any);
  });
}

std::vector<std::string> textsOf(const std::vector<site::OutletId>& ids) {
  std::vector<std::string> texts;
  for (const site::OutletId& id : ids) texts.push_back(id.text());
  return texts;
}

}  // namespace

ListingModel::ListingModel(Session& session, const Surveyor& surveyor, ListingKind kind, QObject* parent)
    : QAbstractTableModel(parent), m_session(session), m_surveyor(surveyor), m_listing(listingOf(kind)) {
  connect(&session.document, &Document::changed, this, &ListingModel::follow);
  fill();
}

ListingContext ListingModel::context() const { return {m_session.document.site(), m_session.book, m_surveyor.found()}; }

ListingContext ListingModel::readContext() const { return {m_session.document.site(), m_session.book}; }

int ListingModel::rowOf(const std::string& id) const {
  const auto at = m_rowOf.find(id);
  return at == m_rowOf.end() ? -1 : at->second;
}

void ListingModel::follow(const DocumentChange& change) {
  if (change.reset) return fill();
  if (addsOrRemoves(change)) return keepOrder();
  if (!m_rows.empty()) emit dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
}

// Rows stay in their order, what is gone goes, what is new comes last.
void ListingModel::keepOrder() {
  const std::vector<std::string> all = m_listing.ids(m_session.document.site());
  const int before = m_total;
  std::vector<std::string> rows;
  std::unordered_map<std::string, bool> there;
  for (const std::string& id : all) there[id] = false;
  for (const std::string& id : m_rows) {
    const auto at = there.find(id);
    if (at == there.end()) continue;
    at->second = true;
    rows.push_back(id);
  }
  // With a filter, what it hides can't be told from what is new.
  const bool isFiltered = !m_filter.isEmpty();
  for (const std::string& id : all) {
    if (!isFiltered && !there[id]) rows.push_back(id);
  }
  m_total = static_cast<int>(all.size());
  if (rows == m_rows && before == m_total) return;
  setRows(std::move(rows));
}

std::vector<std::string> ListingModel::ordered() const {
  const site::Site& site = m_session.document.site();
  if (m_walking) return textsOf(site::walkingOrder(site));
  std::vector<std::string> ids = m_listing.ids(site);
  if (m_sortColumn < 0) return ids;
  const ListingContext in = readContext();
  std::vector<std::pair<std::string, std::string>> keyed;
  for (std::string& id : ids) {
    std::string key = m_listing.text(in, id, static_cast<std::size_t>(m_sortColumn));
    keyed.emplace_back(std::move(key), std::move(id));
  }
  const bool ascending = m_sortOrder == Qt::AscendingOrder;
  std::ranges::stable_sort(keyed, [ascending](const auto& a, const auto& b) {
    if (a.first.empty() != b.first.empty()) return b.first.empty();  // what nobody knows comes last either way
    return ascending ? site::comesBefore(a.first, b.first) : site::comesBefore(b.first, a.first);
  });
  std::vector<std::string> sorted;
  for (auto& [key, id] : keyed) sorted.push_back(std::move(id));
  return sorted;
}

bool ListingModel::passes(const ListingContext& in, const std::string& id, const QStringList& words) const {
  QString row;
  for (std::size_t column = 0; column < m_listing.columns().size(); ++column) {
    row += QString::fromStdString(m_listing.text(in, id, column)) + QLatin1Char('\n');
  }
  return std::ranges::all_of(words, [&](const QString& word) { return row.contains(word, Qt::CaseInsensitive); });
}

void ListingModel::fill() {
  std::vector<std::string> rows = ordered();
  m_total = static_cast<int>(rows.size());
  const QStringList words = m_filter.split(QLatin1Char(' '), Qt::SkipEmptyParts);
  if (!words.isEmpty()) {
    const ListingContext in = readContext();
    std::erase_if(rows, [&](const std::string& id) { return !passes(in, id, words); });
  }
  setRows(std::move(rows));
}

void ListingModel::setRows(std::vector<std::string> rows) {
  beginResetModel();
  m_rows = std::move(rows);
  m_rowOf.clear();
  for (std::size_t row = 0; row < m_rows.size(); ++row) m_rowOf.emplace(m_rows[row], static_cast<int>(row));
  endResetModel();
  emit filled();
}

void ListingModel::setFilter(const QString& words) {
  if (words == m_filter) return;
  m_filter = words;
  fill();
}

void ListingModel::setWalking(bool walking) {
  if (walking == m_walking) return;
  m_walking = walking;
  m_sortColumn = -1;
  fill();
}

void ListingModel::sort(int column, Qt::SortOrder order) {
  m_walking = false;
  m_sortColumn = column;
  m_sortOrder = order;
  fill();
}

void ListingModel::reword() {
  emit headerDataChanged(Qt::Horizontal, 0, columnCount() - 1);
  if (!m_rows.empty()) emit dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
}

bool ListingModel::write(const std::vector<CellText>& cells) {
  const auto made = m_listing.write(context(), cells);
  if (const auto* fault = std::get_if<CellFault>(&made)) {
    const CellText& cell = cells.at(fault->cell);
    const std::string name = m_listing.text(context(), cell.id, 0);
    const std::string heading = headingOf(m_session.book, m_listing.columns().at(cell.column));
    emit refused(say(m_session.book, "listing.refused",
                     {{"name", name.empty() ? cell.id : name},
                      {"column", heading},
                      {"sentence", sentenceOf(m_session.book, fault->error).toStdString()}}));
    return false;
  }
  const auto done = m_session.document.apply(std::get<site::Edit>(made));
  if (!done) emit refused(sentenceOf(m_session.book, done.error()));
  return done.ok();
}

io::Table ListingModel::table() const {
  const ListingContext in = readContext();
  io::Table table(1);
  for (const ListingColumn& column : m_listing.columns()) table.front().push_back(headingOf(m_session.book, column));
  for (const std::string& id : m_rows) {
    io::TableRow row;
    for (std::size_t column = 0; column < m_listing.columns().size(); ++column) {
      std::string text = m_listing.text(in, id, column);
      const bool unknown = text.empty() && m_listing.columns()[column].mayBeUnknown;
      row.push_back(unknown ? std::string(kDontKnow) : std::move(text));
    }
    table.push_back(std::move(row));
  }
  return table;
}

int ListingModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int ListingModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(m_listing.columns().size());
}

QVariant ListingModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const bool isText = role == Qt::DisplayRole || role == Qt::EditRole || role == Qt::AccessibleTextRole;
  if (!isText && role != Qt::ForegroundRole && role != kIsUnknown) return {};
  const auto column = static_cast<std::size_t>(index.column());
  const ListingColumn& about = m_listing.columns()[column];
  const std::string text = m_listing.text(readContext(), id(index.row()), column);
  const bool isUnknown = about.mayBeUnknown && text.empty();
  if (role == kIsUnknown) return isUnknown;
  if (role == Qt::ForegroundRole) {
    const bool quiet = isUnknown || !about.editable;
    return quiet ? QVariant(look::tokens().ink2) : QVariant();
  }
  if (role == Qt::AccessibleTextRole && isUnknown) return say(m_session.book, "word.unknown");
  if (role == Qt::DisplayRole && isUnknown) return QString::fromUtf8(kDontKnow.data(), 1);
  return QString::fromStdString(text);
}

QVariant ListingModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
  return QString::fromStdString(headingOf(m_session.book, m_listing.columns().at(static_cast<std::size_t>(section))));
}

Qt::ItemFlags ListingModel::flags(const QModelIndex& index) const {
  const Qt::ItemFlags plain = QAbstractTableModel::flags(index);
  const bool editable = index.isValid() && m_listing.columns()[static_cast<std::size_t>(index.column())].editable;
  return editable ? plain | Qt::ItemIsEditable : plain;
}

bool ListingModel::setData(const QModelIndex& index, const QVariant& value, int role) {
  if (role != Qt::EditRole || !index.isValid()) return false;
  return write({{id(index.row()), static_cast<std::size_t>(index.column()), value.toString().toStdString()}});
}

}  // namespace cordreach::app
