// SPDX-License-Identifier: GPL-3.0-or-later
#include "survey/picture_sweep.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QRegularExpression>
#include <algorithm>
#include <optional>

namespace cordreach::app {
namespace {

constexpr qint64 kMostSiteBytes = 64LL << 20;  // what is larger is no site that could be opened
constexpr qint64 kHeadBytes = 64;

bool isPictureFile(const QFileInfo& file) {
  static const QRegularExpression name(QStringLiteral("^[0-9a-f]{64}\\.(png|jpg)$"));
  return !file.isSymLink() && name.match(file.fileName()).hasMatch();
}

// Sites, their copies and journals are texts that begin with a brace.
bool looksLikeSite(QFile& file) {
  QByteArray head = file.peek(kHeadBytes);
  if (head.startsWith("\xef\xbb\xbf")) head.remove(0, 3);
  return head.trimmed().startsWith('{');
}

// Drops from `unused` what that text mentions. False: nobody can know what it, or who has it open, may bring back.
bool dropMentioned(const QFileInfo& info, const SweepWish& wish, QFileInfoList& unused) {
  if (info.size() > kMostSiteBytes) return true;
  QFile file(info.filePath());
  if (!file.open(QIODevice::ReadOnly)) return false;
  if (!looksLikeSite(file)) return true;
  if (wish.isHeldElsewhere(info.filePath())) return false;
  const QByteArray text = file.readAll();
  if (file.error() != QFileDevice::NoError) return false;
  unused.removeIf([&](const QFileInfo& picture) { return text.contains(picture.completeBaseName().toLatin1()); });
  return true;
}

bool isOurs(const QFileInfo& picture) {
  QFile file(picture.filePath());
  QCryptographicHash hash(QCryptographicHash::Sha256);
  return file.open(QIODevice::ReadOnly) && hash.addData(&file) &&
         QString::fromLatin1(hash.result().toHex()) == picture.completeBaseName();
}

}  // namespace

QStringList sweepPictures(const SweepWish& wish) {
  const QDir folder = QFileInfo(wish.sitePath).absoluteDir();
  QFileInfoList unused;
  QFileInfoList texts;
  for (const QFileInfo& file : folder.entryInfoList(QDir::Files | QDir::Hidden | QDir::System)) {
    (isPictureFile(file) ? unused : texts).push_back(file);
  }
  if (unused.isEmpty()) return {};
  texts += QDir(wish.recoveryFolder).entryInfoList(QDir::Files);
  for (const QFileInfo& text : texts) {
    if (!dropMentioned(text, wish, unused) || unused.isEmpty()) return {};
  }
  QStringList gone;
  for (const QFileInfo& picture : unused) {
    if (isOurs(picture) && QFile::moveToTrash(picture.filePath())) gone << picture.fileName();
  }
  return gone;
}

}  // namespace cordreach::app
