// SPDX-License-Identifier: GPL-3.0-or-later
#include "listings/schedule_view.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QScopedValueRollback>
#include <QSignalBlocker>
#include <QTableView>
#include <QVBoxLayout>

#include "listings/cell_editor.h"
#include "listings/schedule_model.h"
#include "look/look.h"
#include "panels/field_text.h"
#include "panels/plain_controls.h"
#include "shell/say.h"

namespace cordreach::app {

namespace {

constexpr double kRowMarginPx = 8;
constexpr double kRatingWidthPx = 60;
constexpr double kKindWidthPx = 130;
constexpr double kNumberWidthPx = 40;

QTableView* plainTable(ScheduleModel* model, QWidget* parent) {
  auto* table = new QTableView(parent);
  table->setModel(model);
  table->setItemDelegate(new CellEditor([](const QModelIndex&) { return std::vector<std::string>(); }, table));
  table->setEditTriggers(QAbstractItemView::DoubleClicked | QAbstractItemView::EditKeyPressed |
                         QAbstractItemView::AnyKeyPressed);
  table->setSelectionMode(QAbstractItemView::SingleSelection);
  table->setWordWrap(false);
  table->setCornerButtonEnabled(false);
  table->verticalHeader()->hide();
  table->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  table->horizontalHeader()->setHighlightSections(false);
  table->horizontalHeader()->setSectionsClickable(false);
  table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  return table;
}

}  // namespace

ScheduleView::ScheduleView(Session& session, const Surveyor& surveyor, QWidget* parent)
    : QWidget(parent),
      m_session(session),
      m_model(new ScheduleModel(session, surveyor, this)),
      m_word(new QLabel(this)),
      m_panels(new ChoiceBox(this)),
      m_about(new QLabel(this)),
      m_empty(new QLabel(this)),
      m_table(plainTable(m_model, this)) {
  m_word->setBuddy(m_panels);
  for (QLabel* label : {m_about, m_empty}) {
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
  }
  auto* top = new QHBoxLayout;
  top->setSpacing(8);
  top->addWidget(m_word);
  top->addWidget(m_panels);
  top->addSpacing(12);
  top->addWidget(m_about, 1);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 4, 0, 0);
  column->setSpacing(8);
  column->addLayout(top);
  column->addWidget(m_empty);
  column->addWidget(m_table, 1);
  connectAll();
  reword();
}

void ScheduleView::connectAll() {
  connect(m_panels, &QComboBox::activated, this, &ScheduleView::choosePanel);
  connect(m_model, &ScheduleModel::refused, this, &ScheduleView::refused);
  connect(m_table->selectionModel(), &QItemSelectionModel::currentChanged, this, &ScheduleView::chooseCircuit);
  connect(&m_session.selection, &Selection::changed, this, &ScheduleView::followSelection);
  connect(&m_session.document, &Document::changed, this, &ScheduleView::fillPanels);
}

void ScheduleView::fillPanels() {
  const site::Site& site = m_session.document.site();
  const QSignalBlocker quiet(m_panels);
  m_panels->clear();
  for (const site::Panel& panel : site.all<site::Panel>()) {
    const std::string& name = panel.name.empty() ? panel.id.text() : panel.name;
    m_panels->addItem(QString::fromStdString(name), QString::fromStdString(panel.id.text()));
  }
  const auto& shown = m_model->panel();
  const bool isThere = shown && site.find<site::Panel>(*shown) != nullptr;
  if (!isThere && m_panels->count() > 0) m_model->show(site::PanelId(m_panels->itemData(0).toString().toStdString()));
  if (!isThere && m_panels->count() == 0) m_model->show(std::nullopt);
  if (m_model->panel()) m_panels->setCurrentIndex(m_panels->findData(QString::fromStdString(m_model->panel()->text())));
  tellPanel();
}

// The panel itself is chosen with it, so that its fields stand at the right.
void ScheduleView::choosePanel(int index) {
  const std::string id = m_panels->itemData(index).toString().toStdString();
  m_model->show(site::PanelId(id));
  tellPanel();
  const QScopedValueRollback following(m_following, true);
  m_session.selection.choose({{rules::SubjectKind::Panel, id}});
}

