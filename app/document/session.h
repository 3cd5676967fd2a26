// SPDX-License-Identifier: GPL-3.0-or-later
// What every view of one window shares.
#pragma once

#include "compute/judge_service.h"
#include "document/document.h"
#include "document/selection.h"
#include "text/phrasebook.h"

namespace cordreach::app {

struct Session {
  Document& document;
  JudgeService& judge;
  Selection& selection;
  // Swapped in place when language or units change; every widget then gets QEvent::LanguageChange, as it gets
  // PaletteChange and FontChange when look::present() changes.
  const text::Phrasebook& book;
};

}  // namespace cordreach::app
