// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/field_view.h"

#include <QHeaderView>
#include <QMouseEvent>
#include <QPainter>
#include <QScrollBar>
#include <algorithm>

#include "desk/cord_words.h"
#include "desk/field_painting.h"
#include "look/look.h"
#include "shell/say.h"

namespace cordreach::app {

namespace {

constexpr int kCellWidth = 84;
constexpr int kCellHeight = 50;
constexpr int kTallest = 96;
constexpr double kEdge = 3;
constexpr int kBar = 14;  // for a scroll bar

}  // namespace

FieldView::FieldView(CordModel& model, QWidget* parent)
    : QTableView(parent), m_model(model), m_cells(new FieldModel(model, this)) {
  setModel(m_cells);
  setItemDelegate(new FieldPainting(*m_cells, this));
  setHorizontalHeader(new LengthHeader(*m_cells, this));
  setVerticalHeader(new GaugeHeader(*m_cells, this));
  setShowGrid(false);
  setFrameShape(QFrame::NoFrame);
  setSelectionMode(QAbstractItemView::SingleSelection);
  setEditTriggers(QAbstractItemView::NoEditTriggers);
  setTabKeyNavigation(false);
  setMouseTracking(true);
  setCornerButtonEnabled(false);
  setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
  setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  for (QHeaderView* header : {horizontalHeader(), verticalHeader()}) {
    header->setSectionsClickable(false);
    header->setHighlightSections(false);
    header->setSectionResizeMode(QHeaderView::Fixed);
    header->setMinimumSectionSize(1);
  }
  connect(&model, &CordModel::answerChanged, this, &FieldView::follow);
  rename();
  fit();
}

void FieldView::rename() { setAccessibleName(say(m_model.book(), "desk.field")); }

QSize FieldView::sizeHint() const {
  const int rows = m_cells->rowCount();
  return {look::scaled(kCellWidth) * m_cells->columnCount() + verticalHeader()->sizeHint().width(),
          look::scaled(kCellHeight) * rows + horizontalHeader()->sizeHint().height() + look::scaled(kBar)};
}

void FieldView::fit() {
  horizontalHeader()->setFont(look::font(look::Type::Body));
  verticalHeader()->setFont(look::font(look::Type::Body));
  verticalHeader()->setFixedWidth(verticalHeader()->sizeHint().width());
  setMinimumHeight(sizeHint().height());
  const int columns = m_cells->columnCount();
  const int rows = m_cells->rowCount();
  const int wide = std::max(look::scaled(kCellWidth), viewport()->width() / columns);
  const int high = std::clamp(viewport()->height() / rows, look::scaled(kCellHeight), look::scaled(kTallest));
  for (int column = 0; column < columns; ++column) setColumnWidth(column, wide);
  for (int row = 0; row < rows; ++row) setRowHeight(row, high);
}

void FieldView::resizeEvent(QResizeEvent* event) {
  QTableView::resizeEvent(event);
  fit();
}

void FieldView::changeEvent(QEvent* event) {
  QTableView::changeEvent(event);
  if (event->type() == QEvent::LanguageChange) rename();
  if (event->type() == QEvent::FontChange || event->type() == QEvent::LanguageChange) fit();
}

// The chosen cord's cell is where arrows start from.
void FieldView::follow() {
  const auto chosen = m_model.chosenCell();
  if (!m_arrowed && chosen) {
    const QSignalBlocker quiet(selectionModel());
    selectionModel()->setCurrentIndex(m_cells->index(static_cast<int>(chosen->row), static_cast<int>(chosen->column)),
                                      QItemSelectionModel::ClearAndSelect);
  }
  viewport()->update();
  emit explainedChanged();
}

std::optional<CordCell> FieldView::explained() const {
  if (m_pointed) return m_pointed;
  if (m_arrowed && currentIndex().isValid()) return cellOf(currentIndex());
  return m_model.chosenCell();
}

void FieldView::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
  QTableView::currentChanged(current, previous);
  // The first cell becomes current by itself when the focus comes by.
  m_arrowed = current.isValid() && previous.isValid() && m_model.chosenCell() != cellOf(current);
  emit explainedChanged();
}

void FieldView::mouseMoveEvent(QMouseEvent* event) {
  QTableView::mouseMoveEvent(event);
  const QModelIndex at = indexAt(event->position().toPoint());
  const auto pointed = at.isValid() ? std::optional(cellOf(at)) : std::nullopt;
  if (pointed == m_pointed) return;
  m_pointed = pointed;
  emit explainedChanged();
}

void FieldView::leaveEvent(QEvent* event) {
  QTableView::leaveEvent(event);
  m_pointed.reset();
  emit explainedChanged();
}

bool FieldView::isSound(int row, int column) const {
  if (row < 0 || column < 0 || row >= m_cells->rowCount() || column >= m_cells->columnCount()) return false;
  const CordCell cell{static_cast<std::size_t>(row), static_cast<std::size_t>(column)};
  if (m_model.isTooShort(cell.column)) return false;
  const planning::CordCandidate* candidate = m_model.grid().at(cell.row, cell.column);
  return candidate != nullptr && candidate->verdict < rules::Severity::Caution;
}

void FieldView::paintEvent(QPaintEvent* event) {
  QTableView::paintEvent(event);
  QPainter painter(viewport());
  paintEdge(painter);
}

// Between a sound cell and its neighbour that is not.
void FieldView::paintEdge(QPainter& painter) const {
  painter.setPen(QPen(look::tokens().ink, kEdge, Qt::SolidLine, Qt::SquareCap));
  if (!m_model.gridIsFresh()) painter.setOpacity(0.45);
  for (int row = 0; row < m_cells->rowCount(); ++row) {
    for (int column = 0; column < m_cells->columnCount(); ++column) {
      if (!isSound(row, column)) continue;
      const QRect box = visualRect(m_cells->index(row, column));
      const QPoint topRight(box.right() + 1, box.top());
      const QPoint bottomLeft(box.left(), box.bottom() + 1);
      const QPoint bottomRight(box.right() + 1, box.bottom() + 1);
      if (!isSound(row, column - 1)) painter.drawLine(box.topLeft(), bottomLeft);
      if (!isSound(row - 1, column)) painter.drawLine(box.topLeft(), topRight);
      if (column + 1 < m_cells->columnCount() && !isSound(row, column + 1)) painter.drawLine(topRight, bottomRight);
      if (row + 1 < m_cells->rowCount() && !isSound(row + 1, column)) painter.drawLine(bottomLeft, bottomRight);
    }
  }
}

}  // namespace cordreach::app
