// SPDX-License-Identifier: GPL-3.0-or-later
#include "heat/heat_verdict.h"

#include "heat/heat_words.h"
#include "shell/say.h"

namespace cordreach::app {

HeatVerdict::HeatVerdict(HeatModel& model, const text::Phrasebook& book, QObject* parent)
    : VerdictSource(parent), m_model(model), m_book(book) {
  connect(&model, &HeatModel::sideChanged, this, &HeatVerdict::reword);
  reword();
}

std::optional<planning::LessonCase> HeatVerdict::laidOut() const {
  const HeatSide& side = m_model.side(m_model.worseSide());
  if (side.verdict.severity < rules::Severity::Caution) return std::nullopt;
  planning::LessonCase open = side.setup;
  open.laying = {};
  if (open.laying == side.setup.laying) return std::nullopt;
  return open;
}

void HeatVerdict::reword() {
  const std::size_t at = m_model.worseSide();
  const HeatSide& side = m_model.side(at);
  Verdict verdict;
  verdict.supposed = true;  // no other changes are being looked for
  verdict.site = std::make_shared<const site::Site>(side.verdict.site);
  verdict.answer = side.verdict.answer;
  verdict.findings = side.verdict.findings;
  m_words = wordsOf(verdict, std::nullopt, m_book);
  const std::string letter = sideLetter(at).toStdString();
  const bool sound = side.verdict.severity == rules::Severity::Ok;
  m_words.concerns =
      sound ? say(m_book, "lesson.concerns.both")
            : say(m_book, "lesson.concerns", {{"side", letter}, {"case", caseName(m_book, side.setup).toStdString()}});
  if (const auto open = laidOut()) {
    m_words.button = say(m_book, "lesson.lay_out", {{"side", letter}});
    const planning::LessonVerdict then = planning::judgeLesson(*open, letter);
    const auto& inside = then.answer.find(planning::lessonHookup())->cords.front().conductor;
    if (inside) m_words.after = say(m_book, "lesson.laid_out", {{"conductor_c", inside->likely.celsius()}});
  }
  emit changed();
}

void HeatVerdict::press() {
  if (const auto open = laidOut()) m_model.setSide(m_model.worseSide(), *open);
}

}  // namespace cordreach::app
