// SPDX-License-Identifier: GPL-3.0-or-later
#include "heat/heat_sheet.h"

#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <algorithm>

#include "heat/fault_view.h"
#include "heat/figure_table.h"
#include "heat/heat_chart.h"
#include "heat/heat_column.h"
#include "heat/side_chooser.h"
#include "heat/side_view.h"
#include "look/look.h"
#include "shell/say.h"

namespace cordreach::app {

namespace {

constexpr int kGapPx = 24;  // between columns
constexpr int kRowGapPx = 4;
constexpr int kWithFigures = 800;  // wide enough for A against B beside the cut-throughs
// Rows of both forms; those between choosers and caution differ.
constexpr int kChooserRow = 0;
constexpr int kCutRow = 1;
constexpr int kFaultRow = 2;
constexpr int kChartRow = 3;
constexpr int kCautionRow = 4;
constexpr int kBesideRows = 2;  // of one side: its chooser and its view
constexpr int kFiguresColumn = 2;
constexpr int kColumns = 3;

}  // namespace

HeatSheet::HeatSheet(HeatModel& model, Session& session, HeatColumn& column, QWidget* parent)
    : QWidget(parent), m_model(model), m_book(session.book), m_column(column), m_grid(new QGridLayout(this)) {
  m_grid->setContentsMargins(0, 0, 0, 0);
  m_grid->setHorizontalSpacing(kGapPx);
  m_grid->setVerticalSpacing(kRowGapPx);
  fill(model, session);
  column.take(m_figures);  // until there is room for them
  stand(Form::Rows);
  connect(&model, &HeatModel::sideChanged, this, &HeatSheet::showFaults);
  reword();
}

void HeatSheet::fill(HeatModel& model, Session& session) {
  for (std::size_t side = 0; side < kSides; ++side) {
    m_choosers[side] = new SideChooser({model, session.document, session.book}, side, this);
    m_views[side] = new SideView(model, session.book, side, this);
    m_faults[side] = new FaultView(model, session.book, side, this);
    m_faults[side]->hide();
  }
  m_figures = new FigureTable(model, session.book, this);
  m_chart = new HeatChart(model, session.book, this);
  m_caution = new QLabel(this);
  m_caution->setWordWrap(true);
}

void HeatSheet::reword() {
  m_caution->setText(say(m_book, "lesson.caution"));
  m_caution->setFont(look::font(look::Type::Caption));
}

int HeatSheet::cautionBelow() const { return m_caution->isHidden() ? m_caution->heightForWidth(width()) : 0; }

// What a failed machine does is told where one of the two has no earth.
void HeatSheet::showFaults() {
  for (FaultView* fault : m_faults) fault->setVisible(FaultView::isWanted(m_model));
}

// The rows: choosers, cut-throughs, curves. Beside: at the left each side's chooser and cut-through, one side below the
// other, and the curves at the right.
void HeatSheet::stand(Form form) {
  m_form = form;
  const bool beside = form == Form::Beside;
  for (std::size_t side = 0; side < kSides; ++side) {
    const int at = static_cast<int>(side);
    const int row = beside ? at * kBesideRows : 0;
    m_grid->addWidget(m_choosers[side], row + kChooserRow, beside ? 0 : at);
    m_grid->addWidget(m_views[side], row + kCutRow, beside ? 0 : at);
    if (m_faults[side]->parentWidget() == this) m_grid->addWidget(m_faults[side], kFaultRow, at, Qt::AlignTop);
    m_grid->setColumnStretch(at, 1);
  }
  // A column without anything in it would still have its gap.
  const int columns = m_figures->parentWidget() == this ? kColumns : kColumns - 1;
  if (beside) {
    m_grid->addWidget(m_chart, 0, 1, static_cast<int>(kSides) * kBesideRows, 1);
  } else {
    m_grid->addWidget(m_chart, kChartRow, 0, 1, columns);
  }
  m_grid->addWidget(m_caution, kCautionRow, 0, 1, columns);
  m_grid->setRowStretch(kCutRow, 4);
  m_grid->setRowStretch(kChartRow, beside ? 4 : 5);
}

// A failed machine's metal stands below the cut-throughs, or in the column where it would take the curves' room.
// Answers the height that it takes.
int HeatSheet::placeFaults(int room) {
  if (!FaultView::isWanted(m_model)) return 0;
  int height = 0;
  for (std::size_t side = 0; side < kSides; ++side) {
    height = std::max(height, m_faults[side]->heightForWidth(m_choosers[side]->width()));
  }
  const bool fits = room - height >= m_views.front()->comfortableHeight() + m_chart->minimumSizeHint().height();
  const bool isInSheet = m_faults.front()->parentWidget() == this;
  for (std::size_t side = kSides; side-- > 0 && fits != isInSheet;) {
    if (fits) {
      m_grid->addWidget(m_faults[side], kFaultRow, static_cast<int>(side), Qt::AlignTop);
    } else {
      m_column.take(m_faults[side]);
    }
  }
  return fits ? height : 0;
}

// Whether they went elsewhere.
bool HeatSheet::placeFigures(Form form) {
  const bool wide = width() >= look::scaled(kWithFigures) && form == Form::Rows;
  const bool isInSheet = m_figures->parentWidget() == this;
  if (wide && !isInSheet) m_grid->addWidget(m_figures, kChooserRow, kFiguresColumn, kChartRow - 1, 1, Qt::AlignTop);
  if (!wide && isInSheet) m_column.take(m_figures);
  return wide != isInSheet;
}

int HeatSheet::roomOfRows(bool withCaution) const {
  const int caution = withCaution ? m_caution->heightForWidth(width()) + kRowGapPx : 0;
  const int gaps = kRowGapPx * (kCautionRow - 2);  // a row without widgets has none
  return height() - m_choosers.front()->sizeHint().height() - caution - gaps;
}

bool HeatSheet::fitsBeside() const {
  const int wide = m_views.front()->minimumSizeHint().width() + kGapPx + m_chart->minimumSizeHint().width();
  const int caution = m_caution->heightForWidth(width()) + kRowGapPx;
  const int side = m_choosers.front()->sizeHint().height() + m_views.front()->minimumSizeHint().height();
  const int high = static_cast<int>(kSides) * (side + kBesideRows * kRowGapPx) + caution;
  return width() >= wide && height() >= high;
}

// Rows where there is room for all of it; else the one beside the other; else rows that have given up what is said
// elsewhere, and at last without the cut-throughs.
void HeatSheet::arrange() {
  setMinimumWidth(2 * m_views.front()->minimumSizeHint().width() + kGapPx);
  const int room = roomOfRows(true);
  const int comfortable = m_views.front()->comfortableHeight() + m_chart->comfortableHeight();
  const Form form = room < comfortable && fitsBeside() ? Form::Beside : Form::Rows;
  if (placeFigures(form) || form != m_form) stand(form);
  const int faults = placeFaults(form == Form::Rows ? room : 0);
  const int chart = m_chart->minimumSizeHint().height();
  const bool caution = form == Form::Beside || room >= m_views.front()->labelledHeight() + chart;
  const int views = m_views.front()->minimumSizeHint().height();
  const int spare = roomOfRows(caution) - faults - views - chart;
  const bool fits = form == Form::Beside || spare >= 0;
  m_caution->setVisible(caution || !fits);
  for (SideView* view : m_views) view->setVisible(fits);
  m_grid->setRowStretch(kCutRow, fits ? 4 : 0);
  // Scarce room is shared; where there is enough the curves come first.
  const int shared = std::max(fits ? chart + spare / 2 : chart + spare + views, 0);
  const int rows = room - faults >= comfortable ? m_chart->comfortableHeight() : shared;
  m_chart->setMinimumHeight(form == Form::Beside ? 0 : std::min(rows, m_chart->comfortableHeight()));
}

void HeatSheet::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  arrange();
}

bool HeatSheet::event(QEvent* event) {
  const bool handled = QWidget::event(event);
  if (event->type() == QEvent::LayoutRequest) arrange();
  return handled;
}

}  // namespace cordreach::app
