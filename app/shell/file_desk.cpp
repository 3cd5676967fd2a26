// SPDX-License-Identifier: GPL-3.0-or-later
#include "shell/file_desk.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QLocale>
#include <QStandardPaths>

#include "io/site_file.h"
#include "shell/embedded_demo.h"
#include "shell/question.h"
#include "shell/say.h"
#include "survey/picture_files.h"
#include "survey/picture_sweep.h"
#include "survey/start_dialog.h"

namespace cordreach::app {

namespace {

base::Arguments fileArgument(const QString& path) {
  return {{"file", QFileInfo(path).fileName().toStdString()}, {"path", path.toStdString()}};
}

}  // namespace

site::Site demoSite() { return io::readSite(embeddedDemo().front().second).value(); }

FileDesk::FileDesk(const Tools& tools) : QObject(tools.window), m_tools(tools), m_store(openFilesFolder()) {}

void FileDesk::tell(const QString& sentence, const QString& detail) {
  (void)ask(m_tools.window, {sentence, detail, {say(m_tools.book, "window.answer.close")}});
}

void FileDesk::take(site::Site site, const QString& path) {
  if (path.isEmpty()) {
    m_store.close();
  } else {
    m_tools.settings.addRecentFile(path);
    emit recentChanged();
  }
  m_tools.document.replace(std::move(site), path);
}

void FileDesk::newSite() {
  if (!mayLeave()) return;
  StartDialog dialog(m_tools.book, m_tools.window);
  if (dialog.exec() == QDialog::Accepted) take(dialog.site(), {});
}

void FileDesk::showDemo() { take(demoSite(), {}); }

void FileDesk::chooseAndOpen() {
  if (!mayLeave()) return;
  const QString path = QFileDialog::getOpenFileName(m_tools.window, say(m_tools.book, "window.open.title"),
                                                    startFolder(), say(m_tools.book, "window.file_kind"));
  if (!path.isEmpty()) openPath(path);
}

bool FileDesk::openPath(const QString& chosen) {
  const QString path = QFileInfo(chosen).absoluteFilePath();
  const bool heldElsewhere = m_store.isHeldElsewhere(path);
  if (heldElsewhere) {
    const int answer =
        ask(m_tools.window, {say(m_tools.book, "window.held.sentence", fileArgument(path)),
                             say(m_tools.book, "window.held.detail"),
                             {say(m_tools.book, "window.held.copy"), say(m_tools.book, "window.answer.cancel")}});
    if (answer != 0) return false;
  }
  base::Result<site::Site> site =
      heldElsewhere ? io::loadSite(QFile::encodeName(path).toStdString()) : m_store.open(path);
  if (!site) {
    m_tools.settings.removeRecentFile(path);
    emit recentChanged();
    tell(say(m_tools.book, "window.open.failed", fileArgument(path)), sentenceOf(m_tools.book, site.error()));
    return false;
  }
  take(std::move(site).value(), heldElsewhere ? QString{} : path);
  if (!heldElsewhere) sweepPictures(path);
  return true;
}

// Nothing can be undone yet, so what no site mentions can't be brought back.
void FileDesk::sweepPictures(const QString& path) {
  app::sweepPictures(
      {path, m_tools.recoveryFolder, [this](const QString& other) { return m_store.isHeldElsewhere(other); }});
}

// Somebody else's work is never written over unasked.
bool FileDesk::save() {
  const QString path = m_tools.document.path();
  if (path.isEmpty()) return saveAs();
  if (m_store.underneath() != Underneath::Changed) return saveTo(path);
  const int answer = ask(m_tools.window,
                         {say(m_tools.book, "window.changed.sentence", fileArgument(path)),
                          say(m_tools.book, "window.changed.detail"),
                          {say(m_tools.book, "window.changed.keep_both"), say(m_tools.book, "window.changed.overwrite"),
                           say(m_tools.book, "window.changed.reload"), say(m_tools.book, "window.answer.cancel")}});
  if (answer == 0) return saveAs();
  if (answer == 1) return saveTo(path);
  return answer == 2 && openPath(path);
}

bool FileDesk::saveAs() {
  const QString path = askForSavePath();
  return !path.isEmpty() && saveTo(path);
}

bool FileDesk::saveTo(const QString& path) {
  const base::Result<base::Done> done = m_store.save(path, m_tools.document.site());
  if (!done) {
    const int answer =
        ask(m_tools.window, {say(m_tools.book, "window.save.failed", fileArgument(path)),
                             sentenceOf(m_tools.book, done.error()),
                             {say(m_tools.book, "window.save.elsewhere"), say(m_tools.book, "window.answer.cancel")}});
    return answer == 0 && saveAs();
  }
  const std::vector<std::string> left = carryPictures(m_tools.document.site(), m_tools.document.path(), path);
  m_tools.document.markSaved(path);
  m_tools.settings.addRecentFile(path);
  emit recentChanged();
  if (!left.empty()) tell(say(m_tools.book, "window.save.picture_left", {{"floor", left.front()}}));
  return true;
}

bool FileDesk::mayLeave() {
  if (!m_tools.document.isDirty()) return true;
  const std::string name = m_tools.document.site().name;
  const int answer =
      ask(m_tools.window, {say(m_tools.book, "window.leave.sentence", {{"name", name}}),
                           say(m_tools.book, "window.leave.detail"),
                           {say(m_tools.book, "window.leave.save"), say(m_tools.book, "window.leave.discard"),
                            say(m_tools.book, "window.answer.cancel")}});
  if (answer == 0) return save();
  return answer == 1;
}

bool FileDesk::offerRecovery(const QString& folder) {
  for (const Recoverable& one : findRecoverable(folder)) {
    // Killed between a save and the end of its journal: nothing is missing.
    const base::Result<site::Site> saved = io::loadSite(QFile::encodeName(one.sitePath).toStdString());
    if (saved && saved.value() == one.site) {
      discard(one);
      continue;
    }
    const std::string when = QLocale().toString(one.lastChange, QLocale::ShortFormat).toStdString();
    const int answer =
        ask(m_tools.window, {say(m_tools.book, "window.recover.sentence", {{"name", one.site.name}}),
                             say(m_tools.book, "window.recover.detail", {{"when", when}}),
                             {say(m_tools.book, "window.recover.take"), say(m_tools.book, "window.recover.discard"),
                              say(m_tools.book, "window.recover.later")}});
    if (answer == 0) return recover(one);
    if (answer == 1) discard(one);
  }
  return false;
}

bool FileDesk::recover(const Recoverable& one) {
  take(one.site, one.sitePath);
  if (!one.sitePath.isEmpty()) m_store.adopt(one.sitePath);
  // Our own journal holds it from here on, so the old one is no longer needed.
  m_tools.document.markUnsaved();
  discard(one);
  return true;
}

QString FileDesk::startFolder() const {
  const QString path = m_tools.document.path();
  return path.isEmpty() ? QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation)
                        : QFileInfo(path).absolutePath();
}

QString FileDesk::askForSavePath() {
  QString name = QString::fromStdString(m_tools.document.site().name).simplified();
  name.replace('/', '-');
  const QString proposed = startFolder() + "/" + (name.isEmpty() ? QStringLiteral("building") : name) + ".json";
  QString path = QFileDialog::getSaveFileName(m_tools.window, say(m_tools.book, "window.save.title"), proposed,
                                              say(m_tools.book, "window.file_kind"));
  if (!path.isEmpty() && QFileInfo(path).suffix().isEmpty()) path += QStringLiteral(".json");
  return path;
}

}  // namespace cordreach::app
