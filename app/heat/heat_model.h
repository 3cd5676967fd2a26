// SPDX-License-Identifier: GPL-3.0-or-later
// What the place Heat shows: a lesson, two of its sides worked out, and the clock that runs through them. Every figure
// is the core's.
#pragma once

#include <QElapsedTimer>
#include <QObject>
#include <QTimer>
#include <array>

#include "planning/lesson.h"

namespace cordreach::app {

inline constexpr std::size_t kSides = 2;  // A and B

struct HeatSide {
  planning::LessonCase setup;
  planning::LessonVerdict verdict;
  study::Demonstration demonstration;
};

// "A", "B".
[[nodiscard]] QString sideLetter(std::size_t side);

class HeatModel : public QObject {
  Q_OBJECT

 public:
  explicit HeatModel(planning::Lesson lesson, QObject* parent = nullptr);

  // Its first two sides, the clock at the start.
  void open(planning::Lesson lesson);
  [[nodiscard]] const planning::Lesson& lesson() const { return m_lesson; }

  void setSide(std::size_t side, const planning::LessonCase& setup);
  [[nodiscard]] const HeatSide& side(std::size_t side) const { return m_sides.at(side); }
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
  void sideChanged();
  void ticked();  // the clock stands elsewhere
  void playingChanged(bool on);

 private:
  void workOut(std::size_t side, const planning::LessonCase& setup);

  planning::Lesson m_lesson;
  std::vector<HeatSide> m_sides;
  units::Duration m_clock{};
  double m_speed = 60.0;
  QTimer m_timer;
  QElapsedTimer m_since;
};

}  // namespace cordreach::app
