// SPDX-License-Identifier: GPL-3.0-or-later
#include "survey/picture_files.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QStandardPaths>
#include <algorithm>

#include "io/atomic_file.h"

namespace cordreach::app {
namespace {

QString folderOf(const QString& sitePath) {
  return sitePath.isEmpty() ? unsavedPictures() : QFileInfo(sitePath).absolutePath();
}

std::filesystem::path native(const QString& path) { return QFile::encodeName(path).toStdString(); }

}  // namespace

QString pictureName(const site::Picture& picture) {
  return QString::fromStdString(picture.hash + "." + picture.suffix);
}

bool isPictureName(const site::Picture& picture) {
  const auto isHex = [](char c) { return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f'); };
  const bool isHash = picture.hash.size() >= 8 && std::all_of(picture.hash.begin(), picture.hash.end(), isHex);
  return isHash && (picture.suffix == "png" || picture.suffix == "jpg");
}

QString unsavedPictures() {
  const QString folder = QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) + "/cordreach/pictures";
  QDir().mkpath(folder);
  return folder;
}

QString findPicture(const QString& sitePath, const site::Picture& picture) {
  if (!isPictureName(picture)) return {};
  for (const QString& folder : {folderOf(sitePath), unsavedPictures()}) {
    const QString path = folder + QLatin1Char('/') + pictureName(picture);
    if (QFileInfo(path).isFile()) return path;
  }
  return {};
}

base::Result<site::Picture> storePicture(const QString& sitePath, const QByteArray& content,
                                         const std::string& suffix) {
  site::Picture picture;
  picture.hash = QCryptographicHash::hash(content, QCryptographicHash::Sha256).toHex().toStdString();
  picture.suffix = suffix;
  const QString path = folderOf(sitePath) + QLatin1Char('/') + pictureName(picture);
  if (QFileInfo(path).isFile() && QFileInfo(path).size() == content.size()) return picture;
  const auto done = io::replaceFile(native(path), {content.constData(), static_cast<std::size_t>(content.size())});
  if (!done) return done.error();
  return picture;
}

std::vector<std::string> carryPictures(const site::Site& site, const QString& fromSite, const QString& toSite) {
  std::vector<std::string> failed;
  for (const site::Floor& floor : site.all<site::Floor>()) {
    if (!floor.picture || !isPictureName(*floor.picture)) continue;
    const QString from = findPicture(fromSite, *floor.picture);
    const QString to = folderOf(toSite) + QLatin1Char('/') + pictureName(*floor.picture);
    if (from.isEmpty() || QFileInfo(to).isFile()) continue;
    if (!QFile::copy(from, to)) failed.push_back(floor.name);
  }
  return failed;
}

}  // namespace cordreach::app
