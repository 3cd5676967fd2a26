// SPDX-License-Identifier: GPL-3.0-or-later
#include "survey/wait_dialog.h"

#include <QCoreApplication>
#include <QEventLoop>
#include <QProgressBar>
#include <QProgressDialog>
#include <QThread>
#include <QTimer>

#include "shell/say.h"

namespace cordreach::app {
namespace {

constexpr int kQuietMs = 300;  // most plans are read before anybody could look
constexpr int kLookMs = 40;

struct Job {
  std::atomic<bool> stop = false;
  std::atomic<bool> done = false;
  std::atomic<int> percent = 0;
};

// The thread goes when it has ended; a program that quits waits for it.
std::shared_ptr<Job> begin(std::function<void(const ReadWatch&)> work) {
  auto job = std::make_shared<Job>();
  QThread* thread = QThread::create([job, work = std::move(work)] {
    work({&job->stop, &job->percent});
    job->done = true;
  });
  QObject::connect(thread, &QThread::finished, thread, &QObject::deleteLater);
  QObject::connect(QCoreApplication::instance(), &QCoreApplication::aboutToQuit, thread, [job, thread] {
    job->stop = true;
    thread->wait();
  });
  thread->start();
  return job;
}

void waitQuietly(const Job& job) {
  QEventLoop loop;
  QTimer look;
  QObject::connect(&look, &QTimer::timeout, &loop, [&] {
    if (job.done) loop.quit();
  });
  QTimer::singleShot(kQuietMs, &loop, &QEventLoop::quit);
  look.start(5);
  loop.exec(QEventLoop::ExcludeUserInputEvents);
}

// How far an unpacker is is known; how far a page's drawing is, is not.
void show(QProgressDialog& dialog, const Job& job) {
  const int percent = job.percent;
  dialog.setMaximum(percent > 0 ? 100 : 0);
  dialog.setValue(percent);
}

}  // namespace

bool runWatched(QWidget* parent, const text::Phrasebook& book, std::function<void(const ReadWatch&)> work) {
  const std::shared_ptr<Job> job = begin(std::move(work));
  waitQuietly(*job);
  if (job->done) return true;
  QProgressDialog dialog(say(book, "survey.reading"), say(book, "panel.cancel"), 0, 0, parent);
  dialog.setWindowTitle(say(book, "survey.reading"));
  dialog.setWindowModality(Qt::WindowModal);
  dialog.setAutoReset(false);
  dialog.setAutoClose(false);
  dialog.setMinimumDuration(0);
  dialog.findChild<QProgressBar*>()->setAccessibleName(dialog.labelText());
  QTimer look;
  QObject::connect(&look, &QTimer::timeout, &dialog, [&] {
    show(dialog, *job);
    if (job->done) dialog.accept();
  });
  look.start(kLookMs);
  dialog.exec();
  const bool done = job->done;  // once: what is stopped ends too, but is no answer
  job->stop = !done;
  return done;
}

}  // namespace cordreach::app
