// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/cord_verdict.h"

#include "desk/cord_words.h"
#include "desk/use_cord.h"
#include "shell/say.h"

namespace cordreach::app {

CordVerdict::CordVerdict(CordModel& model, QObject* parent) : VerdictSource(parent), m_model(model) {
  connect(&model, &CordModel::answerChanged, this, &CordVerdict::reword);
  connect(&model, &CordModel::inputsChanged, this, &VerdictSource::changed);
}

void CordVerdict::reword() {
  m_words = verdictWords(m_model);
  emit changed();
}

void CordVerdict::press() {
  if (!m_model.isFresh()) {
    emit refused(say(m_model.book(), "window.verdict.stale_remedy"));
    return;
  }
  const CordAnswer& answer = *m_model.answer();
  if (answer.advice.choice) return useOnTheMap();
  if (!answer.instead) return;
  const planning::CordInstead instead = *answer.instead;
  m_model.change([&](CordInputs& inputs) {
    inputs.outletBy = OutletBy::Site;
    inputs.outlet = site::OutletSocket{instead.at.outlet, instead.at.contact};
    inputs.distance = instead.distance;
    inputs.measure = Measure::Plan;
  });
}

void CordVerdict::useOnTheMap() {
  const planning::CordAdvice& advice = m_model.answer()->advice;
  const auto edit = useCord(m_model.inputs(), advice.candidates[*advice.choice], m_model.site());
  if (!edit) return;
  const base::Result<base::Done> done = m_model.session().document.apply(*edit);
  if (!done) emit refused(sentenceOf(m_model.book(), done.error()));
}

}  // namespace cordreach::app
