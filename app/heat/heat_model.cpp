// SPDX-License-Identifier: GPL-3.0-or-later
#include "heat/heat_model.h"

#include <algorithm>

namespace cordreach::app {

namespace {
constexpr int kFrameMs = 16;
constexpr int kOldMs = 150;  // sooner than that nobody sees it dimmed
}  // namespace

QString sideLetter(std::size_t side) { return QString::fromStdString(sideLetterOf(side)); }

HeatModel::HeatModel(planning::Lesson lesson, QObject* parent) : QObject(parent) {
  m_timer.setInterval(kFrameMs);
  m_timer.setTimerType(Qt::PreciseTimer);
  connect(&m_timer, &QTimer::timeout, this,
          [this] { advance(static_cast<double>(m_since.restart()) / 1000.0 * units::second); });
  m_oldSoon.setSingleShot(true);
  m_oldSoon.setInterval(kOldMs);
  connect(&m_oldSoon, &QTimer::timeout, this, [this] {
    m_old = true;
    emit busyChanged();
  });
  connect(&m_service, &HeatService::answered, this, &HeatModel::receive);
  open(std::move(lesson));
}

void HeatModel::begin() {
  if (std::exchange(m_begun, true)) return;
  request();
}

void HeatModel::open(planning::Lesson lesson) {
  setPlaying(false);
  m_lesson = std::move(lesson);
  m_clock = {};
  for (std::size_t side = 0; side < kSides; ++side) m_chosen[side] = m_lesson.sides.at(side);
  emit opened();
  emit choiceChanged();
  emit ticked();
  request();
  m_first = m_awaited;
}

// One of the lesson's sides however it lies, or its machine on a cord from elsewhere.
planning::LessonCase HeatModel::reworded(const planning::LessonCase& setup, const planning::Lesson& lesson) const {
  for (std::size_t i = 0; i < m_lesson.sides.size(); ++i) {
    planning::LessonCase laid = m_lesson.sides[i];
    laid.laying = setup.laying;
    if (laid != setup) continue;
    planning::LessonCase other = lesson.sides.at(i);
    other.laying = setup.laying;
    return other;
  }
  planning::LessonCase other = setup;
  other.machine = lesson.sides.front().machine;
  other.pad = lesson.sides.front().pad;
  other.sharedName = lesson.sides.front().sharedName;
  return other;
}

void HeatModel::reword(planning::Lesson lesson) {
  for (planning::LessonCase& setup : m_chosen) setup = reworded(setup, lesson);
  m_lesson = std::move(lesson);
  emit choiceChanged();
  request();
}

void HeatModel::request() {
  if (!m_begun) return;
  m_awaited = m_service.request({m_chosen, m_lesson.run});
  if (!m_old) m_oldSoon.start();
  emit busyChanged();
}

void HeatModel::receive(const HeatAnswer& answer) {
  // One that was overtaken is shown meanwhile, but none of another lesson.
  if (answer.number < m_first) return;
  m_shown = answer.number;
  m_sides = answer.sides;
  if (!isBusy()) {
    m_old = false;
    m_oldSoon.stop();
  }
  emit busyChanged();
  emit sideChanged();
  emit ticked();
}

void HeatModel::setSide(std::size_t side, const planning::LessonCase& setup) {
  if (m_chosen.at(side) == setup) return;
  m_chosen[side] = setup;
  emit choiceChanged();
  request();
}

study::DemonstrationPoint HeatModel::now(std::size_t side) const { return m_sides.at(side)->demonstration.at(m_clock); }

std::size_t HeatModel::worseSide() const { return m_sides[1]->verdict.severity > m_sides[0]->verdict.severity ? 1 : 0; }

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
