// SPDX-License-Identifier: GPL-3.0-or-later
#include "map/volts_bar.h"

#include <algorithm>
#include <chrono>

#include "map/map_canvas.h"
#include "map/map_figures.h"
#include "panels/names.h"
#include "panels/plain_controls.h"
#include "shell/say.h"

namespace cordreach::app {

namespace {

constexpr std::chrono::milliseconds kEvery{250};  // told so often while it goes on

template <class Tell>
void testAll(const VoltsQuestion& question, const base::Progress& progress, const Tell& tell) {
  VoltsAnswer answer;
  auto told = std::chrono::steady_clock::now();
  const auto add = [&](const planning::TestedOutlet& one) {
    answer.outlets.push_back(one);
    const auto now = std::chrono::steady_clock::now();
    if (now - told < kEvery) return;
    told = now;
    tell(answer);
  };
  planning::testEverywhere(*question.site, question.machine, question.first, progress, add);
  if (progress.stopRequested()) return;
  answer.whole = true;
  tell(std::move(answer));
}

OverlayFigures figuresOf(const text::Phrasebook& book, const planning::TestedOutlets& outlets) {
  OverlayFigures figures;
  figures.ownMarks = true;
  for (const planning::TestedOutlet& one : outlets) {
    if (!one.atOutlet) continue;
    figures.outlets[one.outlet] = {
        voltsText(book, *one.atOutlet), one.tooLow ? rules::Severity::Caution : rules::Severity::Ok, {}};
  }
  return figures;
}

}  // namespace

VoltsBar::VoltsBar(MapCanvas& canvas, QWidget* parent)
    : OverlayBar(canvas, parent),
      m_machine(addChoice("map.volts.machine")),
      m_test(
          this,
          [](const VoltsQuestion& question, const base::Progress& progress, const auto& tell) {
            testAll(question, progress, tell);
          },
          [this](const std::shared_ptr<const VoltsAnswer>& answer) { take(*answer); }) {}

void VoltsBar::refresh() {
  const auto site = session().document.snapshot();
  std::vector<FieldChoice> choices{{"", book().say("map.volts.as_planned")}};
  for (FieldChoice& machine : machinesInService(*site)) choices.push_back(std::move(machine));
  fill(m_machine, choices);
  const QString key = m_machine->currentData().toString();
  if (site == m_site && key == m_asked) return;
  m_site = site;
  m_asked = key;
  if (key.isEmpty()) {
    m_test.takeBack();
    tell(say(book(), "map.volts.planned"));
    return canvas().showFigures(std::nullopt);
  }
  canvas().showFigures(OverlayFigures{});
  tell(say(book(), "map.volts.trying"));
  m_test.ask({site, site::MachineId(key.toStdString()), canvas().floor()});
}

void VoltsBar::take(const VoltsAnswer& answer) {
  canvas().showFigures(figuresOf(book(), answer.outlets));
  const auto count = [&](auto counts) {
    return static_cast<double>(std::count_if(answer.outlets.begin(), answer.outlets.end(), counts));
  };
  const double low = count([](const planning::TestedOutlet& one) { return one.tooLow; });
  const double left = count([](const planning::TestedOutlet& one) { return !one.atOutlet; });
  const auto all = static_cast<double>(m_site->all<site::Outlet>().size());
  base::Arguments arguments{{"machine", m_machine->currentText().toStdString()}, {"n", all - left}, {"all", all}};
  if (low > 0) arguments.push_back({"low", low});
  if (left > 0) arguments.push_back({"left", left});
  if (!answer.whole) {
    arguments = {{"n", static_cast<double>(answer.outlets.size())}, {"all", all}};
    return tell(say(book(), "map.volts.trying", arguments));
  }
  tell(say(book(), "map.volts.says", arguments));
  emit tested();
}

void VoltsBar::withdraw() {
  m_test.takeBack();
  m_site.reset();
  canvas().showFigures(std::nullopt);
}

}  // namespace cordreach::app
