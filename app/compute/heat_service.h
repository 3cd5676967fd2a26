// SPDX-License-Identifier: GPL-3.0-or-later
// Works the two sides of a lesson out off the window's thread, of which only the newest matter.
#pragma once

#include <QObject>

#include "compute/heat_answer.h"
#include "compute/latest_job.h"

namespace cordreach::app {

struct HeatRequest {
  std::uint64_t number = 0;
  HeatAsked asked;
};

class HeatService : public QObject {
  Q_OBJECT

 public:
  explicit HeatService(QObject* parent = nullptr);
  ~HeatService() override;

  // Answers with the number that its answer will carry.
  std::uint64_t request(const HeatAsked& asked);

 signals:
  void answered(const cordreach::app::HeatAnswer& answer);

 private:
  using Job = LatestJob<HeatRequest>;
  std::unique_ptr<Job> m_job;
};

}  // namespace cordreach::app
