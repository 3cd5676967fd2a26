// SPDX-License-Identifier: GPL-3.0-or-later
#include "heat/heat_model.h"

#include <algorithm>

namespace cordreach::app {

namespace {
constexpr int kFrameMs = 16;
}  // namespace

QString sideLetter(std::size_t side) { return side == 0 ? QStringLiteral("A") : QStringLiteral("B"); }

HeatModel::HeatModel(planning::Lesson lesson, QObject* parent) : QObject(parent) {
  m_timer.setInterval(kFrameMs);
  m_timer.setTimerType(Qt::PreciseTimer);
  connect(&m_timer, &QTimer::timeout, this,
          [this] { advance(static_cast<double>(m_since.restart()) / 1000.0 * units::second); });
  open(std::move(lesson));
}

void HeatModel::open(planning::Lesson lesson) {
  setPlaying(false);
  m_lesson = std::move(lesson);
  m_clock = {};
  m_sides.clear();
  for (std::size_t side = 0; side < kSides; ++side) workOut(side, m_lesson.sides.at(side));
  emit opened();
  emit sideChanged();
  emit ticked();
}

void HeatModel::workOut(std::size_t side, const planning::LessonCase& setup) {
  HeatSide worked{setup, planning::judgeLesson(setup, sideLetter(side).toStdString()),
                  planning::demonstrateLesson(setup, m_lesson.run)};
  if (side < m_sides.size()) {
    m_sides[side] = std::move(worked);
  } else {
    m_sides.push_back(std::move(worked));
  }
}

void HeatModel::setSide(std::size_t side, const planning::LessonCase& setup) {
  if (m_sides.at(side).setup == setup) return;
  workOut(side, setup);
  emit sideChanged();
  emit ticked();
}

study::DemonstrationPoint HeatModel::now(std::size_t side) const { return m_sides.at(side).demonstration.at(m_clock); }

std::size_t HeatModel::worseSide() const { return m_sides[1].verdict.severity > m_sides[0].verdict.severity ? 1 : 0; }

void HeatModel::setClock(units::Duration clock) {
  const units::Duration kept = std::clamp(clock, units::Duration{}, run());
  if (kept == m_clock) return;
  m_clock = kept;
  emit ticked();
}

void HeatModel::setPlaying(bool on) {
  if (on == isPlaying()) return;
  if (!on) {
    m_timer.stop();
  } else {
    if (m_clock >= run()) setClock({});
    m_since.start();
    m_timer.start();
  }
  emit playingChanged(on);
}

void HeatModel::advance(units::Duration real) {
  setClock(m_clock + real * m_speed);
  if (m_clock >= run()) setPlaying(false);
}

}  // namespace cordreach::app
