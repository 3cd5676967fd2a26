// SPDX-License-Identifier: GPL-3.0-or-later
#include "compute/cord_service.h"

#include <atomic>

namespace cordreach::app {

namespace {

using Request = CordRequest;

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

CordService::CordService(QObject* parent) : QObject(parent) {
  const auto deliver = [this](std::shared_ptr<const CordAnswer> answer) {
    QMetaObject::invokeMethod(
        this, [this, answer] { receive(answer); }, Qt::QueuedConnection);
  };
  const auto memory = std::make_shared<CordMemory>();  // of the job's thread alone
  m_job = std::make_unique<Job>([memory, deliver](const Request& request, const std::atomic<bool>& stop) {
    answerOne(request, *memory, stop, deliver);
  });
}

CordService::~CordService() = default;

std::uint64_t CordService::request(const CordAsked& asked) {
  return m_job->put([&](std::uint64_t number) { return Request{number, asked}; });
}

std::uint64_t CordService::latest() const { return m_job->latest(); }

void CordService::receive(const std::shared_ptr<const CordAnswer>& answer) {
  // One that was overtaken but still finished may be shown by a drag, but never after a newer one.
  if (answer->number < m_shown) return;
  m_shown = answer->number;
  emit answered(answer);
}

}  // namespace cordreach::app
