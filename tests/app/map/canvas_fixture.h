// SPDX-License-Identifier: GPL-3.0-or-later
// The demo building on a map of 904 × 560, judged at once and without a thread's wait.
#pragma once

#include <gtest/gtest.h>

#include <QTest>
#include <memory>

#include "app/map/support.h"
#include "map/map_canvas.h"
#include "map/map_view.h"

namespace cordreach::test {

class MapTest : public testing::Test {
 protected:
  void SetUp() override {
    view.resize(904, 600);
    view.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&view));
    canvas().setFocus();
  }

  [[nodiscard]] app::MapCanvas& canvas() const { return view.canvas(); }
  [[nodiscard]] QPoint at(rules::SubjectKind kind, const char* id) const {
    return canvas().pointOf({kind, id}).value().toPoint();
  }
  [[nodiscard]] QPoint plugOf(const char* machine, const char* hookup) const {
    return canvas()
        .pointOfPlug(app::MachinePlug{site::MachineId(machine), "A", site::HookupId(hookup)})
        .value()
        .toPoint();
  }
  void drag(const QPoint& from, const QPoint& to, bool letGo = true) {
    QTest::mousePress(&canvas(), Qt::LeftButton, {}, from);
    for (int step = 1; step <= 6; ++step) QTest::mouseMove(&canvas(), from + (to - from) * step / 6);
    if (letGo) QTest::mouseRelease(&canvas(), Qt::LeftButton, {}, to);
  }
  void key(int key) { QTest::keyClick(&canvas(), static_cast<Qt::Key>(key)); }

  app::Document document{demoSite()};
  app::JudgeService judge;
  app::Selection selection;
  text::Phrasebook book = text::Phrasebook::load("en").value();
  app::Session session{document, judge, selection, book};
  app::MapView view{session};
};

}  // namespace cordreach::test
