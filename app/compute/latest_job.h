// SPDX-License-Identifier: GPL-3.0-or-later
// Work off the window's thread of which only the newest matters. At most one job runs and one waits: a new request
// takes the waiting one's place, and stops the running one only when that has had its 100 ms, so that a drag does not
// starve its own answers; and never the one after one that was stopped, so that it does not on a slow machine either.
// Requests are put from one thread, the one that made the job.
#pragma once

#include <QTimer>
#include <algorithm>
#include <atomic>
#include <chrono>
#include <condition_variable>
#include <cstdint>
#include <functional>
#include <mutex>
#include <optional>
#include <thread>
#include <utility>

namespace cordreach::app {

template <class Request>
class LatestJob {
 public:
  // Both on the job's own thread. `work` looks at `stop` and ends soon after it is set; `idle`, which may be empty,
  // is told whenever nothing waits any more.
  using Work = std::function<void(const Request& request, const std::atomic<bool>& stop)>;
  using Idle = std::function<void()>;

  explicit LatestJob(Work work, Idle idle = {}) : m_work(std::move(work)), m_idle(std::move(idle)) {
    m_grace.setSingleShot(true);
    QObject::connect(&m_grace, &QTimer::timeout, &m_grace, [this] {
      const std::lock_guard lock(m_mutex);
      if (m_waiting && !m_patient) m_stop = true;
    });
    m_thread = std::thread([this] { loop(); });
  }

  ~LatestJob() {
    {
      const std::lock_guard lock(m_mutex);
      m_quit = true;
      m_stop = true;
    }
    m_wake.notify_all();
    m_thread.join();
  }

  LatestJob(const LatestJob&) = delete;
  LatestJob& operator=(const LatestJob&) = delete;

  // Its number, counted from 1, is told to `make`, which gives the request.
  template <class Make>
  std::uint64_t put(Make make) {
    std::chrono::milliseconds wait{-1};
    {
      const std::lock_guard lock(m_mutex);
      m_waiting = make(++m_latest);
      if (m_running) {
        const auto age = std::chrono::duration_cast<std::chrono::milliseconds>(Clock::now() - m_startedAt);
        wait = std::max(kGrace - age, std::chrono::milliseconds{0});
        if (age >= kGrace && !m_patient) m_stop = true;
      }
    }
    m_wake.notify_all();
    if (wait.count() > 0) m_grace.start(wait);
    return m_latest;
  }

  [[nodiscard]] std::uint64_t latest() const { return m_latest; }
  [[nodiscard]] bool isIdle() const {
    const std::lock_guard lock(m_mutex);
    return !m_waiting && !m_running;
  }

 private:
  using Clock = std::chrono::steady_clock;
  static constexpr std::chrono::milliseconds kGrace{100};

  void loop() {
    while (true) {
      std::optional<Request> request;
      {
        std::unique_lock lock(m_mutex);
        m_running = false;
        if (!m_waiting && !m_quit && m_idle) m_idle();
        m_wake.wait(lock, [this] { return m_quit || m_waiting; });
        if (m_quit) return;
        request = std::exchange(m_waiting, std::nullopt);
        m_running = true;
        m_patient = m_stop;
        m_stop = false;
        m_startedAt = Clock::now();
      }
      m_work(*request, m_stop);
    }
  }

  Work m_work;
  Idle m_idle;
  mutable std::mutex m_mutex;
  std::condition_variable m_wake;
  std::optional<Request> m_waiting;
  std::atomic<bool> m_stop = false;
  bool m_running = false;
  bool m_quit = false;
  bool m_patient = false;  // the job before was stopped: this one is let end
  Clock::time_point m_startedAt;
  std::uint64_t m_latest = 0;
  QTimer m_grace;  // stops the running job once it has had its time and another waits
  std::thread m_thread;
};

}  // namespace cordreach::app
