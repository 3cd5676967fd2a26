// SPDX-License-Identifier: GPL-3.0-or-later
// The verdict of the open building as it is shown: its worst finding, and the one change that mends it.
#pragma once

#include "document/session.h"
#include "shell/verdict_source.h"

namespace cordreach::app {

class SiteVerdict : public VerdictSource {
  Q_OBJECT

 public:
  explicit SiteVerdict(Session& session, QObject* parent = nullptr);

  [[nodiscard]] const VerdictWords& words() const override { return m_words; }
  [[nodiscard]] bool isFresh() const override;
  // A change found for another site than the present one is never made.
  void press() override;
  // In the present language and units.
  void reword();

 private:
  void take(const std::shared_ptr<const Verdict>& verdict);

  Session& m_session;
  VerdictWords m_words;
  std::shared_ptr<const Verdict> m_shown;
};

}  // namespace cordreach::app
