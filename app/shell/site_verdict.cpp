// SPDX-License-Identifier: GPL-3.0-or-later
#include "shell/site_verdict.h"

#include "shell/say.h"

namespace cordreach::app {

SiteVerdict::SiteVerdict(Session& session, QObject* parent) : VerdictSource(parent), m_session(session) {
  connect(&session.judge, &JudgeService::judged, this, &SiteVerdict::take);
  connect(&session.document, &Document::changed, this, &VerdictSource::changed);
  connect(&session.document, &Document::supposed, this, &VerdictSource::changed);
  connect(&session.judge, &JudgeService::busyChanged, this, &VerdictSource::changed);
}

void SiteVerdict::take(const std::shared_ptr<const Verdict>& verdict) {
  m_shown = verdict;
  reword();
}

void SiteVerdict::reword() {
  if (m_shown == nullptr) return;
  m_words = wordsOf(*m_shown, triedMachine(m_session.document.site(), *m_shown->site), m_session.book);
  emit changed();
}

bool SiteVerdict::isFresh() const {
  return m_shown && m_shown->site == m_session.document.shown() && m_shown->number == m_session.judge.latest();
}

void SiteVerdict::press() {
  if (m_words.button.isEmpty() || !m_words.finding) return;
  // Found for another site than the one on screen: the next verdict brings its own.
  if (!isFresh() || m_session.document.isSupposing()) {
    emit refused(say(m_session.book, "window.verdict.stale_remedy"));
    return;
  }
  const planning::Remedy remedy = m_shown->remedies[*m_words.finding].front();
  const base::Result<base::Done> done = m_session.document.apply(remedy.edit);
  if (!done) emit refused(sentenceOf(m_session.book, done.error()));
}

}  // namespace cordreach::app
