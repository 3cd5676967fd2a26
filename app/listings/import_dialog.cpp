// SPDX-License-Identifier: GPL-3.0-or-later
#include "listings/import_dialog.h"

#include <QDialogButtonBox>
#include <QGridLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>
#include <array>

#include "look/look.h"
#include "panels/fresh_id.h"
#include "panels/plain_controls.h"
#include "shell/say.h"

namespace cordreach::app {

namespace {

constexpr double kWidthPx = 820;
constexpr double kHeightPx = 600;
constexpr int kLongestSample = 40;

QLabel* plainLabel(const QString& text, QWidget* parent) {
  auto* label = new QLabel(text, parent);
  label->setTextFormat(Qt::PlainText);
  label->setWordWrap(true);
  return label;
}

// What stands in that column first.
QString sampleOf(const io::Table& table, std::size_t column) {
  for (std::size_t row = 1; row < table.size(); ++row) {
    if (column >= table[row].size() || table[row][column].empty()) continue;
    const QString text = QString::fromStdString(table[row][column]).simplified();
    return text.size() > kLongestSample ? text.left(kLongestSample) + QStringLiteral("…") : text;
  }
  return {};
}

}  // namespace

ImportDialog::ImportDialog(Session& session, const Surveyor& surveyor, ListingKind kind, io::Table table,
                           QWidget* parent)
    : QDialog(parent),
      m_session(session),
      m_surveyor(surveyor),
      m_listing(listingOf(kind)),
      m_table(std::move(table)),
      m_columns(importColumns(m_listing, session.book)),
      m_summary(plainLabel({}, this)),
      m_outcome(new QTableWidget(0, 3, this)),
      m_fault(plainLabel({}, this)) {
  setWindowTitle(say(session.book, "listing.import.title"));
  resize(look::scaled(kWidthPx), look::scaled(kHeightPx));
  auto* layout = new QVBoxLayout(this);
  layout->setSpacing(10);
  layout->addWidget(plainLabel(say(session.book, "listing.import.explain"), this));
  layout->addWidget(buildChoices(), 2);
  m_summary->setFont(look::font(look::Type::BodyBold));
  layout->addWidget(m_summary);
  m_outcome->setAccessibleName(say(session.book, "listing.import.rows"));
  m_outcome->setHorizontalHeaderLabels({say(session.book, "listing.import.row"),
                                        say(session.book, "listing.import.fate"),
                                        say(session.book, "listing.import.why")});
  m_outcome->verticalHeader()->hide();
  m_outcome->horizontalHeader()->setStretchLastSection(true);
  m_outcome->setEditTriggers(QAbstractItemView::NoEditTriggers);
  m_outcome->setSelectionBehavior(QAbstractItemView::SelectRows);
  m_outcome->setTabKeyNavigation(false);
  layout->addWidget(m_outcome, 3);
  m_fault->hide();
  layout->addWidget(m_fault);
  auto* buttons = new QDialogButtonBox(this);
  m_deed = buttons->addButton(QString(), QDialogButtonBox::AcceptRole);
  m_deed->setDefault(true);
  buttons->addButton(say(session.book, "panel.cancel"), QDialogButtonBox::RejectRole);
  layout->addWidget(buttons);
  connect(buttons, &QDialogButtonBox::accepted, this, &ImportDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  look();
}

QWidget* ImportDialog::buildChoices() {
  const text::Phrasebook& book = m_session.book;
  auto* inside = new QWidget(this);
  auto* grid = new QGridLayout(inside);
  grid->setHorizontalSpacing(16);
  const io::TableRow& headings = m_table.front();
  const io::ColumnMatch guess = io::matchColumns(headings, m_columns);
  for (std::size_t i = 0; i < headings.size(); ++i) {
    const int row = static_cast<int>(i);
    auto* heading = plainLabel(QString::fromStdString(headings[i]), inside);
    auto* choice = new ChoiceBox(inside);
    choice->addItem(say(book, "listing.import.leave_out"));
    for (const ListingColumn& column : m_listing.columns()) {
      choice->addItem(QString::fromStdString(headingOf(book, column)));
    }
    choice->setCurrentIndex(guess[i] ? static_cast<int>(*guess[i]) + 1 : 0);
    choice->setAccessibleName(say(book, "listing.import.column", {{"heading", headings[i]}}));
    auto* sample = plainLabel(sampleOf(m_table, i), inside);
    sample->setForegroundRole(QPalette::PlaceholderText);
    grid->addWidget(heading, row, 0);
    grid->addWidget(choice, row, 1);
    grid->addWidget(sample, row, 2);
    connect(choice, &QComboBox::activated, this, &ImportDialog::look);
    m_choices.push_back(choice);
  }
  grid->setColumnStretch(0, 2);
  grid->setColumnStretch(1, 2);
  grid->setColumnStretch(2, 3);
  grid->setRowStretch(grid->rowCount(), 1);
  auto* scroll = new QScrollArea(this);
  scroll->setWidgetResizable(true);
  scroll->setWidget(inside);
  return scroll;
}

void ImportDialog::look() {
  io::ColumnMatch match;
  for (const ChoiceBox* choice : m_choices) {
    const int index = choice->currentIndex();
    match.push_back(index > 0 ? std::optional(static_cast<std::size_t>(index - 1)) : std::nullopt);
  }
  const site::Site& site = m_session.document.site();
  const ListingContext in(site, m_session.book, m_surveyor.found());
  m_preview = io::previewImport(site, m_table, match, m_columns, m_listing.rowReader(in), "listing.import");
  site::noteAssignments(m_preview.edit, site, in.found(), randomSource());
  fillOutcome();
}

QString ImportDialog::outcomeOf(const io::ImportedRow& row) const {
  if (!row.fault) return {};
  const QString sentence = sentenceOf(m_session.book, row.fault->error);
  if (row.fault->column.empty()) return sentence;
  return say(m_session.book, "field." + row.fault->column) + QStringLiteral(": ") + sentence;
}

// What is refused first: that is what somebody has to look at.
void ImportDialog::fillOutcome() {
  const text::Phrasebook& book = m_session.book;
  std::vector<const io::ImportedRow*> rows;
  std::array<double, 4> counts{};
  for (const io::ImportedRow& row : m_preview.rows) {
    ++counts[static_cast<std::size_t>(row.fate)];
    rows.push_back(&row);
  }
  std::ranges::stable_partition(rows, [](const io::ImportedRow* row) { return row->fate == io::RowFate::Refused; });
  static constexpr std::array kFates = {"listing.import.adds", "listing.import.changes", "listing.import.same",
                                        "listing.import.refused"};
  m_outcome->setRowCount(static_cast<int>(rows.size()));
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const int row = static_cast<int>(i);
    m_outcome->setItem(row, 0, new QTableWidgetItem(QString::number(rows[i]->number)));
    m_outcome->setItem(row, 1, new QTableWidgetItem(say(book, kFates[static_cast<std::size_t>(rows[i]->fate)])));
    m_outcome->setItem(row, 2, new QTableWidgetItem(outcomeOf(*rows[i])));
  }
  m_summary->setText(say(book, "listing.import.summary",
                         {{"adds", counts[0]}, {"changes", counts[1]}, {"same", counts[2]}, {"refused", counts[3]}}));
  m_summary->setAccessibleName(m_summary->text());
  m_deed->setText(say(book, "listing.import.deed", {{"n", counts[0] + counts[1]}}));
  m_deed->setEnabled(!m_preview.edit.changes.empty());
}

void ImportDialog::accept() {
  const auto done = m_session.document.apply(m_preview.edit);
  if (done) return QDialog::accept();
  m_fault->setText(sentenceOf(m_session.book, done.error()));
  m_fault->setAccessibleName(m_fault->text());
  m_fault->show();
}

}  // namespace cordreach::app
