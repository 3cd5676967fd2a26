// SPDX-License-Identifier: GPL-3.0-or-later
// The colours that everything on screen is made of: ink on a sheet on a desk. Beyond these, colour is spent on two
// things only, severity and temperature.
#pragma once

#include <QColor>

#include "rules/finding.h"

namespace cordreach::look {

struct Tokens {
  QColor desk;    // top row, ground behind paper
  QColor sheet;   // the window
  QColor room;    // rooms, inputs, paper preview
  QColor well;    // corridor, idle bars
  QColor ink;     // text, chosen wiring, symbols
  QColor ink2;    // reasons, labels
  QColor ink3;    // room names, disabled text
  QColor line;    // control outlines, quiet wiring, axes
  QColor wall;    // walls
  QColor select;  // selection, focus, proposed change
  QColor rule;    // hairlines, furniture: carries no meaning alone
  QColor selbg;   // ground of what is selected
  QColor okbg;    // ground of an OK cell
  QColor link;    // what can be followed
  QColor button;  // the remedy button
  QColor onButton;
  double hairline = 1;  // px
  bool dark = false;
  bool highContrast = false;
};

struct Theme {
  bool dark = false;
  bool highContrast = false;

  friend bool operator==(const Theme&, const Theme&) = default;
};

[[nodiscard]] const Tokens& tokensOf(const Theme& theme);

// A severity's own colours: its filled shape and signal word, the word on the fill, and the word as text on the sheet.
struct SeverityColors {
  QColor fill;
  QColor onFill;
  QColor asText;
  bool outlined = false;  // too pale for a light ground without an outline in ink
};

[[nodiscard]] SeverityColors severityColors(rules::Severity severity, bool dark);

}  // namespace cordreach::look
