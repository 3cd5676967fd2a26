// SPDX-License-Identifier: GPL-3.0-or-later
// Judges snapshots off the window's thread. At most one job runs and one waits: a new request takes the waiting one's
// place, and stops the running one only when that has had its 100 ms, so that a drag does not starve its own verdict.
#pragma once

#include <QObject>
#include <cstdint>
#include <memory>

#include "compute/verdict.h"
#include "site/site.h"

namespace cordreach::app {

class JudgeService : public QObject {
  Q_OBJECT

 public:
  explicit JudgeService(QObject* parent = nullptr);
  ~JudgeService() override;

  // Answers with the number that its verdict will carry.
  std::uint64_t request(std::shared_ptr<const site::Site> site, bool supposed);
  // The number last asked for: a verdict with a smaller one is stale.
  [[nodiscard]] std::uint64_t latest() const;
  [[nodiscard]] std::shared_ptr<const Verdict> last() const { return m_last; }
  [[nodiscard]] bool isBusy() const;

 signals:
  // First with the findings, at once; again with the same number when the remedies are tried.
  void judged(std::shared_ptr<const cordreach::app::Verdict> verdict);
  void busyChanged(bool busy);

 private:
  struct Worker;
  void receive(const std::shared_ptr<const Verdict>& verdict);
  void settle();

  std::unique_ptr<Worker> m_worker;
  std::shared_ptr<const Verdict> m_last;
};

}  // namespace cordreach::app
