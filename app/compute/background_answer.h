// SPDX-License-Identifier: GPL-3.0-or-later
// Answers questions off the window's thread, of which only the newest matters. An answer may be told in several parts,
// each with what was there before; nothing is told of a question that was overtaken or taken back.
#pragma once

#include <QObject>
#include <functional>
#include <memory>
#include <utility>

#include "base/progress.h"
#include "compute/latest_job.h"

namespace cordreach::app {

template <class Question, class Answer>
class BackgroundAnswer {
 public:
  using Tell = std::function<void(Answer)>;
  // On the job's own thread; ends soon after it is asked to stop.
  using Work = std::function<void(const Question&, const base::Progress&, const Tell&)>;
  using Told = std::function<void(const std::shared_ptr<const Answer>&)>;  // on the owner's thread

  BackgroundAnswer(QObject* owner, Work work, Told told)
      : m_owner(owner),
        m_work(std::move(work)),
        m_told(std::move(told)),
        m_job([this](const Numbered& asked, const std::atomic<bool>& stop) { answer(asked, stop); }) {}

  void ask(Question question) {
    m_wanted = m_job.put([&](std::uint64_t number) { return Numbered{number, std::move(question)}; });
  }
  void takeBack() { m_wanted = 0; }

 private:
  struct Numbered {
    std::uint64_t number;
    Question question;
  };

  void answer(const Numbered& asked, const std::atomic<bool>& stop) {
    m_work(asked.question, {&stop, {}}, [this, number = asked.number](Answer part) {
      auto whole = std::make_shared<const Answer>(std::move(part));
      const auto tell = [this, number, whole] {
        if (number == m_wanted) m_told(whole);
      };
      QMetaObject::invokeMethod(m_owner, tell, Qt::QueuedConnection);
    });
  }

  QObject* m_owner;
  Work m_work;
  Told m_told;
  std::uint64_t m_wanted = 0;
  LatestJob<Numbered> m_job;  // the last, so that it has ended before anything that it uses goes
};

}  // namespace cordreach::app
