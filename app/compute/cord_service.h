// SPDX-License-Identifier: GPL-3.0-or-later
// Answers questions about cords off the window's thread, of which only the newest matters. What was judged is kept: a
// question that differs in its distance only is answered at once from it.
#pragma once

#include <QObject>
#include <cstdint>
#include <memory>

#include "compute/cord_answer.h"
#include "compute/latest_job.h"

namespace cordreach::app {

struct CordRequest {
  std::uint64_t number = 0;
  CordAsked asked;
};

class CordService : public QObject {
  Q_OBJECT

 public:
  explicit CordService(QObject* parent = nullptr);
  ~CordService() override;

  // Answers with the number that its answer will carry.
  std::uint64_t request(const CordAsked& asked);
  [[nodiscard]] std::uint64_t latest() const;

 signals:
  // First with the advice; again with the same number when the field is there.
  void answered(std::shared_ptr<const cordreach::app::CordAnswer> answer);

 private:
  using Job = LatestJob<CordRequest>;
  void receive(const std::shared_ptr<const CordAnswer>& answer);

  std::unique_ptr<Job> m_job;
  std::uint64_t m_shown = 0;
};

}  // namespace cordreach::app
