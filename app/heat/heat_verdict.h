// SPDX-License-Identifier: GPL-3.0-or-later
// What the band says while the place Heat is in front: the verdict on the worse of the two sides, by the same rules as
// for any building. Its button lays a badly lying cord out.
#pragma once

#include "heat/heat_model.h"
#include "shell/verdict_source.h"
#include "text/phrasebook.h"

namespace cordreach::app {

class HeatVerdict : public VerdictSource {
  Q_OBJECT

 public:
  HeatVerdict(HeatModel& model, const text::Phrasebook& book, QObject* parent = nullptr);

  [[nodiscard]] const VerdictWords& words() const override { return m_words; }
  [[nodiscard]] bool isFresh() const override { return !m_model.isBusy(); }
  void press() override;
  void reword();

 private:
  HeatModel& m_model;
  const text::Phrasebook& m_book;
  VerdictWords m_words;
};

}  // namespace cordreach::app
