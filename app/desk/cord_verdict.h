// SPDX-License-Identifier: GPL-3.0-or-later
// What the band says of the question of the place Cord, and what its button does: put the chosen cord on the plan, or
// ask about the other outlet.
#pragma once

#include "desk/cord_model.h"
#include "shell/verdict_source.h"

namespace cordreach::app {

class CordVerdict : public VerdictSource {
  Q_OBJECT

 public:
  explicit CordVerdict(CordModel& model, QObject* parent = nullptr);

  [[nodiscard]] const VerdictWords& words() const override { return m_words; }
  [[nodiscard]] bool isFresh() const override { return m_model.isFresh(); }
  void press() override;
  void reword();

 private:
  void useOnTheMap();

  CordModel& m_model;
  VerdictWords m_words;
};

}  // namespace cordreach::app
