// SPDX-License-Identifier: GPL-3.0-or-later
// The outline shapes of the five severities and their signal words: octagon, triangle, diamond, rounded square, disc.
// 52 px at the verdict, 24 on drawings, 20 in lists, 14 on paper. Never colour alone: shape with glyph, or the word.
#pragma once

#include <QPainterPath>
#include <QRectF>

#include "rules/finding.h"

class QPainter;
class QString;

namespace cordreach::look {

// Centred in `box`, as large as its smaller side, in the colours of that ground.
void paintSeverityMark(QPainter& painter, const QRectF& box, rules::Severity severity, bool darkGround);

// The outline alone, in a square of side 1.
[[nodiscard]] QPainterPath severityShape(rules::Severity severity);

// A signal word on its filled plate, in the font that the painter has.
void paintSignalPlate(QPainter& painter, const QRectF& box, rules::Severity severity, const QString& word,
                      bool darkGround);

}  // namespace cordreach::look
