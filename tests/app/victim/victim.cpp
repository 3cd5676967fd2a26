// SPDX-License-Identifier: GPL-3.0-or-later
// Edits and saves a building as fast as it can until it is killed. It writes the number of each edit to its output once
// the edit is made, so that whoever kills it knows what must be there afterwards. First it takes up what a killed
// predecessor left.
//   victim RECOVERY-FOLDER SITE-FILE
#include <QCoreApplication>
#include <QTimer>
#include <cstdio>
#include <string>

#include "document/document.h"
#include "document/journal.h"
#include "document/recovery.h"
#include "document/site_store.h"

namespace {

using namespace cordreach;

constexpr int kEditsBetweenSaves = 7;

int numberOf(const site::Site& site) { return std::atoi(site.name.c_str()); }

class Victim {
 public:
  Victim(const QString& folder, QString file)
      : m_file(std::move(file)),
        m_store(folder),
        m_document(m_store.open(m_file).value()),
        m_journal(m_document, folder) {
    m_document.markSaved(m_file);
    for (const app::Recoverable& one : app::findRecoverable(folder)) {
      if (numberOf(one.site) > numberOf(m_document.site())) {
        m_document.replace(one.site, m_file);
        m_document.markUnsaved();
      }
      app::discard(one);
    }
    m_number = numberOf(m_document.site());
  }

  void step() {
    const site::Site& site = m_document.site();
    const std::string name = std::to_string(++m_number);
    const site::Edit edit{"site.rename", {site::HeadingChange{{site.name, site.ambient}, {name, site.ambient}}}};
    if (!m_document.apply(edit)) std::abort();
    std::printf("%d\n", m_number);
    std::fflush(stdout);
    if (m_number % kEditsBetweenSaves != 0) return;
    if (!m_store.save(m_file, m_document.site())) std::abort();
    m_document.markSaved(m_file);
  }

 private:
  QString m_file;
  app::SiteStore m_store;
  app::Document m_document;
  app::Journal m_journal;
  int m_number = 0;
};

}  // namespace

int main(int argumentCount, char** arguments) {
  QCoreApplication application(argumentCount, arguments);
  if (argumentCount != 3) return 2;
  Victim victim(QString::fromLocal8Bit(arguments[1]), QString::fromLocal8Bit(arguments[2]));
  QTimer timer;
  QObject::connect(&timer, &QTimer::timeout, [&victim] { victim.step(); });
  timer.start(0);
  return QCoreApplication::exec();
}
