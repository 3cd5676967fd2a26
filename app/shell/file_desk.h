// SPDX-License-Identifier: GPL-3.0-or-later
// Opening, saving and giving up the document, with the questions that keep anybody from losing work.
#pragma once

#include <QObject>

#include "document/document.h"
#include "document/recovery.h"
#include "document/site_store.h"
#include "look/settings.h"
#include "text/phrasebook.h"

class QWidget;

namespace cordreach::app {

class FileDesk : public QObject {
  Q_OBJECT

 public:
  struct Tools {
    Document& document;
    look::Settings& settings;
    const text::Phrasebook& book;
    QWidget* window;
    QString recoveryFolder;
  };
  explicit FileDesk(const Tools& tools);

  void newSite();
  void chooseAndOpen();
  // False: it stays as it was, and the person knows why.
  bool openPath(const QString& path);
  bool save();
  bool saveAs();
  bool saveTo(const QString& path);
  // True when what is open may go: saved, given up knowingly, or nothing unsaved.
  [[nodiscard]] bool mayLeave();
  // Offers what a killed process left; true when one was taken.
  bool offerRecovery(const QString& folder);
  void showDemo();

 signals:
  void recentChanged();

 private:
  void tell(const QString& sentence, const QString& detail = {});
  void take(site::Site site, const QString& path);
  void sweepPictures(const QString& path);
  bool recover(const Recoverable& one);
  [[nodiscard]] QString askForSavePath();
  [[nodiscard]] QString startFolder() const;

  Tools m_tools;
  SiteStore m_store;
};

// The building that the program brings along.
[[nodiscard]] site::Site demoSite();

}  // namespace cordreach::app
