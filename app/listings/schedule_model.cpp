// SPDX-License-Identifier: GPL-3.0-or-later
#include "listings/schedule_model.h"

#include <algorithm>
#include <array>

#include "listings/cell_codecs.h"
#include "look/look.h"
#include "panels/fresh_id.h"
#include "shell/say.h"
#include "site/file_words.h"
#include "site/phases.h"

namespace cordreach::app {

ScheduleModel::ScheduleModel(Session& session, const Surveyor& surveyor, QObject* parent)
    : QAbstractTableModel(parent), m_session(session), m_surveyor(surveyor) {
  connect(&session.document, &Document::changed, this, &ScheduleModel::fill);
}

ListingContext ScheduleModel::context() const {
  return {m_session.document.site(), m_session.book, m_surveyor.found()};
}

void ScheduleModel::show(const std::optional<site::PanelId>& panel) {
  m_panel = panel;
  fill();
}

void ScheduleModel::fill() {
  const site::Site& site = m_session.document.site();
  if (m_panel && site.find<site::Panel>(*m_panel) == nullptr) m_panel.reset();
  site::PanelSchedule now = m_panel ? site::scheduleOf(site, *m_panel) : site::PanelSchedule{};
  const bool sameShape =
      now.spaces.size() == m_schedule.spaces.size() && now.elsewhere.size() == m_schedule.elsewhere.size();
  if (!sameShape) beginResetModel();
  m_schedule = std::move(now);
  if (!sameShape) {
    endResetModel();
  } else if (rowCount() > 0) {
    emit dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
  }
}

void ScheduleModel::reword() {
  emit headerDataChanged(Qt::Horizontal, 0, columnCount() - 1);
  fill();
}

int ScheduleModel::rowCount(const QModelIndex& parent) const {
  if (parent.isValid()) return 0;
  return static_cast<int>(m_schedule.spaces.size() / 2 + (m_schedule.elsewhere.size() + 1) / 2);
}

int ScheduleModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : 2 * kHalf; }

ScheduleModel::Cell ScheduleModel::cellAt(const QModelIndex& index) const {
  const bool right = index.column() >= kHalf;
  Cell cell;
  cell.column = static_cast<Column>(right ? 2 * kHalf - 1 - index.column() : index.column());
  const auto at = static_cast<std::size_t>(2 * index.row() + (right ? 1 : 0));
  if (at < m_schedule.spaces.size()) {
    cell.space = &m_schedule.spaces[at];
    cell.circuits = cell.space->circuits;
  } else if (at - m_schedule.spaces.size() < m_schedule.elsewhere.size()) {
    cell.circuits = {m_schedule.elsewhere[at - m_schedule.spaces.size()]};
  }
  return cell;
}

std::vector<site::CircuitId> ScheduleModel::circuitsAt(const QModelIndex& index) const {
  return cellAt(index).circuits;
}

QModelIndex ScheduleModel::indexOf(const site::CircuitId& circuit) const {
  for (int row = 0; row < rowCount(); ++row) {
    for (const int column : {int(kFeeds), 2 * kHalf - 1}) {
      const std::vector<site::CircuitId> there = circuitsAt(index(row, column));
      if (std::find(there.begin(), there.end(), circuit) != there.end()) return index(row, column);
    }
  }
  return {};
}

std::size_t ScheduleModel::listingColumn(Column column) const {
  const char* key = column == kRating ? "breaker_rating" : "purpose";
  const auto& columns = listingOf(ListingKind::Circuits).columns();
  const auto at = std::ranges::find(columns, key, &ListingColumn::key);
  return static_cast<std::size_t>(at - columns.begin());
}

// What is not plain about a breaker, in the words of a panel's lid.
std::string ScheduleModel::kindOf(const site::Circuit& circuit) const {
  const text::Phrasebook& book = m_session.book;
  std::string text;
  const auto add = [&](bool is, const std::string& code) {
    if (is) text += (text.empty() ? "" : ", ") + book.say(code);
  };
  add(circuit.use != site::UseClass::Ordinary, "field.use." + std::string(site::fileWord(circuit.use)));
  add(circuit.curve != site::BreakerCurve::ThermalMagnetic,
      "field.curve." + std::string(site::fileWord(circuit.curve)));
  add(circuit.groundFault, "schedule.ground_fault");
  add(circuit.arcFault, "schedule.arc_fault");
  add(circuit.tied, "schedule.tied");
  add(circuit.tandem, "schedule.tandem");
  add(circuit.spare, "schedule.spare");
  add(circuit.mayNotTrip, "schedule.may_not_trip");
  return text;
}

std::string ScheduleModel::numberOf(const Cell& cell) const {
  if (cell.space != nullptr) return std::to_string(cell.space->number);
  return cell.circuits.empty() ? std::string()
                               : m_session.document.site().at<site::Circuit>(cell.circuits.front()).number;
}

