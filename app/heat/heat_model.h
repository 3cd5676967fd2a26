// SPDX-License-Identifier: GPL-3.0-or-later
// What the place Heat shows: a lesson, two of its sides worked out, and the clock that runs through them. Every figure
// is the core's, worked out off the window's thread: until the newest answer is there the one before stays shown.
#pragma once

#include <QElapsedTimer>
#include <QObject>
#include <QTimer>
#include <array>

#include "compute/heat_service.h"
#include "planning/lesson.h"

namespace cordreach::app {

// "A", "B".
[[nodiscard]] QString sideLetter(std::size_t side);

class HeatModel : public QObject {
  Q_OBJECT

 public:
  explicit HeatModel(planning::Lesson lesson, QObject* parent = nullptr);

  // The first lesson is worked out when somebody looks, and not before.
  void begin();
  // Its first two sides, the clock at the start.
  void open(planning::Lesson lesson);
  // The same lesson in other words; the clock and what is chosen stay.
  void reword(planning::Lesson lesson);
  [[nodiscard]] const planning::Lesson& lesson() const { return m_lesson; }

  void setSide(std::size_t side, const planning::LessonCase& setup);
  [[nodiscard]] const planning::LessonCase& chosen(std::size_t side) const { return m_chosen.at(side); }

  // False until the first answer: then there is nothing to show yet.
  [[nodiscard]] bool isWorkedOut() const { return m_sides.front() != nullptr; }
  // What is shown is not of what is chosen.
  [[nodiscard]] bool isBusy() const { return m_awaited != m_shown; }
  // That for so long that it should be seen.
  [[nodiscard]] bool isOld() const { return m_old; }
  // Both need an answer to be there.
  [[nodiscard]] const HeatSide& side(std::size_t side) const { return *m_sides.at(side); }
  [[nodiscard]] study::DemonstrationPoint now(std::size_t side) const;
  // The side whose verdict is the worse; A where both are alike.
  [[nodiscard]] std::size_t worseSide() const;

  [[nodiscard]] units::Duration clock() const { return m_clock; }
  [[nodiscard]] units::Duration run() const { return m_lesson.run; }
  void setClock(units::Duration clock);  // kept within the run
  // Playing stops by itself at the end of the run; played from there it begins anew.
  void setPlaying(bool on);
  [[nodiscard]] bool isPlaying() const { return m_timer.isActive(); }
  void setSpeed(double timesFaster) { m_speed = timesFaster; }
  [[nodiscard]] double speed() const { return m_speed; }
  // As much real time has passed while playing.
  void advance(units::Duration real);

 signals:
  void opened();
  void choiceChanged();
  void sideChanged();  // another answer is shown
  void busyChanged();  // isBusy() or isOld()
  void ticked();       // the clock stands elsewhere
  void playingChanged(bool on);

 private:
  void request();
  void receive(const HeatAnswer& answer);
  [[nodiscard]] planning::LessonCase reworded(const planning::LessonCase& setup, const planning::Lesson& lesson) const;

  planning::Lesson m_lesson;
  std::array<planning::LessonCase, kSides> m_chosen;
  std::array<std::shared_ptr<const HeatSide>, kSides> m_sides;
  HeatService m_service;
  bool m_begun = false;
  std::uint64_t m_first = 0;  // request for the open lesson
  std::uint64_t m_awaited = 0;
  std::uint64_t m_shown = 0;
  bool m_old = false;
  QTimer m_oldSoon;
  units::Duration m_clock{};
  double m_speed = 60.0;
  QTimer m_timer;
  QElapsedTimer m_since;
};

}  // namespace cordreach::app