void ScheduleView::followSelection() {
  const auto single = m_session.selection.single();
  if (m_following || !single) return;
  const QScopedValueRollback following(m_following, true);
  const site::Site& site = m_session.document.site();
  if (single->kind == rules::SubjectKind::Panel) m_model->show(site::PanelId(single->id));
  if (single->kind == rules::SubjectKind::Circuit) {
    const site::Circuit* circuit = site.find<site::Circuit>(site::CircuitId(single->id));
    if (circuit == nullptr) return;
    m_model->show(circuit->panel);
    const QModelIndex at = m_model->indexOf(circuit->id);
    if (at.isValid()) m_table->setCurrentIndex(at);
  }
  fillPanels();
}

void ScheduleView::chooseCircuit() {
  if (m_following || !isVisible()) return;
  const QScopedValueRollback following(m_following, true);
  std::vector<rules::Subject> chosen;
  for (const site::CircuitId& id : m_model->circuitsAt(m_table->currentIndex())) {
    chosen.push_back({rules::SubjectKind::Circuit, id.text()});
  }
  if (chosen.empty() && m_model->panel()) chosen.push_back({rules::SubjectKind::Panel, m_model->panel()->text()});
  m_session.selection.choose(std::move(chosen));
}

// What nobody wrote down is left out here; the panel's own fields at the right ask for it.
void ScheduleView::tellPanel() {
  const text::Phrasebook& book = m_session.book;
  const site::Site& site = m_session.document.site();
  const site::Panel* panel = m_model->panel() ? site.find<site::Panel>(*m_model->panel()) : nullptr;
  m_empty->setText(say(book, m_panels->count() == 0 ? "schedule.no_panel" : "schedule.no_spaces"));
  m_empty->setVisible(m_model->rowCount() == 0);
  m_table->setVisible(m_model->rowCount() > 0);
  if (panel == nullptr) return m_about->clear();
  QStringList facts;
  const auto add = [&](const char* code, const std::string& value) {
    if (!value.empty()) facts << say(book, code, {{"value", value}});
  };
  add("schedule.room", panel->room);
  add("schedule.main", knownText(book, panel->mainRating));
  add("schedule.key", panel->keyHolder);
  add("schedule.hours", panel->hours);
  add("schedule.owner", panel->owner);
  add("schedule.call", panel->call);
  m_about->setText(facts.isEmpty() ? say(book, "schedule.nothing_known") : facts.join(QStringLiteral("  ·  ")));
}

void ScheduleView::reword() {
  const text::Phrasebook& book = m_session.book;
  m_word->setText(say(book, "field.panel"));
  m_panels->setAccessibleName(m_word->text());
  m_table->setAccessibleName(say(book, "schedule.name"));
  m_about->setFont(look::font(look::Type::Caption));
  m_model->reword();
  fillPanels();
  fitColumns();
}

// What it feeds takes the room that the others leave.
void ScheduleView::fitColumns() {
  m_table->verticalHeader()->setDefaultSectionSize(fontMetrics().height() + look::scaled(kRowMarginPx));
  QHeaderView* header = m_table->horizontalHeader();
  for (const auto& [column, width] : {std::pair<int, double>{ScheduleModel::kRating, kRatingWidthPx},
                                      {ScheduleModel::kKind, kKindWidthPx},
                                      {ScheduleModel::kNumber, kNumberWidthPx}}) {
    header->resizeSection(column, look::scaled(width));
    header->resizeSection(2 * ScheduleModel::kHalf - 1 - column, look::scaled(width));
  }
  header->setSectionResizeMode(ScheduleModel::kFeeds, QHeaderView::Stretch);
  header->setSectionResizeMode(2 * ScheduleModel::kHalf - 1 - ScheduleModel::kFeeds, QHeaderView::Stretch);
}

void ScheduleView::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  const auto type = event->type();
  if (type == QEvent::LanguageChange || type == QEvent::FontChange || type == QEvent::PaletteChange) reword();
}

}  // namespace cordreach::app
