// SPDX-License-Identifier: GPL-3.0-or-later
#include "shell/main_window.h"

#include <QApplication>
#include <QCloseEvent>
#include <QLabel>
#include <QMenu>
#include <QStackedWidget>
#include <QTimer>
#include <QVBoxLayout>

#include "shell/focus_ring.h"
#include "shell/map_place.h"
#include "shell/place.h"
#include "shell/remedy_button.h"
#include "shell/say.h"
#include "shell/settings_dialog.h"
#include "shell/top_row.h"
#include "shell/verdict_band.h"

namespace cordreach::app {

namespace {

constexpr int kNoticeMs = 12000;
constexpr int kNarrow = 1160;  // below: a narrower column, the reason on fewer lines
constexpr int kDrawer = 1000;  // below: the column only when it is asked for
constexpr int kWide = 2200;
constexpr int kLow = 640;  // below: a smaller verdict, its reason on one line

text::Phrasebook bookOf(const look::Choices& choices) { return text::Phrasebook::load("en", choices.units).value(); }

site::Site emptySite() { return site::Site{site::SiteId("untitled")}; }

}  // namespace

MainWindow::MainWindow(look::Settings& settings, const QString& recoveryFolder, QWidget* parent)
    : QMainWindow(parent),
      m_settings(settings),
      m_book(bookOf(settings.choices())),
      m_document(emptySite()),
      m_session{m_document, m_judge, m_selection, m_book},
      m_files(FileDesk::Tools{m_document, settings, m_book, this, recoveryFolder}),
      m_journal(m_document, recoveryFolder),
      m_top(new TopRow(m_document, m_book)),
      m_band(new VerdictBand(m_book)),
      m_notice(new QLabel),
      m_stack(new QStackedWidget),
      m_map(new MapPlace(m_session)) {
  setMenuWidget(m_top);
  auto* sheet = new QWidget;
  auto* rows = new QVBoxLayout(sheet);
  rows->setContentsMargins(0, 0, 0, 0);
  rows->setSpacing(0);
  rows->addWidget(m_band);
  rows->addWidget(m_notice);
  rows->addWidget(m_stack, 1);
  setCentralWidget(sheet);
  m_notice->setTextFormat(Qt::PlainText);
  m_notice->setWordWrap(true);
  m_notice->setContentsMargins(24, 8, 24, 8);
  m_notice->setAutoFillBackground(true);
  m_notice->setBackgroundRole(QPalette::AlternateBase);
  m_notice->hide();
  buildPlaces();
  buildMenus();
  connectAll();
  setMinimumSize(720, 520);
  if (!restoreGeometry(settings.windowGeometry())) resize(1280, 800);
  refreshState();
  judge();
  place()->work()->setFocus();
}

MainWindow::~MainWindow() = default;

void MainWindow::connectAll() {
  connect(&m_document, &Document::changed, this, &MainWindow::judge);
  connect(&m_document, &Document::supposed, this, &MainWindow::judge);
  connect(&m_document, &Document::changed, this, [this](const DocumentChange& change) {
    if (change.reset) m_selection.clear();
  });
  connect(&m_document, &Document::stateChanged, this, &MainWindow::refreshState);
  connect(&m_files, &FileDesk::recentChanged, this, &MainWindow::fillRecent);
  connect(&m_journal, &Journal::failed, this, [this](const base::Error& error) {
    showNotice(say(m_book, "window.journal.failed") + ' ' + sentenceOf(m_book, error));
  });
}

// A document's signals may follow each other within one deed: the same site is judged once.
void MainWindow::judge() {
  const std::shared_ptr<const site::Site> shown = m_document.shown();
  if (shown == m_judging) return;
  m_judging = shown;
  m_judge.request(shown, m_document.isSupposing());
}

void MainWindow::refreshState() {
  m_undo->setEnabled(m_document.canUndo());
  m_redo->setEnabled(m_document.canRedo());
  m_top->refresh();
  retitle();
}

void MainWindow::retitle() {
  setWindowTitle(m_top->title() + QStringLiteral("[*] – Cordreach"));
  setWindowModified(m_document.isDirty());
}

void MainWindow::arrange() {
  const int width = this->width();
  const bool narrow = width < look::scaled(kNarrow);
  const int column = narrow ? look::scaled(248) : look::scaled(width >= look::scaled(kWide) ? 380 : 300);
  m_band->setLow(height() < look::scaled(kLow));
  m_band->setColumn(column, narrow);
  const bool visible = width >= look::scaled(kDrawer) || m_columnShown->isChecked();
  for (Place* place : m_places) place->setColumn(column, visible);
}

void MainWindow::cycleFocus(bool forward) {
  if (place()->column()->isHidden()) m_columnShown->setChecked(true);
  FocusRing{{m_band->button(), place()->work(), place()->column(), m_top}}.step(forward);
}

void MainWindow::showNotice(const QString& sentence) {
  m_notice->setText(sentence);
  m_notice->show();
  QTimer::singleShot(kNoticeMs, m_notice, [this, sentence] {
    if (m_notice->text() == sentence) m_notice->hide();
  });
}

void MainWindow::showSettings() {
  SettingsDialog dialog(m_settings.choices(), m_book, this);
  connect(&dialog, &SettingsDialog::changed, this, &MainWindow::setChoices);
  dialog.exec();
}

void MainWindow::setChoices(const look::Choices& choices) {
  const bool otherWords = choices.units != m_book.locale().units;
  m_settings.setChoices(choices);
  look::setPresent(*static_cast<QApplication*>(QApplication::instance()), look::lookOf(choices, look::systemIsDark()));
  if (otherWords) {
    m_book = bookOf(choices);
    QEvent change(QEvent::LanguageChange);
    QApplication::sendEvent(this, &change);
  }
  arrange();
}

void MainWindow::closeEvent(QCloseEvent* event) {
  if (!m_files.mayLeave()) return event->ignore();
  m_settings.setWindowGeometry(saveGeometry());
  // Given up or saved: the journal of this process ends with it.
  event->accept();
}

void MainWindow::resizeEvent(QResizeEvent* event) {
  QMainWindow::resizeEvent(event);
  arrange();
}

void MainWindow::changeEvent(QEvent* event) {
  QMainWindow::changeEvent(event);
  if (event->type() != QEvent::LanguageChange) return;
  for (const auto& [action, code] : m_worded) action->setText(say(m_book, code));
  for (const auto& [menu, code] : m_wordedMenus) menu->setTitle(say(m_book, code));
  nameTabs();
  refreshState();
}

}  // namespace cordreach::app
