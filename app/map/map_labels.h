// SPDX-License-Identifier: GPL-3.0-or-later
// The words and severity marks on the map, each in a place where it covers nothing that matters.
#pragma once

#include <QLineF>
#include <QRectF>
#include <QString>
#include <optional>
#include <vector>

#include "look/look.h"
#include "map/map_content.h"
#include "map/map_layout.h"

namespace cordreach::app {

// Of the sheet around the plan, where words of things at the walls may stand, in pixels.
[[nodiscard]] inline double planMargin() { return look::scaled(34); }

enum class LabelInk { Strong, Quiet, Faint, Figure };  // a figure fades while it is of an older site

struct LabelLine {
  QString text;
  look::Type type = look::Type::Caption;
  LabelInk ink = LabelInk::Strong;
};

struct MapLabel {
  std::vector<LabelLine> lines;
  QRectF box;
  std::optional<ItemRef> owner{};
  bool leftOfAnchor = false;       // set flush right
  std::optional<QLineF> leader{};  // back to its thing, when it found room only away from it
};

struct MapMark {
  QRectF box;
  rules::Severity severity;
};

struct MapWords {
  QRectF region;  // of the plan for which they were laid out
  std::vector<MapLabel> labels;
  std::vector<MapMark> marks;
};

struct WordsWish {
  const MapContent& content;
  const MapLayout& layout;
  QRectF region;
  std::vector<rules::Subject> chosen{};
  QRectF extent{};  // of the sheet that words may stand on, metres; empty: that of the content
};

[[nodiscard]] MapWords wordsOf(const WordsWish& wish);
// The words of one thing, for when it is under the pointer and its own found no room.
[[nodiscard]] std::vector<LabelLine> linesOf(const MapContent& content, const ItemRef& item);
// Fewer of them, for where there is little room; empty: there is nothing to leave out.
[[nodiscard]] std::vector<LabelLine> shortLinesOf(const MapContent& content, const ItemRef& item);
[[nodiscard]] QSizeF sizeOf(const std::vector<LabelLine>& lines);

// The thing as findings and the selection name it; none for a plug.
[[nodiscard]] std::optional<rules::Subject> subjectOf(const MapContent& content, const ItemRef& item);
[[nodiscard]] std::optional<ItemRef> itemOf(const MapContent& content, const rules::Subject& subject);

}  // namespace cordreach::app
