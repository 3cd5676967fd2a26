// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/document.h"

#include <algorithm>

namespace cordreach::app {

struct Document::Step {
  site::Edit edit;
  QString mergeKey;
};

namespace {

// Both edits as one: what the first made and the second changed again is told once, before the first and after the
// second, so that nudging a thing a hundred times does not keep a hundred copies.
template <class T>
bool joined(site::AnyChange& earlier, const T& later) {
  T* const same = std::get_if<T>(&earlier);
  if (same == nullptr || !(same->after == later.before)) return false;
  if constexpr (!std::is_same_v<T, site::HeadingChange>) {
    if (!later.before) return false;
    if (!same->before && !later.after) return false;
  }
  same->after = later.after;
  return true;
}

void append(site::Edit& edit, const site::AnyChange& change) {
  // Only the last change may be joined: those between would else see things out of their order.
  const bool done = !edit.changes.empty() &&
                    std::visit([&](const auto& later) { return joined(edit.changes.back(), later); }, change);
  if (!done) edit.changes.push_back(change);
}

}  // namespace

Document::Document(site::Site site, QObject* parent)
    : QObject(parent), m_site(std::make_shared<const site::Site>(std::move(site))) {}

Document::~Document() = default;

base::Result<base::Done> Document::apply(const site::Edit& edit, const QString& mergeKey) {
  auto next = std::make_shared<site::Site>(*m_site);
  const base::Result<base::Done> done = site::apply(edit, *next);
  if (!done) return done;
  if (*next == *m_site) {
    dropSupposition();
    return done;
  }
  m_site = std::move(next);
  const bool merges = !mergeKey.isEmpty() && m_done > 0 && m_done == m_steps.size() &&
                      m_steps.back().mergeKey == mergeKey && m_savedAt != m_done;
  if (m_savedAt && *m_savedAt > m_done) m_savedAt.reset();
  m_steps.resize(m_done);
  if (merges) {
    for (const site::AnyChange& change : edit.changes) append(m_steps.back().edit, change);
  } else {
    m_steps.push_back({edit, mergeKey});
    ++m_done;
  }
  commit(edit);
  return done;
}

// Tells of an edit that m_site has in it already.
void Document::commit(const site::Edit& edit) {
  const bool wasSupposing = isSupposing();
  m_supposed.reset();
  if (wasSupposing) emit supposed();
  emit changed({false, edit.changes});
  emit committed(edit);
  emit stateChanged();
}

void Document::suppose(const site::Edit& edit) {
  auto next = std::make_shared<site::Site>(*m_site);
  if (!site::apply(edit, *next)) return dropSupposition();
  m_supposed = std::move(next);
  emit supposed();
}

void Document::dropSupposition() {
  if (!m_supposed) return;
  m_supposed.reset();
  emit supposed();
}

bool Document::canUndo() const { return m_done > 0; }
bool Document::canRedo() const { return m_done < m_steps.size(); }
std::string Document::undoCode() const { return canUndo() ? m_steps[m_done - 1].edit.code : std::string{}; }
std::string Document::redoCode() const { return canRedo() ? m_steps[m_done].edit.code : std::string{}; }

void Document::undo() {
  if (!canUndo()) return;
  const site::Edit back = site::inverseOf(m_steps[m_done - 1].edit);
  auto next = std::make_shared<site::Site>(*m_site);
  CORDREACH_EXPECTS(site::apply(back, *next).ok());
  m_site = std::move(next);
  --m_done;
  commit(back);
}

void Document::redo() {
  if (!canRedo()) return;
  const site::Edit again = m_steps[m_done].edit;
  auto next = std::make_shared<site::Site>(*m_site);
  CORDREACH_EXPECTS(site::apply(again, *next).ok());
  m_site = std::move(next);
  ++m_done;
  commit(again);
}

bool Document::isDirty() const { return m_savedAt != m_done; }

void Document::markSaved(const QString& path) {
  m_path = path;
  m_savedAt = m_done;
  emit stateChanged();
}

void Document::markUnsaved() {
  m_savedAt.reset();
  emit stateChanged();
}

void Document::replace(site::Site site, const QString& path) {
  m_supposed.reset();
  m_site = std::make_shared<const site::Site>(std::move(site));
  m_steps.clear();
  m_done = 0;
  m_savedAt = 0;
  m_path = path;
  emit supposed();
  emit changed({true, {}});
  emit stateChanged();
}

}  // namespace cordreach::app
