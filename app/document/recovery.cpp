// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/recovery.h"

#include <QDir>
#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>

#include "io/edit_json.h"
#include "io/site_file.h"

namespace cordreach::app {

namespace {

std::string_view viewOf(const QByteArray& bytes) { return {bytes.constData(), static_cast<std::size_t>(bytes.size())}; }

// Whole lines only: the last one may have been cut by the end of the process.
QList<QByteArray> wholeLines(const QByteArray& text) {
  QList<QByteArray> lines = text.split('\n');
  lines.removeLast();
  return lines;
}

std::optional<Recoverable> recover(const QFileInfo& file) {
  auto claim = std::make_shared<QLockFile>(file.filePath() + ".lock");
  claim->setStaleLockTime(0);
  if (!claim->tryLock(0)) return std::nullopt;
  QFile journal(file.filePath());
  if (!journal.open(QIODevice::ReadOnly)) return std::nullopt;
  std::optional<JournalText> text = readJournal(journal.readAll());
  if (!text) {
    QFile::rename(file.filePath(), file.filePath() + ".unreadable");
    return std::nullopt;
  }
  return Recoverable{file.filePath(), text->sitePath, file.lastModified(), std::move(text->site), std::move(claim)};
}

// Marks of processes that were killed with nothing unsaved.
void sweepStaleLocks(const QString& folder) {
  for (const QFileInfo& file : QDir(folder).entryInfoList({"*.journal.lock"}, QDir::Files)) {
    if (QFile::exists(file.path() + "/" + file.completeBaseName())) continue;
    QLockFile lock(file.filePath());
    lock.setStaleLockTime(0);
    if (lock.tryLock(0)) lock.unlock();
  }
}

}  // namespace

std::optional<JournalText> readJournal(const QByteArray& text) {
  const QList<QByteArray> lines = wholeLines(text);
  if (lines.size() < 2) return std::nullopt;
  const QJsonObject header = QJsonDocument::fromJson(lines[0]).object();
  base::Result<site::Site> base = io::readSite(viewOf(lines[1]));
  if (header["journal"].toInt() != 1 || !base) return std::nullopt;
  JournalText journal{header["path"].toString(), std::move(base).value(), 0};
  for (qsizetype i = 2; i < lines.size(); ++i) {
    const base::Result<site::Edit> edit = io::readEdit(viewOf(lines[i]));
    // What follows a line that does not fit can't fit either.
    if (!edit || !site::apply(edit.value(), journal.site)) break;
    ++journal.edits;
  }
  return journal;
}

std::vector<Recoverable> findRecoverable(const QString& folder) {
  sweepStaleLocks(folder);
  std::vector<Recoverable> found;
  for (const QFileInfo& file : QDir(folder).entryInfoList({"*.journal"}, QDir::Files, QDir::Time)) {
    if (std::optional<Recoverable> one = recover(file)) found.push_back(std::move(*one));
  }
  return found;
}

void discard(const Recoverable& recoverable) {
  QFile::remove(recoverable.journal);
  if (recoverable.claim) recoverable.claim->unlock();
}

}  // namespace cordreach::app
