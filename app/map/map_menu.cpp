// SPDX-License-Identifier: GPL-3.0-or-later
#include "map/map_menu.h"

#include <QMenu>
#include <array>
#include <utility>

#include "map/map_canvas.h"
#include "map/plug_edits.h"
#include "panels/names.h"
#include "panels/place_list.h"
#include "planning/plug.h"
#include "shell/say.h"

namespace cordreach::app {
namespace {

using tables::Laying;

const std::array<std::pair<site::LayingOfCord, const char*>, 4> kLayings{
    {{{Laying::Floor, 0, {}}, "map.lay.floor"},
     {{Laying::Covered, 0, {}}, "map.lay.covered"},
     {{Laying::Coiled, 6, {}}, "map.lay.coiled_6"},
     {{Laying::Coiled, 12, {}}, "map.lay.coiled_12"}}};

class Filler {
 public:
  Filler(QMenu& menu, MapCanvas& canvas)
      : m_menu(menu), m_canvas(canvas), m_site(canvas.session().document.site()), m_book(canvas.session().book) {}

  void machine(const site::MachineId& id) {
    for (const MapCord& cord : m_canvas.content().cords) {
      const site::Hookup* hookup = m_site.find<site::Hookup>(cord.hookup);
      if (hookup == nullptr || hookup->machine != id) continue;
      if (m_site.at<site::Machine>(id).inlets.size() > 1) {
        m_menu.addSection(say(m_book, "map.menu.inlet", {{"inlet", hookup->inlet}}));
      }
      cordMenu(*hookup);
      layMenus(*hookup);
      padMenu(*hookup);
      entry(m_menu, hookup->off ? "map.menu.switch_on" : "map.menu.switch_off", {},
            [id = hookup->id, off = !hookup->off](const site::Site& site) { return switchMachine(site, id, off); });
      entry(m_menu, "map.menu.unplug", {}, [id = hookup->id](const site::Site& site) { return unplug(site, id); });
    }
  }

  void load(const site::FixedLoadId& id) {
    const site::FixedLoad* load = m_site.find<site::FixedLoad>(id);
    if (load == nullptr) return;
    entry(m_menu, load->off ? "map.menu.switch_on" : "map.menu.switch_off", {},
          [id, off = !load->off](const site::Site& site) { return switchLoad(site, id, off); });
  }

 private:
  using Make = std::function<EditResult(const site::Site&)>;

  QAction* entry(QMenu& menu, std::string_view code, const base::Arguments& arguments, Make make) {
    return wordedEntry(menu, say(m_book, code, arguments), std::move(make));
  }

  QAction* wordedEntry(QMenu& menu, const QString& words, Make make) {
    QAction* action = menu.addAction(words);
    MapCanvas* canvas = &m_canvas;
    QObject::connect(action, &QAction::triggered, canvas,
                     [canvas, make = std::move(make)] { canvas->apply(make(canvas->session().document.site())); });
    return action;
  }

  // Cords that are out of service are not offered.
  void cordMenu(const site::Hookup& hookup) {
    QMenu* menu = m_menu.addMenu(say(m_book, "map.menu.cord"));
    const auto plugging = planning::pluggingOf(hookup, m_site);
    const auto id = hookup.id;
    QAction* none = entry(*menu, "map.menu.no_cord", {},
                          [id](const site::Site& site) { return putCordBetween(site, id, std::nullopt); });
    none->setCheckable(true);
    none->setChecked(plugging.cord == nullptr);
    none->setEnabled(plugging.cord != nullptr);
    for (const site::Cord& cord : m_site.all<site::Cord>()) {
      if (cord.outOfService) continue;
      QAction* action =
          wordedEntry(*menu, QString::fromStdString(cordName(m_book, cord)),
                      [id, which = cord.id](const site::Site& site) { return putCordBetween(site, id, which); });
      action->setCheckable(true);
      action->setChecked(plugging.cord == &cord);
      action->setEnabled(plugging.cord != &cord);
    }
  }

  void layMenus(const site::Hookup& hookup) {
    const auto plugging = planning::pluggingOf(hookup, m_site);
    if (plugging.extension != nullptr) {
      QMenu* menu = m_menu.addMenu(say(m_book, "map.menu.lay", {{"cord", plugging.cord->label}}));
      for (const auto& [laying, code] : kLayings) {
        entry(*menu, code, {}, [use = plugging.extension->id, laying = laying](const site::Site& site) {
          return layExtension(site, use, laying);
        });
      }
    }
    QMenu* own = m_menu.addMenu(say(m_book, "map.menu.lay_own"));
    for (const auto& [laying, code] : kLayings) {
      entry(*own, code, {},
            [id = hookup.id, laying = laying](const site::Site& site) { return layOwnCord(site, id, laying); });
    }
  }

  void padMenu(const site::Hookup& hookup) {
    const site::Machine& machine = m_site.at<site::Machine>(hookup.machine);
    if (!machine.pad && !hookup.pad) return;
    QMenu* menu = m_menu.addMenu(say(m_book, "map.menu.pad"));
    for (const site::Pad& pad : m_site.all<site::Pad>()) {
      QAction* action =
          wordedEntry(*menu, QString::fromStdString(pad.name),
                      [id = hookup.id, which = pad.id](const site::Site& site) { return changePad(site, id, which); });
      action->setCheckable(true);
      action->setChecked(hookup.pad ? *hookup.pad == pad.id : machine.pad == pad.id);
    }
  }

  QMenu& m_menu;
  MapCanvas& m_canvas;
  const site::Site& m_site;
  const text::Phrasebook& m_book;
};

}  // namespace

void fillMenu(QMenu& menu, MapCanvas& canvas, const rules::Subject& subject) {
  Filler filler(menu, canvas);
  if (subject.kind == rules::SubjectKind::Machine) filler.machine(site::MachineId(subject.id));
  if (subject.kind == rules::SubjectKind::FixedLoad) filler.load(site::FixedLoadId(subject.id));
  if (!menu.isEmpty()) menu.addSeparator();
  if (!breakersOf(canvas.session().document.site(), subject).empty()) {
    QAction* dark = menu.addAction(say(canvas.session().book, "place.dark.link"));
    QObject::connect(dark, &QAction::triggered, &canvas, [&canvas, subject] { emit canvas.darkWanted(subject); });
  }
  QAction* open = menu.addAction(say(canvas.session().book, "map.menu.properties"));
  QObject::connect(open, &QAction::triggered, &canvas, [&canvas, subject] { emit canvas.opened(subject); });
  QAction* remove = menu.addAction(say(canvas.session().book, "map.menu.delete"));
  QObject::connect(remove, &QAction::triggered, &canvas, [&canvas] { canvas.deleteChosen(); });
}

}  // namespace cordreach::app
