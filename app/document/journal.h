// SPDX-License-Identifier: GPL-3.0-or-later
// Autosave: what was changed since the last save, written down as it happens, so that a killed process loses nothing.
// One file a window: a header, the site it begins from, then one edit a line. It is there only while something is
// unsaved; an edit is with the system at once and on the disk a second later.
#pragma once

#include <QFile>
#include <QLockFile>
#include <QObject>
#include <QTimer>
#include <memory>

#include "base/error.h"
#include "document/document.h"

namespace cordreach::app {

// Where journals lie by default, made if need be.
[[nodiscard]] QString recoveryFolder();

class Journal : public QObject {
  Q_OBJECT

 public:
  Journal(Document& document, const QString& folder, QObject* parent = nullptr);
  // A clean end: what is unsaved was given up on purpose, and the journal goes.
  ~Journal() override;

  [[nodiscard]] const QString& path() const { return m_path; }

 signals:
  // It can't be written at present: io.disk_full and the like. Said once; the next edit tries again.
  void failed(const cordreach::base::Error& error);

 private:
  void append(const site::Edit& edit);
  void follow();
  void begin();
  void end();
  void sync();
  void fail(base::Error error);

  Document& m_document;
  QString m_path;
  std::unique_ptr<QLockFile> m_lock;  // held as long as this process lives
  QFile m_file;
  QTimer m_syncSoon;
  bool m_failing = false;
};

}  // namespace cordreach::app
