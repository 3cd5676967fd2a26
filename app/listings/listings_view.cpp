// SPDX-License-Identifier: GPL-3.0-or-later
#include "listings/listings_view.h"

#include <QAction>
#include <QEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QStackedWidget>
#include <QTabBar>
#include <QToolButton>
#include <QVBoxLayout>
#include <memory>

#include "io/atomic_file.h"
#include "io/table_csv.h"
#include "io/table_xlsx.h"
#include "listings/import_dialog.h"
#include "listings/listing_model.h"
#include "listings/listing_table.h"
#include "listings/walk_sheet_dialog.h"
#include "look/look.h"
#include "panels/ask_dialog.h"
#include "panels/found_fields.h"
#include "panels/plain_controls.h"
#include "shell/flat_tabs.h"
#include "shell/say.h"

namespace cordreach::app {

namespace {

constexpr std::array<const char*, kListingKinds> kKindWords{"listing.circuits", "listing.outlets", "listing.machines",
                                                            "listing.cords", "listing.loads"};
constexpr double kFilterWidthPx = 170;
constexpr std::size_t kMostImportBytes =
    (io::kMostTableMb + 1) * 1024 * 1024;  // what is larger is told by its own words

}  // namespace

ListingsView::ListingsView(Session& session, Surveyor& surveyor, QWidget* parent)
    : QWidget(parent),
      m_session(session),
      m_surveyor(surveyor),
      m_kinds(flatTabs(this)),
      m_filter(new QLineEdit(this)),
      m_more(new QToolButton(this)),
      m_menu(new QMenu(m_more)),
      m_outletRow(new QWidget(this)),
      m_found(new FoundFields(surveyor, session.book, m_outletRow)),
      m_walking(new TickBox(m_outletRow)),
      m_walkingWord(new QLabel(m_outletRow)),
      m_stack(new QStackedWidget(this)),
      m_count(new QLabel(this)) {
  for (const char* code : kKindWords) m_kinds->addTab(say(session.book, code));
  buildTables();
  buildMenu();
  arrange();
  connectAll();
  reword();
  show(ListingKind::Circuits);
}

void ListingsView::buildTables() {
  for (std::size_t i = 0; i < kListingKinds; ++i) {
    auto* model = new ListingModel(m_session, m_surveyor, static_cast<ListingKind>(i), this);
    m_tables[i] = new ListingTable(m_session, model, m_stack);
    m_stack->addWidget(m_tables[i]);
    connect(m_tables[i], &ListingTable::refused, this, &ListingsView::refused);
    connect(model, &ListingModel::filled, this, &ListingsView::count);
  }
}

void ListingsView::buildMenu() {
  m_more->setMenu(m_menu);
  m_more->setPopupMode(QToolButton::InstantPopup);
  m_more->setAutoRaise(true);
  const auto add = [this](const char* code, auto act) {
    QAction* action = m_menu->addAction(QString());
    connect(action, &QAction::triggered, this, act);
    m_actions.emplace_back(action, code);
  };
  add("listing.action.set", [this] { setForChosen(); });
  add("listing.action.copy", [this] { table()->copy(); });
  add("listing.action.paste", [this] { table()->paste(); });
  m_menu->addSeparator();
  add("listing.action.import", [this] { chooseAndImport(); });
  add("listing.action.csv", [this] { chooseAndSave(".csv"); });
  add("listing.action.xlsx", [this] { chooseAndSave(".xlsx"); });
  m_menu->addSeparator();
  add("listing.action.walk_sheet", [this] { showWalkSheet(); });
}

void ListingsView::arrange() {
  auto* top = new QHBoxLayout;
  top->setSpacing(14);
  top->addWidget(m_kinds);
  top->addStretch(1);
  top->addWidget(m_filter);
  top->addWidget(m_more);
  auto* outlets = new QHBoxLayout(m_outletRow);
  outlets->setContentsMargins(0, 0, 0, 0);
  outlets->setSpacing(8);
  outlets->addWidget(m_found);
  outlets->addStretch(1);
  outlets->addWidget(m_walking);
  outlets->addWidget(m_walkingWord);
  m_walkingWord->setBuddy(m_walking);
  m_count->setTextFormat(Qt::PlainText);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(6);
  column->addLayout(top);
  column->addWidget(m_outletRow);
  column->addWidget(m_stack, 1);
  column->addWidget(m_count);
}

void ListingsView::connectAll() {
  connect(m_kinds, &QTabBar::currentChanged, this, [this](int index) {
    m_stack->setCurrentIndex(index);
    m_outletRow->setVisible(kind() == ListingKind::Outlets);
    for (ListingTable* one : m_tables) one->listing().setFilter(one == table() ? m_filter->text() : QString());
    count();
  });
  stepByKeys(m_kinds, this, [this] { table()->setFocus(); });
  connect(m_filter, &QLineEdit::textChanged, this,
          [this](const QString& words) { table()->listing().setFilter(words); });
  connect(m_walking, &QCheckBox::toggled, this, &ListingsView::walk);
  connect(&m_session.selection, &Selection::changed, this, &ListingsView::count);
  connect(m_menu, &QMenu::aboutToShow, this, &ListingsView::fillMenu);
  // A click on a heading ends the way of the walk.
  connect(&table(ListingKind::Outlets)->listing(), &ListingModel::filled, this,
          [this] { m_walking->setChecked(table(ListingKind::Outlets)->listing().isWalking()); });
}

ListingKind ListingsView::kind() const { return static_cast<ListingKind>(m_kinds->currentIndex()); }

void ListingsView::show(ListingKind kind) {
  m_kinds->setCurrentIndex(static_cast<int>(kind));
  m_stack->setCurrentIndex(static_cast<int>(kind));
  m_outletRow->setVisible(kind == ListingKind::Outlets);
  count();
}

void ListingsView::walk(bool walking) { table(ListingKind::Outlets)->listing().setWalking(walking); }

void ListingsView::reword() {
  const text::Phrasebook& book = m_session.book;
  for (std::size_t i = 0; i < kListingKinds; ++i) {
    m_kinds->setTabText(static_cast<int>(i), say(book, kKindWords[i]));
    m_tables[i]->setAccessibleName(say(book, kKindWords[i]));
    m_tables[i]->listing().reword();
    m_tables[i]->fitColumns();
  }
  m_kinds->setAccessibleName(say(book, "listing.kinds"));
  m_kinds->setStyleSheet(flatTabStyle());
  m_filter->setPlaceholderText(say(book, "listing.filter"));
  m_filter->setAccessibleName(say(book, "listing.filter"));
  m_filter->setFixedWidth(look::scaled(kFilterWidthPx));
  m_filter->setClearButtonEnabled(true);
  m_more->setText(say(book, "listing.more"));
  m_walkingWord->setText(say(book, "listing.walking"));
  m_walking->setAccessibleName(m_walkingWord->text());
  for (const auto& [action, code] : m_actions) action->setText(say(book, code));
  m_count->setFont(look::font(look::Type::Caption));
  m_found->reword();
  count();
}

void ListingsView::fillMenu() {
  const bool any = !table()->chosenRows().empty();
  for (const auto& [action, code] : m_actions) {
    if (code == "listing.action.set") action->setEnabled(any && table()->currentIndex().isValid());
    if (code == "listing.action.copy" || code == "listing.action.paste") action->setEnabled(any);
  }
}

void ListingsView::count() {
  if (m_stack->currentWidget() == nullptr) return;
  const double shown = table()->listing().rowCount();
  const double total = table()->listing().total();
  const double chosen = static_cast<double>(table()->chosenRows().size());
  base::Arguments arguments{{"n", total}};
  if (shown < total) arguments.push_back({"shown", shown});
  if (chosen > 0) arguments.push_back({"chosen", chosen});
  m_count->setText(say(m_session.book, "listing.count", arguments));
}

ImportDialog* ListingsView::importDialog(const QString& path) {
  const auto refuse = [&](const base::Error& error) -> ImportDialog* {
    const std::string file = QFileInfo(path).fileName().toStdString();
    emit refused(say(m_session.book, "listing.import.failed",
                     {{"file", file}, {"sentence", sentenceOf(m_session.book, error).toStdString()}}));
    return nullptr;
  };
  const auto bytes = io::readWholeFile(path.toStdString(), kMostImportBytes);
  if (!bytes) return refuse(bytes.error());
  auto table = io::readTableCsv(bytes.value());
  if (!table) return refuse(table.error());
  return new ImportDialog(m_session, m_surveyor, kind(), std::move(table.value()), this);
}

void ListingsView::chooseAndImport() {
  const QString path = QFileDialog::getOpenFileName(this, say(m_session.book, "listing.action.import"), {},
                                                    say(m_session.book, "listing.import.file_kind"));
  if (path.isEmpty()) return;
  const std::unique_ptr<ImportDialog> dialog(importDialog(path));
  if (dialog) dialog->exec();
}

base::Result<base::Done> ListingsView::save(const QString& path) const {
  const io::Table whole = table()->listing().table();
  if (!path.endsWith(QStringLiteral(".xlsx"), Qt::CaseInsensitive)) {
    return io::replaceFile(path.toStdString(), io::writeTableCsv(whole));
  }
  const std::string name = m_session.book.say(kKindWords.at(static_cast<std::size_t>(kind())));
  const auto bytes = io::tableXlsx(whole, name);
  if (!bytes) return bytes.error();
  return io::replaceFile(path.toStdString(), bytes.value());
}

void ListingsView::chooseAndSave(const char* suffix) {
  const QString ending = QString::fromLatin1(suffix);
  const QString name = say(m_session.book, kKindWords.at(static_cast<std::size_t>(kind()))) + ending;
  QString path =
      QFileDialog::getSaveFileName(this, say(m_session.book, "listing.save"), name, QStringLiteral("*") + ending);
  if (path.isEmpty()) return;
  if (!path.endsWith(ending, Qt::CaseInsensitive)) path += ending;
  const auto done = save(path);
  if (!done) emit refused(sentenceOf(m_session.book, done.error()));
}

AskDialog* ListingsView::bulkDialog() {
  const int column = table()->currentIndex().column();
  const std::vector<int> rows = table()->chosenRows();
  if (column < 0 || rows.empty()) return nullptr;
  const Listing& listing = table()->listing().listing();
  const ListingColumn& about = listing.columns().at(static_cast<std::size_t>(column));
  if (!about.editable) return nullptr;
  const text::Phrasebook& book = m_session.book;
  Field field{.key = about.key, .label = headingOf(book, about)};
  field.mayBeUnknown = about.mayBeUnknown;
  for (const std::string& choice : listing.choices(table()->listing().context(), static_cast<std::size_t>(column))) {
    field.kind = FieldKind::Choice;
    field.choices.push_back({choice, choice});
  }
  return new AskDialog(
      book,
      {book.say("listing.set.title"), book.say("listing.set.explain", {{"n", static_cast<double>(rows.size())}}),
       book.say("listing.set.deed")},
      {field},
      [this, column, key = about.key](const Answers& answers) {
        return table()->setForChosen(column, answers.at(key));
      },
      this);
}

void ListingsView::setForChosen() {
  const std::unique_ptr<AskDialog> dialog(bulkDialog());
  if (dialog) {
    dialog->exec();
  } else {
    emit refused(say(m_session.book, "listing.set.none"));
  }
}

void ListingsView::showWalkSheet() { WalkSheetDialog(m_session, this).exec(); }

void ListingsView::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  const auto type = event->type();
  if (type == QEvent::LanguageChange || type == QEvent::FontChange || type == QEvent::PaletteChange) reword();
}

}  // namespace cordreach::app
