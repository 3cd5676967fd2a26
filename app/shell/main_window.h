// SPDX-License-Identifier: GPL-3.0-or-later
// The window: wires document, verdict and views together. What they do is theirs; here stands only who hears whom.
#pragma once

#include <QMainWindow>
#include <functional>
#include <memory>
#include <string>
#include <vector>

#include "document/journal.h"
#include "document/session.h"
#include "look/settings.h"
#include "shell/file_desk.h"

class QLabel;
class QMenu;
class QStackedWidget;

namespace cordreach::app {

class MapPlace;
enum class MapSide;
class Place;
class TopRow;
class VerdictBand;

class MainWindow : public QMainWindow {
  Q_OBJECT

 public:
  // Begins on an empty, untitled site; what is opened then is the caller's choice through files().
  MainWindow(look::Settings& settings, const QString& recoveryFolder, QWidget* parent = nullptr);
  ~MainWindow() override;

  [[nodiscard]] Session& session() { return m_session; }
  [[nodiscard]] FileDesk& files() { return m_files; }
  [[nodiscard]] VerdictBand* band() const { return m_band; }
  [[nodiscard]] MapPlace* map() const { return m_map; }
  [[nodiscard]] const std::vector<Place*>& places() const { return m_places; }
  [[nodiscard]] Place* place() const;  // the one in front
  // Null: there is none of that code.
  [[nodiscard]] Place* placeOf(const std::string& code) const;
  void showPlace(Place* place);
  void setChoices(const look::Choices& choices);

 protected:
  void closeEvent(QCloseEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  void buildPlaces();
  void addPlace(Place* place);
  void buildPlaceActions(QMenu* menu);
  void nameTabs();
  void buildMenus();
  void buildFileMenu();
  void buildEditMenu();
  void buildViewMenu();
  void fillRecent();
  QAction* add(QMenu* menu, const char* code, const QKeySequence& keys, const std::function<void()>& act);
  QMenu* addMenu(const char* code);
  void showSide(MapSide side);
  void zoom(double factor);
  void showCart();
  void connectAll();
  void judge();
  void refreshState();
  void retitle();
  void arrange();
  void cycleFocus(bool forward);
  void showNotice(const QString& sentence);
  void showSettings();
  void rememberSurveyor();

  look::Settings& m_settings;
  text::Phrasebook m_book;
  Document m_document;
  JudgeService m_judge;
  Selection m_selection;
  Session m_session;
  FileDesk m_files;
  Journal m_journal;
  std::vector<std::pair<QAction*, std::string>> m_worded;  // actions with the code of their words
  std::vector<std::pair<QMenu*, std::string>> m_wordedMenus;
  TopRow* m_top;
  VerdictBand* m_band;
  QLabel* m_notice;  // one line under the verdict, for what went wrong
  QStackedWidget* m_stack;
  MapPlace* m_map;
  std::vector<Place*> m_places;                 // in the order of their tabs
  std::vector<QAction*> m_ofTheMap;             // can be done on the map only
  std::shared_ptr<const site::Site> m_judging;  // last asked for
  QMenu* m_recent = nullptr;
  QAction* m_undo = nullptr;
  QAction* m_redo = nullptr;
  QAction* m_columnShown = nullptr;
};

}  // namespace cordreach::app
