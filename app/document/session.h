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
  const text::Phrasebook& book;  // swapped in place when language or units change; views are told to redraw
};

}  // namespace cordreach::app
