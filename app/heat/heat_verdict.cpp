// SPDX-License-Identifier: GPL-3.0-or-later
#include "heat/heat_verdict.h"

#include "heat/heat_words.h"
#include "shell/say.h"

namespace cordreach::app {

HeatVerdict::HeatVerdict(HeatModel& model, const text::Phrasebook& book, QObject* parent)
    : VerdictSource(parent), m_model(model), m_book(book) {
  connect(&model, &HeatModel::sideChanged, this, &HeatVerdict::reword);
  connect(&model, &HeatModel::busyChanged, this, &VerdictSource::changed);
  reword();
}

void HeatVerdict::reword() {
  if (!m_model.isWorkedOut()) return;
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
  if (laidOutOf(side.setup, side.verdict)) {
    m_words.button = say(m_book, "lesson.lay_out", {{"side", letter}});
    if (side.laidOut) m_words.after = say(m_book, "lesson.laid_out", {{"conductor_c", side.laidOut->celsius()}});
  }
  emit changed();
}

void HeatVerdict::press() {
  if (m_model.isBusy()) return;
  const std::size_t at = m_model.worseSide();
  if (const auto open = laidOutOf(m_model.side(at).setup, m_model.side(at).verdict)) m_model.setSide(at, *open);
}

}  // namespace cordreach::app
