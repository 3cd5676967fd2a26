// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/site_store.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QStandardPaths>

#include "io/atomic_file.h"
#include "io/site_file.h"

namespace cordreach::app {

namespace {

constexpr std::size_t kLimitBytes = 64U << 20U;

std::filesystem::path nativePath(const QString& path) { return QFile::encodeName(path).toStdString(); }

QByteArray hashOf(const QByteArray& content) { return QCryptographicHash::hash(content, QCryptographicHash::Sha256); }

}  // namespace

QString openFilesFolder() {
  const QString folder = QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) + "/cordreach/open";
  QDir().mkpath(folder);
  return folder;
}

SiteStore::SiteStore(QString lockFolder) : m_lockFolder(std::move(lockFolder)) {}

base::Result<site::Site> SiteStore::open(const QString& path) {
  const base::Result<std::string> text = io::readWholeFile(nativePath(path), kLimitBytes);
  if (!text) return text.error();
  base::Result<site::Site> site = io::readSite(text.value());
  if (!site) return site;
  hold(path);
  m_print = printOf(path, QByteArray::fromStdString(text.value()));
  return site;
}

void SiteStore::adopt(const QString& path) {
  hold(path);
  QFile file(path);
  m_print = file.open(QIODevice::ReadOnly) ? printOf(path, file.readAll()) : Print{};
}

base::Result<base::Done> SiteStore::save(const QString& path, const site::Site& site) {
  const std::string text = io::writeSite(site);
  const base::Result<base::Done> done = io::replaceFile(nativePath(path), text);
  if (!done) return done;
  hold(path);
  m_print = printOf(path, QByteArray::fromStdString(text));
  return done;
}

void SiteStore::close() {
  m_path.clear();
  m_lock.reset();
  m_print = {};
}

Underneath SiteStore::underneath() const {
  if (m_path.isEmpty()) return Underneath::Same;
  const QFileInfo now(m_path);
  if (!now.exists()) return Underneath::Gone;
  if (now.size() == m_print.size && now.lastModified() == m_print.modified) return Underneath::Same;
  QFile file(m_path);
  // What can't be read can't be told apart from a change, and must not be written over unasked.
  if (!file.open(QIODevice::ReadOnly)) return Underneath::Changed;
  return hashOf(file.readAll()) == m_print.hash ? Underneath::Same : Underneath::Changed;
}

bool SiteStore::isHeldElsewhere(const QString& path) const {
  if (m_lock && lockPath(path) == m_lock->fileName()) return false;
  QLockFile lock(lockPath(path));
  lock.setStaleLockTime(0);
  if (lock.tryLock(0)) return false;
  return lock.error() == QLockFile::LockFailedError;
}

bool SiteStore::isWritable(const QString& path) const {
  const QFileInfo file(path);
  return QFileInfo(file.path()).isWritable() && (!file.exists() || file.isWritable());
}

void SiteStore::hold(const QString& path) {
  m_path = path;
  if (m_lock && m_lock->fileName() == lockPath(path)) return;
  m_lock = std::make_unique<QLockFile>(lockPath(path));
  m_lock->setStaleLockTime(0);
  m_lock->tryLock(0);
}

// By the file's one true name, so that a link and a relative path find the same mark.
QString SiteStore::lockPath(const QString& path) const {
  const QFileInfo file(path);
  const QString canonical = file.canonicalFilePath();
  const QString name = canonical.isEmpty() ? file.absoluteFilePath() : canonical;
  const QByteArray hash = QCryptographicHash::hash(name.toUtf8(), QCryptographicHash::Sha1).toHex();
  return m_lockFolder + "/" + QString::fromLatin1(hash) + ".lock";
}

SiteStore::Print SiteStore::printOf(const QString& path, const QByteArray& content) {
  const QFileInfo file(path);
  return {file.lastModified(), file.size(), hashOf(content)};
}

}  // namespace cordreach::app
