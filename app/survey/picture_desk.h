// SPDX-License-Identifier: GPL-3.0-or-later
// Plan pictures of the floor that the map shows: brought in by dialog, drag or paste, squared, scaled, turned, dimmed,
// replaced, removed. Each is an edit; what can't be done is said in one sentence and changes nothing.
#pragma once

#include <QObject>
#include <functional>
#include <optional>
#include <vector>

#include "document/session.h"
#include "survey/picture_edits.h"
#include "survey/plan_import.h"

class QAction;
class QDropEvent;
class QMenu;
class QMimeData;
class QWidget;

namespace cordreach::app {

class MapCanvas;

class PictureDesk : public QObject {
  Q_OBJECT

 public:
  PictureDesk(Session& session, MapCanvas& canvas, QWidget* parent);

  [[nodiscard]] QMenu* menu() const { return m_menu; }
  void reword();

  void chooseFile();
  void paste();
  // True when the event was about a picture.
  bool takeDrop(QDropEvent& event);
  void bringInFile(const QString& path);
  void bringIn(const QByteArray& content);

  void square();
  void scale();
  void turnBy(double degrees);
  void askTurn();
  void dim(double part);
  void remove();

 private:
  void buildMenu();
  QAction* add(QMenu* menu, const char* code, const std::function<void()>& act);
  void refreshMenu();
  [[nodiscard]] const site::Floor* floor() const;
  [[nodiscard]] std::optional<ReadPicture> present();  // of the floor; says why not
  [[nodiscard]] std::optional<base::Result<Plan>> planOf(const QByteArray& content);
  void sayReduced(const Plan& plan);
  [[nodiscard]] bool bringInMime(const QMimeData& data);
  void place(const Plan& plan);
  void replace(const Plan& plan);
  [[nodiscard]] std::optional<site::Picture> store(const Plan& plan);
  bool apply(const PictureEdit& edit);
  void say(const base::Error& error);

  Session& m_session;
  MapCanvas& m_canvas;
  QWidget* m_parent;
  QMenu* m_menu;
  std::vector<QAction*> m_ofPicture;  // need one on the floor
};

}  // namespace cordreach::app