QString ScheduleModel::textOf(const Cell& cell) const {
  if (cell.column == kNumber) return QString::fromStdString(numberOf(cell));
  const site::Site& site = m_session.document.site();
  const text::Phrasebook& book = m_session.book;
  if (cell.space != nullptr && cell.space->continues) {
    if (cell.column != kFeeds) return {};
    const std::string first = site.at<site::Circuit>(cell.circuits.front()).number;
    return say(book, "schedule.with", {{"number", first}});
  }
  const Listing& circuits = listingOf(ListingKind::Circuits);
  QStringList texts;
  for (const site::CircuitId& id : cell.circuits) {
    std::string text = cell.column == kKind ? kindOf(site.at<site::Circuit>(id))
                                            : circuits.text(context(), id.text(), listingColumn(cell.column));
    if (text.empty() && cell.column == kRating) text = kDontKnow;
    texts << QString::fromStdString(text);
  }
  return texts.join(QString::fromUtf8(kBetweenParts.data(), int(kBetweenParts.size())));
}

QVariant ScheduleModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const Cell cell = cellAt(index);
  if (role == Qt::DisplayRole || role == Qt::EditRole || role == Qt::AccessibleTextRole) return textOf(cell);
  if (role == Qt::TextAlignmentRole) {
    const bool inner = cell.column == kNumber;
    const bool right = index.column() >= kHalf;
    return int((inner ? (right ? Qt::AlignLeft : Qt::AlignRight) : Qt::AlignLeft) | Qt::AlignVCenter);
  }
  if (role == Qt::FontRole && cell.column == kNumber) return look::font(look::Type::BodyBold);
  const bool quiet = cell.space != nullptr && (cell.space->continues || cell.circuits.empty());
  if (role == Qt::ForegroundRole && (quiet || cell.column == kKind)) return look::tokens().ink2;
  return {};
}

QVariant ScheduleModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
  static constexpr std::array kWords = {"field.purpose", "schedule.amps", "schedule.kind", "schedule.number"};
  const int column = section >= kHalf ? 2 * kHalf - 1 - section : section;
  return say(m_session.book, kWords.at(static_cast<std::size_t>(column)));
}

Qt::ItemFlags ScheduleModel::flags(const QModelIndex& index) const {
  const Qt::ItemFlags plain = QAbstractTableModel::flags(index);
  if (!index.isValid()) return plain;
  const Cell cell = cellAt(index);
  const bool isPlace = cell.space != nullptr ? !cell.space->continues : !cell.circuits.empty();
  return isPlace && cell.column < kKind ? plain | Qt::ItemIsEditable : plain;
}

bool ScheduleModel::setData(const QModelIndex& index, const QVariant& value, int role) {
  if (role != Qt::EditRole || !flags(index).testFlag(Qt::ItemIsEditable)) return false;
  return write(cellAt(index), value.toString().toStdString());
}

bool ScheduleModel::take(const std::variant<site::Edit, CellFault>& made) {
  if (const auto* fault = std::get_if<CellFault>(&made)) {
    emit refused(sentenceOf(m_session.book, fault->error));
    return false;
  }
  const auto done = m_session.document.apply(std::get<site::Edit>(made));
  if (!done) emit refused(sentenceOf(m_session.book, done.error()));
  return done.ok();
}

bool ScheduleModel::write(const Cell& cell, const std::string& text) {
  if (cell.circuits.empty()) return addBreaker(cell.space->number, cell.column, text);
  const std::vector<std::string> parts = partsOf(text);
  if (parts.size() > 1 && parts.size() != cell.circuits.size()) {
    return take(CellFault{0, {"listing.parts", text, {{"n", static_cast<double>(cell.circuits.size())}}}});
  }
  std::vector<CellText> cells;
  for (std::size_t i = 0; i < cell.circuits.size(); ++i) {
    cells.push_back({cell.circuits[i].text(), listingColumn(cell.column), parts.size() > 1 ? parts[i] : parts.front()});
  }
  return take(listingOf(ListingKind::Circuits).write(context(), cells));
}

bool ScheduleModel::addBreaker(int space, Column column, const std::string& text) {
  const site::Site& site = m_session.document.site();
  if (saysUnknown(m_session.book, text)) return true;
  site::Circuit circuit{freshId<site::Circuit>(site), *m_panel, std::to_string(space)};
  const site::Supply& supply = site::supplyOf(site, site.at<site::Panel>(*m_panel));
  circuit.phases = {site::phaseOfSpace(space, site::phaseCount(supply.system))};
  if (column == kFeeds) circuit.purpose = tidied(text);
  if (column == kRating) {
    const auto rating = readKnown<units::Current>(m_session.book, text, {});
    if (!rating.ok()) return take(CellFault{0, rating.error()});
    circuit.rating = rating.value();
  }
  return take(site::Edit{"circuit.add", {site::Change<site::Circuit>{std::nullopt, std::move(circuit)}}});
}

}  // namespace cordreach::app
