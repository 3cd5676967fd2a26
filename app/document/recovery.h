// SPDX-License-Identifier: GPL-3.0-or-later
// What processes that are no longer there left unsaved.
#pragma once

#include <QDateTime>
#include <QLockFile>
#include <QString>
#include <memory>
#include <optional>
#include <vector>

#include "site/site.h"

namespace cordreach::app {

struct Recoverable {
  QString journal;
  QString sitePath;  // of the file it was opened from; empty: untitled
  QDateTime lastChange;
  site::Site site;
  std::shared_ptr<QLockFile> claim;  // no other window takes it while this is held
};

// Newest first. A journal that is being written by a living process is left alone. One whose end was torn off gives
// what stands before; one that holds nothing readable is moved aside to `.unreadable`, never deleted.
[[nodiscard]] std::vector<Recoverable> findRecoverable(const QString& folder);

// It was saved, is being journalled anew, or nobody wants it.
void discard(const Recoverable& recoverable);

// The site of a journal's text; nothing when not even the site it begins from can be read.
struct JournalText {
  QString sitePath;
  site::Site site;
  int edits = 0;
};
[[nodiscard]] std::optional<JournalText> readJournal(const QByteArray& text);

}  // namespace cordreach::app
