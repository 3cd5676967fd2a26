// SPDX-License-Identifier: GPL-3.0-or-later
#include "map/reach_bar.h"

#include "map/map_canvas.h"
#include "panels/names.h"
#include "panels/plain_controls.h"
#include "planning/cord_choice.h"
#include "planning/outlet_choice.h"
#include "shell/say.h"
#include "text/quantity_text.h"

namespace cordreach::app {

namespace {

const QString kStockKey = QStringLiteral("stock ");

planning::ReachWish wishOf(const ReachQuestion& question) {
  return {*question.site, question.floor, question.machine, question.extension, question.outlet};
}

}  // namespace

ReachBar::ReachBar(MapCanvas& canvas, QWidget* parent)
    : OverlayBar(canvas, parent),
      m_machine(addChoice("map.reach.machine")),
      m_extension(addChoice("map.reach.extension")),
      m_walk(
          this,
          [](const ReachQuestion& question, const base::Progress& progress, const auto& tell) {
            planning::Reach reach = planning::reachOf(wishOf(question), progress);
            if (progress.stopRequested()) return;
            ReachArea area = areaOf(reach);
            tell(DrawnReach{std::move(reach), std::move(area)});
          },
          [this](const std::shared_ptr<const DrawnReach>& drawn) { take(*drawn); }) {}

void ReachBar::fillChoices() {
  const site::Site& site = session().document.site();
  fill(m_machine, machinesInService(site));
  std::vector<FieldChoice> cords{{"", book().say("map.reach.none")}};
  for (const site::Cord& cord : site.all<site::Cord>()) {
    if (!cord.outOfService && !cord.sockets.empty()) cords.push_back({cord.id.text(), cordName(book(), cord)});
  }
  for (const int feet : planning::kStockFeet) {
    const double lengthM = (feet * units::foot).in(units::metre);
    cords.push_back(
        {kStockKey.toStdString() + std::to_string(feet), book().say("map.reach.stock", {{"length_m", lengthM}})});
  }
  fill(m_extension, cords);
}

// A machine that is chosen on the plan is the one that is meant, until another is chosen here.
void ReachBar::followSelection() {
  const auto single = session().selection.single();
  if (single == m_followed) return;
  m_followed = single;
  if (!single || single->kind != rules::SubjectKind::Machine) return;
  const int at = m_machine->findData(QString::fromStdString(single->id));
  if (at >= 0) m_machine->setCurrentIndex(at);
}

std::optional<site::CordMake> ReachBar::chosenExtension(const site::Machine& machine) const {
  const QString key = m_extension->currentData().toString();
  if (key.isEmpty()) return std::nullopt;
  const site::CordMake& own = machine.inlets.front().cord;
  if (key.startsWith(kStockKey)) {
    const double feet = key.mid(kStockKey.size()).toDouble();
    return planning::stockCord(own, units::WireSize::awg(12), feet * units::foot).make;
  }
  const site::Cord* cord = session().document.site().find<site::Cord>(site::CordId(key.toStdString()));
  return cord != nullptr ? std::optional(cord->make) : std::nullopt;
}

std::optional<ReachQuestion> ReachBar::question() const {
  const auto site = session().document.snapshot();
  const std::string id = m_machine->currentData().toString().toStdString();
  const site::Machine* machine = id.empty() ? nullptr : site->find<site::Machine>(site::MachineId(id));
  if (machine == nullptr || !canvas().floor()) return std::nullopt;
  ReachQuestion question{site, *canvas().floor(), machine->id, chosenExtension(*machine), {}};
  const auto single = session().selection.single();
  if (!single || single->kind != rules::SubjectKind::Outlet) return question;
  const site::Outlet* outlet = site->find<site::Outlet>(site::OutletId(single->id));
  const bool isHere = outlet != nullptr && outlet->place && outlet->place->floor == question.floor;
  if (isHere) question.outlet = outlet->id;
  return question;
}

void ReachBar::refresh() {
  fillChoices();
  followSelection();
  const auto now = question();
  if (now && now == m_asked) return;
  m_asked = now;
  if (!now) {
    m_walk.takeBack();
    canvas().showReach({});
    return tell(say(book(), "map.reach.no_machine"));
  }
  m_walk.ask(*now);
}

QString ReachBar::refusal() const {
  if (!m_asked->outlet) return say(book(), "map.reach.no_outlet");
  const site::Outlet& outlet = m_asked->site->at<site::Outlet>(*m_asked->outlet);
  const planning::PlugStart start = planning::reachStartOf(wishOf(*m_asked), outlet);
  return say(book(), "map.reach.refused." + std::string(planning::nameOf(start)), {{"outlet", outletName(outlet)}});
}

void ReachBar::take(const DrawnReach& drawn) {
  const planning::Reach& reach = drawn.reach;
  canvas().showReach(drawn.area);
  if (reach.outlets == 0) {
    tell(refusal());
    emit walked();
    return;
  }
  const planning::ReachLengths& lengths = reach.lengths;
  base::Arguments arguments{{"own_m", lengths.own.si()},
                            {"cord_m", lengths.cord().si()},
                            {"along_m", lengths.along().si()},
                            {"slack_m", planning::kSlack.si()},
                            {"least_m", planning::kLeastSlack.si()},
                            {"most_m", planning::kMostSlack.si()},
                            {"n", static_cast<double>(reach.outlets)}};
  if (m_asked->extension) arguments.push_back({"extension_m", lengths.extension.si()});
  if (reach.unknownBreakers > 0) arguments.push_back({"unknown", static_cast<double>(reach.unknownBreakers)});
  if (!reach.isDrawn) arguments.push_back({"bare", 1.0});
  if (lengths.guessed) arguments.push_back({"guessed", 1.0});
  if (lengths.lighter) arguments.push_back({"lighter", 1.0});
  if (m_asked->outlet) {
    const site::Outlet& outlet = m_asked->site->at<site::Outlet>(*m_asked->outlet);
    arguments.push_back({"outlet", outletName(outlet)});
    const auto start = planning::reachStartOf(wishOf(*m_asked), outlet);
    if (start == planning::PlugStart::AskFirst) arguments.push_back({"ask", 1.0});
  }
  tell(say(book(), "map.reach.says", arguments));
  emit walked();
}

void ReachBar::withdraw() {
  m_walk.takeBack();
  m_asked.reset();
  m_followed.reset();
  canvas().showReach({});
}

}  // namespace cordreach::app
