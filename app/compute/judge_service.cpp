// SPDX-License-Identifier: GPL-3.0-or-later
#include "compute/judge_service.h"

#include <QTimer>
#include <atomic>
#include <chrono>
#include <condition_variable>
#include <mutex>
#include <optional>
#include <thread>

#include "rules/judge.h"
#include "study/assess.h"

namespace cordreach::app {

namespace {

using Clock = std::chrono::steady_clock;
constexpr std::chrono::milliseconds kGrace{100};

struct Request {
  std::uint64_t number = 0;
  bool supposed = false;
  std::shared_ptr<const site::Site> site;
};

using Deliver = std::function<void(std::shared_ptr<const Verdict>)>;

// Delivers twice, or less when it is stopped in between.
void judgeOne(const Request& request, const std::atomic<bool>& stop, const Deliver& deliver) {
  Verdict verdict{request.number, request.supposed, request.site, {}, {}, {}};
  study::StudyOptions options;
  options.progress.stop = &stop;
  verdict.answer = study::assess(*request.site, options);
  if (stop.load()) return;
  verdict.findings = rules::judge(*request.site, verdict.answer);
  deliver(std::make_shared<const Verdict>(verdict));
  // What is only being tried on the map changes before a remedy could be pressed.
  if (request.supposed || verdict.findings.empty() || stop.load()) return;
  verdict.remedies = planning::remediesForAll(*request.site, verdict.findings, {&stop, {}});
  if (!stop.load()) deliver(std::make_shared<const Verdict>(std::move(verdict)));
}

}  // namespace

struct JudgeService::Worker {
  std::mutex mutex;
  std::condition_variable wake;
  std::optional<Request> waiting;
  std::atomic<bool> stopRunning = false;
  bool running = false;
  bool quit = false;
  Clock::time_point startedAt;
  std::uint64_t latest = 0;
  QTimer grace;  // stops the running job once it has had its time and another waits
  std::thread thread;

  // Of what is still to be told: findings, and remedies unless supposed.
  bool busy = false;

  template <class Deliver, class Idle>
  void loop(const Deliver& deliver, const Idle& idle) {
    while (true) {
      Request request;
      {
        std::unique_lock lock(mutex);
        running = false;
        if (!waiting && !quit) idle();
        wake.wait(lock, [this] { return quit || waiting; });
        if (quit) return;
        request = *std::exchange(waiting, std::nullopt);
        running = true;
        stopRunning = false;
        startedAt = Clock::now();
      }
      judgeOne(request, stopRunning, deliver);
    }
  }
};

JudgeService::JudgeService(QObject* parent) : QObject(parent), m_worker(std::make_unique<Worker>()) {
  Worker& worker = *m_worker;
  worker.grace.setSingleShot(true);
  connect(&worker.grace, &QTimer::timeout, this, [&worker] {
    const std::lock_guard lock(worker.mutex);
    if (worker.waiting) worker.stopRunning = true;
  });
  const auto deliver = [this](std::shared_ptr<const Verdict> verdict) {
    QMetaObject::invokeMethod(
        this, [this, verdict] { receive(verdict); }, Qt::QueuedConnection);
  };
  const auto idle = [this] {
    QMetaObject::invokeMethod(
        this, [this] { settle(); }, Qt::QueuedConnection);
  };
  worker.thread = std::thread([&worker, deliver, idle] { worker.loop(deliver, idle); });
}

JudgeService::~JudgeService() {
  {
    const std::lock_guard lock(m_worker->mutex);
    m_worker->quit = true;
    m_worker->stopRunning = true;
  }
  m_worker->wake.notify_all();
  m_worker->thread.join();
}

std::uint64_t JudgeService::request(std::shared_ptr<const site::Site> site, bool supposed) {
  std::uint64_t number = 0;
  std::chrono::milliseconds wait{-1};
  {
    const std::lock_guard lock(m_worker->mutex);
    number = ++m_worker->latest;
    m_worker->waiting = Request{number, supposed, std::move(site)};
    if (m_worker->running) {
      const auto age = std::chrono::duration_cast<std::chrono::milliseconds>(Clock::now() - m_worker->startedAt);
      wait = std::max(kGrace - age, std::chrono::milliseconds{0});
      if (age >= kGrace) m_worker->stopRunning = true;
    }
  }
  m_worker->wake.notify_all();
  if (wait.count() > 0) m_worker->grace.start(wait);
  if (!std::exchange(m_worker->busy, true)) emit busyChanged(true);
  return number;
}

std::uint64_t JudgeService::latest() const { return m_worker->latest; }

bool JudgeService::isBusy() const { return m_worker->busy; }

void JudgeService::receive(const std::shared_ptr<const Verdict>& verdict) {
  // A job that was overtaken but still finished may be shown by a drag, but never after a newer one.
  if (m_last && verdict->number < m_last->number) return;
  m_last = verdict;
  emit judged(verdict);
}

void JudgeService::settle() {
  {
    const std::lock_guard lock(m_worker->mutex);
    if (m_worker->waiting || m_worker->running) return;
  }
  if (std::exchange(m_worker->busy, false)) emit busyChanged(false);
}

}  // namespace cordreach::app
