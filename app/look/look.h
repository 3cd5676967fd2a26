// SPDX-License-Identifier: GPL-3.0-or-later
// How the program looks at present: theme, type, motion. Set for the whole application at once; every widget then gets
// a PaletteChange and a FontChange and paints itself anew from here.
#pragma once

#include <QFont>

#include "look/tokens.h"

class QApplication;

namespace cordreach::look {

struct Look {
  Theme theme{};
  double textScale = 1;  // 1, 1.25, 1.5 or 2: type and symbols together
  bool motion = true;

  friend bool operator==(const Look&, const Look&) = default;
};

// Fusion with our palette, DejaVu Sans and the small style sheet. Needs the application object.
void setPresent(QApplication& application, const Look& look);
[[nodiscard]] const Look& present();
[[nodiscard]] const Tokens& tokens();  // of the present theme

enum class Type {
  Verdict,      // 18 pt bold
  Head,         // 12 pt: place tabs, section heads, the remedy button
  HeadBold,     // 12 pt bold
  Reason,       // 10.5 pt
  Body,         // 10 pt
  BodyBold,     // 10 pt bold
  Caption,      // 9 pt
  CaptionBold,  // 9 pt bold: names on drawings
  RoomName,     // 9 pt, spaced
  Small,        // 8.25 pt: the smallest on screen
};

// In the present text size.
[[nodiscard]] QFont font(Type type);

// A length of the layout that goes with the text size, in device-independent pixels.
[[nodiscard]] int scaled(double px);
// A duration of a movement, 0 where people asked for less motion.
[[nodiscard]] int motionMs(int ms);

}  // namespace cordreach::look
