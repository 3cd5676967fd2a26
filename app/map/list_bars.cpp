// SPDX-License-Identifier: GPL-3.0-or-later
#include "map/list_bars.h"

#include <QStringList>
#include <algorithm>

#include "map/map_canvas.h"
#include "map/map_figures.h"
#include "panels/place_list.h"
#include "rules/hot_places.h"
#include "rules/near_limit.h"
#include "shell/say.h"

namespace cordreach::app {

namespace {

constexpr std::size_t kNamed = 3;  // of the hottest places, in the sentence

OverlayFigures figuresOf(const text::Phrasebook& book, const std::vector<rules::HotPlace>& places) {
  OverlayFigures figures;
  for (const rules::HotPlace& place : places) {
    if (!place.temperature) continue;
    if (place.kind == rules::HotKind::WallWire) {
      figures.wires.insert({site::CircuitId(place.subject.id), *place.temperature});
    }
    if (!place.outlet) continue;
    OutletFigure& figure = figures.outlets[*place.outlet];  // hottest first: the first one stays
    if (figure.heat) continue;
    figure.heat = place.temperature;
    figure.figure = degreesText(book, *place.temperature);
  }
  return figures;
}

}  // namespace

HotBar::HotBar(MapCanvas& canvas, QWidget* parent) : OverlayBar(canvas, parent) {
  addLink("map.hot.all", [this] { emit listWanted(); });
}

void HotBar::refresh() {
  const auto verdict = session().judge.last();
  if (verdict == nullptr) return tell(say(book(), "map.hot.waiting"));
  if (verdict == m_shown) return;
  m_shown = verdict;
  const PlaceList list = hotList(book(), *verdict, kNamed);
  QStringList sentences{list.head};
  for (const PlaceRow& row : list.rows) sentences << row.text;
  tell(sentences.join(QLatin1Char(' ')));
  canvas().showFigures(figuresOf(book(), rules::hotPlaces(*verdict->site, verdict->answer)));
}

void HotBar::withdraw() {
  m_shown.reset();
  canvas().showFigures(std::nullopt);
}

NearBar::NearBar(MapCanvas& canvas, QWidget* parent) : OverlayBar(canvas, parent) {
  addLink("map.near.all", [this] { emit listWanted(); });
}

void NearBar::refresh() {
  const site::Site& site = session().document.site();
  QStringList names;
  for (const rules::NearLimit& one : rules::nearLimit(site)) names << circuitName(site, one.circuit);
  base::Arguments arguments{{"n", static_cast<double>(names.size())}};
  if (!names.empty()) arguments.push_back({"circuits", names.join(QStringLiteral(", ")).toStdString()});
  tell(say(book(), "map.near.says", arguments));
}

}  // namespace cordreach::app
