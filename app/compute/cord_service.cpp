// SPDX-License-Identifier: GPL-3.0-or-later
#include "compute/cord_service.h"

#include <QTimer>
#include <atomic>
#include <chrono>
#include <condition_variable>
#include <mutex>
#include <thread>
#include <utility>

namespace cordreach::app {

namespace {

using Clock = std::chrono::steady_clock;
constexpr std::chrono::milliseconds kGrace{100};

struct Request {
  std::uint64_t number = 0;
  CordAsked asked;
};

bool isUnsound(const planning::CordAdvice& advice) {
  return advice.verdict >= rules::Severity::Caution || (advice.extensionNeeded && !advice.choice);
}

template <class Deliver>
void answerOne(const Request& request, CordMemory& memory, const std::atomic<bool>& stop, const Deliver& deliver) {
  const base::Progress progress{&stop, {}};
  CordAnswer answer{request.number, request.asked, memory.advise(request.asked, progress), {}, emptyGrid(), false};
  if (stop.load()) return;
  deliver(std::make_shared<const CordAnswer>(answer));
  if (isUnsound(answer.advice) && request.asked.work) {
    answer.instead = planning::insteadOf(request.asked.question, *request.asked.work);
    if (stop.load()) return;
    deliver(std::make_shared<const CordAnswer>(answer));
  }
  answer.grid = memory.grid(request.asked, progress);
  if (stop.load()) return;
  answer.whole = true;
  deliver(std::make_shared<const CordAnswer>(std::move(answer)));
}

}  // namespace

struct CordService::Worker {
  std::mutex mutex;
  std::condition_variable wake;
  std::optional<Request> waiting;
  std::atomic<bool> stopRunning = false;
  bool running = false;
  bool quit = false;
  Clock::time_point startedAt;
  std::uint64_t latest = 0;
  QTimer grace;  // stops the running job once it has had its time and another waits
  CordMemory memory;
  std::thread thread;

  template <class Deliver>
  void loop(const Deliver& deliver) {
    while (true) {
      Request request;
      {
        std::unique_lock lock(mutex);
        running = false;
        wake.wait(lock, [this] { return quit || waiting; });
        if (quit) return;
        request = *std::exchange(waiting, std::nullopt);
        running = true;
        stopRunning = false;
        startedAt = Clock::now();
      }
      answerOne(request, memory, stopRunning, deliver);
    }
  }
};

CordService::CordService(QObject* parent) : QObject(parent), m_worker(std::make_unique<Worker>()) {
  Worker& worker = *m_worker;
  worker.grace.setSingleShot(true);
  connect(&worker.grace, &QTimer::timeout, this, [&worker] {
    const std::lock_guard lock(worker.mutex);
    if (worker.waiting) worker.stopRunning = true;
  });
  const auto deliver = [this](std::shared_ptr<const CordAnswer> answer) {
    QMetaObject::invokeMethod(
        this, [this, answer] { receive(answer); }, Qt::QueuedConnection);
  };
  worker.thread = std::thread([&worker, deliver] { worker.loop(deliver); });
}

CordService::~CordService() {
  {
    const std::lock_guard lock(m_worker->mutex);
    m_worker->quit = true;
    m_worker->stopRunning = true;
  }
  m_worker->wake.notify_all();
  m_worker->thread.join();
}

std::uint64_t CordService::request(const CordAsked& asked) {
  std::uint64_t number = 0;
  std::chrono::milliseconds wait{-1};
  {
    const std::lock_guard lock(m_worker->mutex);
    number = ++m_worker->latest;
    m_worker->waiting = Request{number, asked};
    if (m_worker->running) {
      const auto age = std::chrono::duration_cast<std::chrono::milliseconds>(Clock::now() - m_worker->startedAt);
      wait = std::max(kGrace - age, std::chrono::milliseconds{0});
      if (age >= kGrace) m_worker->stopRunning = true;
    }
  }
  m_worker->wake.notify_all();
  if (wait.count() > 0) m_worker->grace.start(wait);
  return number;
}

std::uint64_t CordService::latest() const { return m_worker->latest; }

bool CordService::isBusy() const {
  const std::lock_guard lock(m_worker->mutex);
  return m_worker->waiting.has_value() || m_worker->running;
}

void CordService::receive(const std::shared_ptr<const CordAnswer>& answer) {
  // One that was overtaken but still finished may be shown by a drag, but never after a newer one.
  if (answer->number < m_shown) return;
  m_shown = answer->number;
  emit answered(answer);
}

}  // namespace cordreach::app
