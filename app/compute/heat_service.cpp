// SPDX-License-Identifier: GPL-3.0-or-later
#include "compute/heat_service.h"

#include <atomic>

namespace cordreach::app {

HeatService::HeatService(QObject* parent) : QObject(parent) {
  const auto memory = std::make_shared<HeatMemory>();  // of the job's thread alone
  m_job = std::make_unique<Job>([this, memory](const HeatRequest& request, const std::atomic<bool>& stop) {
    std::optional<HeatAnswer> answer = memory->answer(request.asked, base::Progress{&stop, {}});
    if (!answer) return;
    answer->number = request.number;
    QMetaObject::invokeMethod(
        this, [this, answer = std::move(*answer)] { emit answered(answer); }, Qt::QueuedConnection);
  });
}

HeatService::~HeatService() = default;

std::uint64_t HeatService::request(const HeatAsked& asked) {
  return m_job->put([&](std::uint64_t number) { return HeatRequest{number, asked}; });
}

}  // namespace cordreach::app
