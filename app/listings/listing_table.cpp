// SPDX-License-Identifier: GPL-3.0-or-later
#include "listings/listing_table.h"

#include <QApplication>
#include <QClipboard>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLineEdit>
#include <QScopedValueRollback>
#include <QTimer>
#include <algorithm>

#include "io/table_csv.h"
#include "listings/cell_editor.h"
#include "look/look.h"
#include "shell/say.h"

namespace cordreach::app {

namespace {

constexpr int kMeasuredRows = 60;
constexpr double kWidestColumnPx = 260;
constexpr double kRowMarginPx = 8;

}  // namespace

ListingTable::ListingTable(Session& session, ListingModel* model, QWidget* parent)
    : QTableView(parent), m_session(session), m_model(model) {
  setModel(model);
  m_editor = new CellEditor(
      [model](const QModelIndex& index) {
        return model->listing().choices(model->context(), static_cast<std::size_t>(index.column()));
      },
      this);
  setItemDelegate(m_editor);
  setSelectionMode(ExtendedSelection);
  setEditTriggers(DoubleClicked | EditKeyPressed | AnyKeyPressed);
  setTabKeyNavigation(true);
  setWordWrap(false);
  setAlternatingRowColors(false);
  setHorizontalScrollMode(ScrollPerPixel);
  setCornerButtonEnabled(false);
  verticalHeader()->hide();
  verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  horizontalHeader()->setHighlightSections(false);
  horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  horizontalHeader()->setResizeContentsPrecision(kMeasuredRows);
  horizontalHeader()->setSortIndicatorShown(true);
  horizontalHeader()->setSortIndicator(-1, Qt::AscendingOrder);
  horizontalHeader()->setSectionsClickable(true);
  connect(horizontalHeader(), &QHeaderView::sortIndicatorChanged, model, &ListingModel::sort);
  connect(model, &ListingModel::refused, this, &ListingTable::refused);
  connect(model, &ListingModel::filled, this, &ListingTable::showChosen);
  connect(model, &ListingModel::filled, this, &ListingTable::widenColumns);
  connect(model, &ListingModel::dataChanged, this, &ListingTable::widenColumns);
  connect(&session.selection, &Selection::changed, this, &ListingTable::showChosen);
  connect(&session.selection, &Selection::shown, this, &ListingTable::reveal);
  connect(horizontalHeader(), &QHeaderView::sectionResized, this, [this](int column) {
    if (!m_fitting && isVisible()) m_setByHand.insert(column);
  });
  fitColumns();
  showChosen();
}

void ListingTable::fitColumns() {
  const QScopedValueRollback fitting(m_fitting, true);
  m_setByHand.clear();
  verticalHeader()->setDefaultSectionSize(fontMetrics().height() + look::scaled(kRowMarginPx));
  const int widest = look::scaled(kWidestColumnPx);
  resizeColumnsToContents();
  for (int column = 0; column < m_model->columnCount(); ++column) {
    if (columnWidth(column) > widest) setColumnWidth(column, widest);
  }
}

// For what came since; a width that somebody set by hand stays. Not while it is hidden: it is asked again when shown.
void ListingTable::widenColumns() {
  if (!isVisible()) return;
  const QScopedValueRollback fitting(m_fitting, true);
  for (int column = 0; column < m_model->columnCount(); ++column) {
    const int wanted = std::min(sizeHintForColumn(column), look::scaled(kWidestColumnPx));
    if (wanted > columnWidth(column) && !m_setByHand.contains(column)) setColumnWidth(column, wanted);
  }
}

void ListingTable::showEvent(QShowEvent* event) {
  QTableView::showEvent(event);
  widenColumns();
}

std::vector<int> ListingTable::chosenRows() const {
  std::set<int> rows;
  for (const QItemSelectionRange& range : selectionModel()->selection()) {
    for (int row = range.top(); row <= range.bottom(); ++row) rows.insert(row);
  }
  return {rows.begin(), rows.end()};
}

void ListingTable::selectionChanged(const QItemSelection& selected, const QItemSelection& deselected) {
  QTableView::selectionChanged(selected, deselected);
  if (m_following || !isVisible()) return;
  const QScopedValueRollback following(m_following, true);
  std::vector<rules::Subject> chosen;
  for (const int row : chosenRows()) chosen.push_back(m_model->subject(row));
  m_session.selection.choose(std::move(chosen));
}

void ListingTable::showChosen() {
  if (m_following) return;
  const QScopedValueRollback following(m_following, true);
  QItemSelection rows;
  int first = -1;
  for (const rules::Subject& subject : m_session.selection.chosen()) {
    const int row = subject.kind == m_model->listing().subjectKind() ? m_model->rowOf(subject.id) : -1;
    if (row < 0) continue;
    if (first < 0) first = row;
    rows.select(m_model->index(row, 0), m_model->index(row, m_model->columnCount() - 1));
  }
  const int column = std::max(currentIndex().column(), 0);
  selectionModel()->select(rows, QItemSelectionModel::ClearAndSelect);
  if (first < 0) return;
  const QModelIndex at = m_model->index(first, column);
  selectionModel()->setCurrentIndex(at, QItemSelectionModel::NoUpdate);
  scrollTo(at);
}

void ListingTable::reveal(const rules::Subject& subject) {
  if (subject.kind != m_model->listing().subjectKind()) return;
  const int row = m_model->rowOf(subject.id);
  if (row >= 0) scrollTo(m_model->index(row, std::max(currentIndex().column(), 0)), PositionAtCenter);
}

QItemSelectionRange ListingTable::bounds() const {
  const QItemSelection selection = selectionModel()->selection();
  if (selection.isEmpty()) {
    return currentIndex().isValid() ? QItemSelectionRange(currentIndex()) : QItemSelectionRange();
  }
  int top = m_model->rowCount();
  int left = m_model->columnCount();
  int bottom = -1;
  int right = -1;
  for (const QItemSelectionRange& range : selection) {
    top = std::min(top, range.top());
    left = std::min(left, range.left());
    bottom = std::max(bottom, range.bottom());
    right = std::max(right, range.right());
  }
  return {m_model->index(top, left), m_model->index(bottom, right)};
}

// A rectangle, as spreadsheets do; cells in it that are not selected are left empty.
void ListingTable::copy() const {
  const QItemSelectionRange range = bounds();
  if (!range.isValid()) return;
  io::Table table;
  for (int row = range.top(); row <= range.bottom(); ++row) {
    io::TableRow cells;
    for (int column = range.left(); column <= range.right(); ++column) {
      const QModelIndex at = m_model->index(row, column);
      const bool isIn = selectionModel()->isSelected(at) || range.height() * range.width() == 1;
      cells.push_back(isIn ? at.data(Qt::DisplayRole).toString().toStdString() : std::string());
    }
    table.push_back(std::move(cells));
  }
  QApplication::clipboard()->setText(QString::fromStdString(io::writeTableTsv(table)));
}

void ListingTable::paste() {
  const QItemSelectionRange range = bounds();
  if (!range.isValid()) return;
  const auto read = io::readTableTsv(QApplication::clipboard()->text().toStdString());
  if (!read.ok()) return emit refused(sentenceOf(m_session.book, read.error()));
  const io::Table& table = read.value();
  const auto cell = [&](int row, int column, std::string text) {
    return CellText{m_model->id(row), static_cast<std::size_t>(column), std::move(text)};
  };
  std::vector<CellText> cells;
  if (table.size() == 1 && table.front().size() == 1) {
    for (const QModelIndex& at : selectionModel()->selectedIndexes()) {
      if (m_model->flags(at).testFlag(Qt::ItemIsEditable)) cells.push_back(cell(at.row(), at.column(), table[0][0]));
    }
    m_model->write(cells);
    return;
  }
  const auto room = static_cast<std::size_t>(m_model->rowCount() - range.top());
  const auto wide = static_cast<std::size_t>(m_model->columnCount() - range.left());
  std::size_t columns = 0;
  for (const io::TableRow& row : table) columns = std::max(columns, row.size());
  const auto tooMany = [&](const char* code, std::size_t n, std::size_t fit) {
    emit refused(sentenceOf(m_session.book, {code, "", {{"n", double(n)}, {"room", double(fit)}}}));
  };
  if (table.size() > room) return tooMany("listing.paste_rows", table.size(), room);
  if (columns > wide) return tooMany("listing.paste_columns", columns, wide);
  for (std::size_t row = 0; row < table.size(); ++row) {
    for (std::size_t column = 0; column < table[row].size(); ++column) {
      cells.push_back(cell(range.top() + int(row), range.left() + int(column), table[row][column]));
    }
  }
  m_model->write(cells);
}

void ListingTable::forget() {
  std::vector<CellText> cells;
  for (const QModelIndex& at : selectionModel()->selectedIndexes()) {
    if (!m_model->flags(at).testFlag(Qt::ItemIsEditable)) continue;
    cells.push_back({m_model->id(at.row()), static_cast<std::size_t>(at.column()), std::string(kDontKnow)});
  }
  if (!cells.empty()) m_model->write(cells);
}

std::optional<base::Error> ListingTable::setForChosen(int column, const std::string& text) {
  std::vector<CellText> cells;
  for (const int row : chosenRows()) cells.push_back({m_model->id(row), static_cast<std::size_t>(column), text});
  const auto made = m_model->listing().write(m_model->context(), cells);
  if (const auto* fault = std::get_if<CellFault>(&made)) return fault->error;
  const auto done = m_session.document.apply(std::get<site::Edit>(made));
  return done ? std::nullopt : std::optional(done.error());
}

void ListingTable::keyPressEvent(QKeyEvent* event) {
  if (event->matches(QKeySequence::Copy)) return copy();
  if (event->matches(QKeySequence::Paste)) return paste();
  if (event->key() == Qt::Key_Delete || event->key() == Qt::Key_Backspace) return forget();
  const bool isReturn = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
  if (isReturn && event->modifiers() == Qt::NoModifier && state() != EditingState) {
    if (currentIndex().isValid()) edit(currentIndex());
    return;
  }
  QTableView::keyPressEvent(event);
}

// The view chooses all of a text that it opens; what is to be mended is not to be typed over.
void ListingTable::askAgain(const QModelIndex& at) {
  if (!at.isValid()) return;
  edit(at);
  auto* line = qobject_cast<QLineEdit*>(QApplication::focusWidget());
  if (line != nullptr && isAncestorOf(line)) line->end(false);
}

// Return goes on with the row below; along the way of the walk at once with typing. What was refused is asked again.
void ListingTable::closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) {
  const QModelIndex refusedAt = m_editor->takeRefused();
  if (hint == QAbstractItemDelegate::RevertModelCache) m_editor->giveUp();
  QTableView::closeEditor(editor, refusedAt.isValid() ? QAbstractItemDelegate::NoHint : hint);
  if (refusedAt.isValid()) {
    setCurrentIndex(refusedAt);
    QTimer::singleShot(0, this, [this, at = QPersistentModelIndex(refusedAt)] { askAgain(at); });
    return;
  }
  if (hint != QAbstractItemDelegate::SubmitModelCache) return;
  const QModelIndex below = m_model->index(currentIndex().row() + 1, currentIndex().column());
  if (!below.isValid()) return;
  setCurrentIndex(below);
  if (m_model->isWalking()) edit(below);
}

}  // namespace cordreach::app
