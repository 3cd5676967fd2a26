// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/journal.h"

#include <unistd.h>

#include <QDir>
#include <QJsonDocument>
#include <QJsonObject>
#include <QStandardPaths>
#include <QUuid>
#include <algorithm>

#include "io/atomic_file.h"
#include "io/edit_json.h"
#include "io/site_file.h"

namespace cordreach::app {

namespace {

constexpr int kSyncDelayMs = 1000;
// Beyond this it begins anew from the present site, so that hours of nudging do not fill a disk.
constexpr qint64 kLongestJournalBytes = 8LL << 20;

QByteArray headerOf(const Document& document) {
  const QJsonObject header{{"journal", 1}, {"path", document.path()}};
  return QJsonDocument(header).toJson(QJsonDocument::Compact);
}

// A JSON text holds line ends only between its parts, never inside a string.
std::string onOneLine(std::string json) {
  std::replace(json.begin(), json.end(), '\n', ' ');
  return json;
}

}  // namespace

QString recoveryFolder() {
  const QString folder = QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) + "/cordreach/recovery";
  QDir().mkpath(folder);
  return folder;
}

Journal::Journal(Document& document, const QString& folder, QObject* parent)
    : QObject(parent),
      m_document(document),
      m_path(folder + "/" + QUuid::createUuid().toString(QUuid::Id128) + ".journal"),
      m_lock(std::make_unique<QLockFile>(m_path + ".lock")) {
  QDir().mkpath(folder);
  m_lock->setStaleLockTime(0);
  m_lock->tryLock(0);
  m_file.setFileName(m_path);
  m_syncSoon.setSingleShot(true);
  m_syncSoon.setInterval(kSyncDelayMs);
  connect(&m_syncSoon, &QTimer::timeout, this, &Journal::sync);
  connect(&document, &Document::committed, this, &Journal::append);
  connect(&document, &Document::stateChanged, this, &Journal::follow);
  follow();
}

Journal::~Journal() { end(); }

void Journal::append(const site::Edit& edit) {
  // The site has the edit in it already when a journal begins.
  if (!m_file.isOpen() || m_file.size() > kLongestJournalBytes) return begin();
  const QByteArray line = QByteArray::fromStdString(io::writeEdit(edit)) + '\n';
  if (m_file.write(line) != line.size() || !m_file.flush()) {
    const std::string reason = m_file.errorString().toStdString();
    m_file.close();
    return fail({"io.cannot_write", m_path.toStdString(), {{"reason", reason}}});
  }
  if (!m_syncSoon.isActive()) m_syncSoon.start();
}

void Journal::follow() {
  if (!m_document.isDirty()) return end();
  if (!m_file.isOpen()) begin();
}

void Journal::begin() {
  m_file.close();
  const std::string text =
      headerOf(m_document).toStdString() + "\n" + onOneLine(io::writeSite(m_document.site())) + "\n";
  const base::Result<base::Done> written = io::replaceFile(QFile::encodeName(m_path).toStdString(), text);
  if (!written) return fail(written.error());
  if (!m_file.open(QIODevice::WriteOnly | QIODevice::Append)) {
    return fail({"io.cannot_write", m_path.toStdString(), {{"reason", m_file.errorString().toStdString()}}});
  }
  m_failing = false;
}

void Journal::end() {
  m_syncSoon.stop();
  m_file.close();
  QFile::remove(m_path);
}

void Journal::sync() {
  if (m_file.isOpen()) ::fdatasync(m_file.handle());
}

void Journal::fail(base::Error error) {
  if (std::exchange(m_failing, true)) return;
  emit failed(error);
}

}  // namespace cordreach::app
