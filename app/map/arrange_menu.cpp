// SPDX-License-Identifier: GPL-3.0-or-later
#include "map/arrange_menu.h"

#include <QMenu>
#include <algorithm>
#include <array>
#include <utility>

#include "map/arrange_edits.h"
#include "map/map_canvas.h"
#include "shell/say.h"

namespace cordreach::app {
namespace {

const std::array<std::pair<Arrangement, const char*>, 4> kArrangements{
    {{Arrangement::Row, "map.arrange.row"},
     {Arrangement::Column, "map.arrange.column"},
     {Arrangement::SpreadAcross, "map.arrange.spread_across"},
     {Arrangement::SpreadDown, "map.arrange.spread_down"}}};

void arrange(MapCanvas& canvas, Arrangement arrangement) {
  const site::Site& site = canvas.session().document.site();
  canvas.apply(moveEach(site, arranged(canvas.standing(), arrangement), canvas.hookupsShown()));
}

void addFloors(QMenu& menu, MapCanvas& canvas) {
  const auto& chosen = canvas.session().selection.chosen();
  const bool anyOutlet = std::any_of(chosen.begin(), chosen.end(), [](const rules::Subject& subject) {
    return subject.kind == rules::SubjectKind::Outlet;
  });
  const auto& floors = canvas.session().document.site().all<site::Floor>();
  if (!anyOutlet || floors.size() < 2) return;
  QMenu* others = menu.addMenu(say(canvas.session().book, "map.arrange.copy_to_floor"));
  for (const site::Floor& floor : floors) {
    if (floor.id == canvas.floor()) continue;
    QAction* action = others->addAction(QString::fromStdString(floor.name).replace('&', "&&"));
    QObject::connect(action, &QAction::triggered, &canvas, [&canvas, id = floor.id] {
      const Session& session = canvas.session();
      canvas.apply(copyToFloor(session.document.site(), session.selection.chosen(), id));
    });
  }
}

}  // namespace

void fillArrangeMenu(QMenu& menu, MapCanvas& canvas) {
  const std::size_t count = canvas.standing().size();
  for (const auto& [arrangement, code] : kArrangements) {
    const bool spreads = arrangement == Arrangement::SpreadAcross || arrangement == Arrangement::SpreadDown;
    if (count < (spreads ? 3U : 2U)) continue;
    QAction* action = menu.addAction(say(canvas.session().book, code));
    QObject::connect(action, &QAction::triggered, &canvas,
                     [&canvas, arrangement = arrangement] { arrange(canvas, arrangement); });
  }
  addFloors(menu, canvas);
}

}  // namespace cordreach::app
