// SPDX-License-Identifier: GPL-3.0-or-later
// The menus of the window.
#include <QAction>
#include <QDialog>
#include <QFileInfo>
#include <QMenu>
#include <QMenuBar>
#include <QVBoxLayout>

#include "map/map_canvas.h"
#include "map/map_view.h"
#include "panels/add_menu.h"
#include "panels/cart_panel.h"
#include "panels/selection_panel.h"
#include "shell/about_dialog.h"
#include "shell/main_window.h"
#include "shell/map_lists.h"
#include "shell/map_place.h"
#include "shell/say.h"
#include "shell/top_row.h"
#include "shell/verdict_band.h"

namespace cordreach::app {

namespace {
constexpr double kZoomStep = 1.25;
}

QAction* MainWindow::add(QMenu* menu, const char* code, const QKeySequence& keys, const std::function<void()>& act) {
  QAction* action = menu->addAction(say(m_book, code));
  action->setShortcut(keys);
  // Menus live in the top row; the window itself must hear the keys wherever the focus is.
  addAction(action);
  connect(action, &QAction::triggered, this, act);
  m_worded.emplace_back(action, code);
  return action;
}

QMenu* MainWindow::addMenu(const char* code) {
  QMenu* menu = m_top->menus()->addMenu(say(m_book, code));
  m_wordedMenus.emplace_back(menu, code);
  return menu;
}

void MainWindow::buildMenus() {
  buildFileMenu();
  buildEditMenu();
  buildViewMenu();
  QMenu* help = addMenu("window.menu.help");
  add(help, "window.action.about", {}, [this] { AboutDialog(m_book, this).exec(); });
  m_top->setUndoRedo(m_undo, m_redo);
}

void MainWindow::buildFileMenu() {
  QMenu* file = addMenu("window.menu.file");
  add(file, "window.action.new", QKeySequence::New, [this] { m_files.newSite(); });
  add(file, "window.action.open", QKeySequence::Open, [this] { m_files.chooseAndOpen(); });
  m_recent = file->addMenu(say(m_book, "window.menu.recent"));
  m_wordedMenus.emplace_back(m_recent, "window.menu.recent");
  add(file, "window.action.demo", {}, [this] {
    if (m_files.mayLeave()) m_files.showDemo();
  });
  file->addSeparator();
  add(file, "window.action.save", QKeySequence::Save, [this] { m_files.save(); });
  add(file, "window.action.save_as", QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_S), [this] { m_files.saveAs(); });
  file->addSeparator();
  add(file, "window.action.quit", QKeySequence(Qt::CTRL | Qt::Key_Q), [this] { close(); });
  fillRecent();
}

void MainWindow::fillRecent() {
  m_recent->clear();
  for (const QString& path : m_settings.recentFiles()) {
    const QFileInfo file(path);
    QAction* action = m_recent->addAction(file.fileName().replace('&', "&&"));
    action->setToolTip(path);
    connect(action, &QAction::triggered, this, [this, path] {
      if (m_files.mayLeave()) m_files.openPath(path);
    });
  }
  m_recent->setToolTipsVisible(true);
  m_recent->setEnabled(!m_recent->isEmpty());
}

void MainWindow::buildEditMenu() {
  QMenu* edit = addMenu("window.menu.edit");
  m_undo = add(edit, "window.action.undo", QKeySequence(Qt::CTRL | Qt::Key_Z), [this] { m_document.undo(); });
  m_redo =
      add(edit, "window.action.redo", QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Z), [this] { m_document.redo(); });
  edit->addSeparator();
  add(edit, "window.action.find", QKeySequence::Find, [this] {
    showPlace(m_map);
    m_map->placeLists()->find();
  });
  QAction* remedy =
      add(edit, "window.action.remedy", QKeySequence(Qt::CTRL | Qt::Key_Return), [this] { m_band->pressRemedy(); });
  remedy->setShortcuts({QKeySequence(Qt::CTRL | Qt::Key_Return), QKeySequence(Qt::CTRL | Qt::Key_Enter)});
  edit->addSeparator();
  m_ofTheMap.push_back(edit->addMenu(m_map->addMenu()));
  m_ofTheMap.push_back(add(edit, "window.action.copy", {}, [this] { m_map->selection()->copyChosen(); }));
  m_ofTheMap.push_back(add(edit, "window.action.delete", {}, [this] { m_map->selection()->deleteChosen(); }));
  add(edit, "window.action.cart", QKeySequence(Qt::CTRL | Qt::Key_K), [this] { showCart(); });
  edit->addSeparator();
  add(edit, "window.action.settings", QKeySequence(Qt::CTRL | Qt::Key_Comma), [this] { showSettings(); });
}

void MainWindow::buildViewMenu() {
  QMenu* view = addMenu("window.menu.view");
  buildPlaceActions(view);
  view->addSeparator();
  const auto onMap = [&](const char* code, const QKeySequence& keys, const std::function<void()>& act) {
    m_ofTheMap.push_back(add(view, code, keys, act));
  };
  onMap("window.action.plan", QKeySequence(Qt::ALT | Qt::Key_1), [this] { showSide(MapSide::Plan); });
  onMap("window.action.lists", QKeySequence(Qt::ALT | Qt::Key_2), [this] { showSide(MapSide::Lists); });
  onMap("window.action.panels", QKeySequence(Qt::ALT | Qt::Key_3), [this] { showSide(MapSide::Panels); });
  view->addSeparator();
  onMap("window.action.dark", QKeySequence(Qt::CTRL | Qt::Key_D), [this] { m_map->placeLists()->showDarkOfChosen(); });
  onMap("window.action.near", {}, [this] { m_map->placeLists()->showNearLimit(); });
  onMap("window.action.hot", {}, [this] { m_map->placeLists()->showHot(); });
  view->addSeparator();
  onMap("window.action.fit", QKeySequence(Qt::CTRL | Qt::Key_0), [this] { m_map->view()->canvas().fit(); });
  onMap("window.action.zoom_in", QKeySequence::ZoomIn, [this] { zoom(kZoomStep); });
  onMap("window.action.zoom_out", QKeySequence::ZoomOut, [this] { zoom(1 / kZoomStep); });
  view->addSeparator();
  m_columnShown = add(view, "window.action.column", QKeySequence(Qt::Key_F9), [this] { arrange(); });
  m_columnShown->setCheckable(true);
  connect(m_columnShown, &QAction::toggled, this, &MainWindow::arrange);
  add(view, "window.action.next_region", QKeySequence(Qt::Key_F6), [this] { cycleFocus(true); });
  add(view, "window.action.previous_region", QKeySequence(Qt::SHIFT | Qt::Key_F6), [this] { cycleFocus(false); });
}

void MainWindow::showSide(MapSide side) {
  m_map->showSide(side);
  m_map->work()->setFocus(Qt::ShortcutFocusReason);
}

void MainWindow::zoom(double factor) {
  MapCanvas& canvas = m_map->view()->canvas();
  canvas.zoomBy(factor, QPointF(canvas.width(), canvas.height()) / 2);
}

void MainWindow::showCart() {
  QDialog dialog(this);
  dialog.setWindowTitle(say(m_book, "panel.cart"));
  auto* column = new QVBoxLayout(&dialog);
  column->setContentsMargins(24, 24, 24, 24);
  auto* cart = new CartPanel(m_session, &dialog);
  connect(cart, &CartPanel::refused, this, &MainWindow::showNotice);
  column->addWidget(cart);
  dialog.resize(look::scaled(640), look::scaled(420));
  dialog.exec();
}

}  // namespace cordreach::app
