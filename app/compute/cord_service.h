// SPDX-License-Identifier: GPL-3.0-or-later
// Answers questions about cords off the window's thread. One is worked on and one waits; a new one takes the waiting
// one's place, and stops the running one only when that has had its time, so that a drag does not starve its own
// answer. What was judged is kept: a question that differs in its distance only is answered at once from it.
#pragma once

#include <QObject>
#include <cstdint>
#include <memory>

#include "compute/cord_answer.h"

namespace cordreach::app {

class CordService : public QObject {
  Q_OBJECT

 public:
  explicit CordService(QObject* parent = nullptr);
  ~CordService() override;

  // Answers with the number that its answer will carry.
  std::uint64_t request(const CordAsked& asked);
  [[nodiscard]] std::uint64_t latest() const;
  [[nodiscard]] bool isBusy() const;

 signals:
  // First with the advice; again with the same number when the field is there.
  void answered(std::shared_ptr<const cordreach::app::CordAnswer> answer);

 private:
  struct Worker;
  void receive(const std::shared_ptr<const CordAnswer>& answer);

  std::unique_ptr<Worker> m_worker;
  std::uint64_t m_shown = 0;
};

}  // namespace cordreach::app
