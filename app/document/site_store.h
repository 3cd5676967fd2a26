// SPDX-License-Identifier: GPL-3.0-or-later
// The open site's file: read and written whole or not at all, watched for others who write it, held so that a second
// window learns of the first.
#pragma once

#include <QByteArray>
#include <QDateTime>
#include <QLockFile>
#include <QString>
#include <memory>

#include "base/result.h"
#include "site/site.h"

namespace cordreach::app {

enum class Underneath { Same, Changed, Gone };

class SiteStore {
 public:
  // `lockFolder` keeps the marks that say which files are open.
  explicit SiteStore(QString lockFolder);

  // The store then stands for this file. Errors: those of io::readSite and io::readWholeFile.
  [[nodiscard]] base::Result<site::Site> open(const QString& path);
  // The same for a file that is read by other means (recovery): watched as it is on the disk now.
  void adopt(const QString& path);
  // Errors: those of io::replaceFile; the old file then stands.
  [[nodiscard]] base::Result<base::Done> save(const QString& path, const site::Site& site);
  void close();

  // What happened to the file since it was opened or saved here, by time and size, then by content.
  [[nodiscard]] Underneath underneath() const;
  [[nodiscard]] bool isHeldElsewhere(const QString& path) const;
  [[nodiscard]] bool isWritable(const QString& path) const;

 private:
  struct Print {
    QDateTime modified;
    qint64 size = -1;
    QByteArray hash;
  };

  void hold(const QString& path);
  [[nodiscard]] QString lockPath(const QString& path) const;
  static Print printOf(const QString& path, const QByteArray& content);

  QString m_lockFolder;
  QString m_path;
  Print m_print;
  std::unique_ptr<QLockFile> m_lock;
};

// Where marks of open files lie by default, made if need be.
[[nodiscard]] QString openFilesFolder();

}  // namespace cordreach::app
