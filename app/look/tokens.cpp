// SPDX-License-Identifier: GPL-3.0-or-later
// Each text colour keeps at least 4.5 to 1 on every ground it may stand on; line, wall and select at least 3 to 1.
// Severity fills come from the Okabe–Ito set, darkened or lightened until word and shape pass.
#include "look/tokens.h"

namespace cordreach::look {

namespace {

constexpr QColor rgb(unsigned value) {
  return {static_cast<int>(value >> 16U & 0xFFU), static_cast<int>(value >> 8U & 0xFFU),
          static_cast<int>(value & 0xFFU)};
}

Tokens lightTokens() {
  Tokens t;
  t.desk = rgb(0xE3E8E6);
  t.sheet = rgb(0xFAFBFA);
  t.room = rgb(0xFFFFFF);
  t.well = rgb(0xEFF3F1);
  t.ink = rgb(0x15211F);
  t.ink2 = rgb(0x46534F);
  t.ink3 = rgb(0x596662);
  t.line = rgb(0x76837E);
  t.wall = rgb(0x7D8985);
  t.select = rgb(0x0072B2);
  t.rule = rgb(0xD3DAD7);
  t.selbg = rgb(0xDDEBF5);
  t.okbg = rgb(0xDCEFE7);
  t.link = rgb(0x00639B);
  t.button = rgb(0x15211F);
  t.onButton = rgb(0xFFFFFF);
  return t;
}

Tokens darkTokens() {
  Tokens t;
  t.desk = rgb(0x0E1413);
  t.sheet = rgb(0x161E1D);
  t.room = rgb(0x1D2726);
  t.well = rgb(0x222D2B);
  t.ink = rgb(0xE9EFED);
  t.ink2 = rgb(0xB4C0BC);
  t.ink3 = rgb(0x8F9C98);
  t.line = rgb(0x74827E);
  t.wall = rgb(0x6C7A76);
  t.select = rgb(0x56B4E9);
  t.rule = rgb(0x2E3A38);
  t.selbg = rgb(0x1C3444);
  t.okbg = rgb(0x1B3A31);
  t.link = rgb(0x6CBEEE);
  t.button = rgb(0xE9EFED);
  t.onButton = rgb(0x15211F);
  t.dark = true;
  return t;
}

Tokens contrasted(Tokens t) {
  const QColor paper = t.dark ? rgb(0x000000) : rgb(0xFFFFFF);
  const QColor ink = t.dark ? rgb(0xFFFFFF) : rgb(0x000000);
  t.desk = t.sheet = t.room = t.well = t.onButton = paper;
  t.ink = t.ink2 = t.ink3 = t.line = t.wall = t.rule = t.button = ink;
  t.hairline = 1.5;
  t.highContrast = true;
  return t;
}

}  // namespace

const Tokens& tokensOf(const Theme& theme) {
  static const Tokens light = lightTokens();
  static const Tokens dark = darkTokens();
  static const Tokens lightContrast = contrasted(light);
  static const Tokens darkContrast = contrasted(dark);
  if (theme.highContrast) return theme.dark ? darkContrast : lightContrast;
  return theme.dark ? dark : light;
}

SeverityColors severityColors(rules::Severity severity, bool dark) {
  switch (severity) {
    case rules::Severity::Danger:
      return dark ? SeverityColors{rgb(0xE4581C), rgb(0x140A04), rgb(0xFF8A4A), false}
                  : SeverityColors{rgb(0xB54C00), rgb(0xFFFFFF), rgb(0xA84500), false};
    case rules::Severity::Warning:
      return {rgb(0xE69F00), rgb(0x15211F), dark ? rgb(0xEBAA1E) : rgb(0x855A00), !dark};
    case rules::Severity::Caution:
      return {rgb(0xF0E442), rgb(0x15211F), dark ? rgb(0xEDE25A) : rgb(0x6B6400), !dark};
    case rules::Severity::Notice:
      return dark ? SeverityColors{rgb(0x56B4E9), rgb(0x0B151B), rgb(0x6CBEEE), false}
                  : SeverityColors{rgb(0x0072B2), rgb(0xFFFFFF), rgb(0x00639B), false};
    case rules::Severity::Ok:
      break;
  }
  return dark ? SeverityColors{rgb(0x1DA67C), rgb(0x06140F), rgb(0x45C9A0), false}
              : SeverityColors{rgb(0x006B50), rgb(0xFFFFFF), rgb(0x006E52), false};
}

}  // namespace cordreach::look
