// SPDX-License-Identifier: GPL-3.0-or-later
#include "compute/judge_service.h"

#include <utility>

#include "compute/latest_job.h"
#include "rules/judge.h"
#include "study/assess.h"

namespace cordreach::app {

namespace {

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
  Worker(LatestJob<Request>::Work work, LatestJob<Request>::Idle idle) : job(std::move(work), std::move(idle)) {}

  LatestJob<Request> job;
  // Of what is still to be told: findings, and remedies unless supposed.
  bool busy = false;
};

JudgeService::JudgeService(QObject* parent) : QObject(parent) {
  const auto deliver = [this](std::shared_ptr<const Verdict> verdict) {
    QMetaObject::invokeMethod(
        this, [this, verdict] { receive(verdict); }, Qt::QueuedConnection);
  };
  const auto work = [deliver](const Request& request, const std::atomic<bool>& stop) {
    judgeOne(request, stop, deliver);
  };
  const auto idle = [this] {
    QMetaObject::invokeMethod(
        this, [this] { settle(); }, Qt::QueuedConnection);
  };
  m_worker = std::make_unique<Worker>(work, idle);
}

JudgeService::~JudgeService() = default;

std::uint64_t JudgeService::request(std::shared_ptr<const site::Site> site, bool supposed) {
  const std::uint64_t number = m_worker->job.put([&](std::uint64_t one) {
    return Request{one, supposed, std::move(site)};
  });
  if (!std::exchange(m_worker->busy, true)) emit busyChanged(true);
  return number;
}

std::uint64_t JudgeService::latest() const { return m_worker->job.latest(); }

bool JudgeService::isBusy() const { return m_worker->busy; }

void JudgeService::receive(const std::shared_ptr<const Verdict>& verdict) {
  // A job that was overtaken but still finished may be shown by a drag, but never after a newer one.
  if (m_last && verdict->number < m_last->number) return;
  m_last = verdict;
  emit judged(verdict);
}

void JudgeService::settle() {
  if (!m_worker->job.isIdle()) return;
  if (std::exchange(m_worker->busy, false)) emit busyChanged(false);
}

}  // namespace cordreach::app
