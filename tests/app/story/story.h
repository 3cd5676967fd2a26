// SPDX-License-Identifier: GPL-3.0-or-later
// The whole window with hands on it: where things are on its map, drags, keys where the focus is, dialogs answered.
#pragma once

#include <QAction>
#include <QLineEdit>
#include <QMenu>

#include "app/shell/support.h"
#include "map/map_canvas.h"
#include "map/map_view.h"
#include "panels/ask_dialog.h"
#include "panels/field_row.h"
#include "panels/findings_panel.h"
#include "rules/judge.h"
#include "shell/map_place.h"

namespace cordreach::app {

class StoryTest : public WindowTest {
 protected:
  [[nodiscard]] MapCanvas& canvas() const { return window->map()->view()->canvas(); }
  [[nodiscard]] FindingsPanel& findings() const { return *window->findChild<FindingsPanel*>(); }
  [[nodiscard]] std::shared_ptr<const Verdict> verdict() const { return window->session().judge.last(); }

  [[nodiscard]] QPoint at(rules::SubjectKind kind, const std::string& id) const {
    return canvas().pointOf({kind, id}).value().toPoint();
  }
  [[nodiscard]] rules::Severity severityOf(const char* hookup) const {
    return rules::verdictOf(site::HookupId(hookup), verdict()->findings);
  }
  [[nodiscard]] const MapMachine* machineOnMap(const char* id) const {
    for (const MapMachine& machine : canvas().content().machines) {
      if (machine.id.text() == id) return &machine;
    }
    return nullptr;
  }

  void drag(const QPoint& from, const QPoint& to) {
    QTest::mousePress(&canvas(), Qt::LeftButton, {}, from);
    for (int step = 1; step <= 6; ++step) QTest::mouseMove(&canvas(), from + (to - from) * step / 6);
    QTest::mouseRelease(&canvas(), Qt::LeftButton, {}, to);
  }

  // To whatever has the focus, as a keyboard does.
  void key(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) {
    QWidget* focused = QApplication::focusWidget();
    QTest::keyClick(focused != nullptr ? focused : window.get(), key, modifiers);
  }

  // Triggers the action of that name or code below `root`; the dialog that it opens is filled in and accepted.
  void addBy(QObject* root, const QString& name, const std::map<std::string, QString>& typed) {
    auto* action = root->findChild<QAction*>(name);
    ASSERT_NE(action, nullptr) << name.toStdString();
    bool answered = false;
    QTimer::singleShot(0, window.get(), [&] {
      auto* dialog = qobject_cast<AskDialog*>(QApplication::activeModalWidget());
      ASSERT_NE(dialog, nullptr) << name.toStdString();
      for (const auto& [field, text] : typed) {
        auto* line = qobject_cast<QLineEdit*>(dialog->row(field)->editor());
        line->selectAll();
        QTest::keyClicks(line, text);
      }
      QTest::keyClick(dialog, Qt::Key_Return);
      answered = !dialog->isVisible();
      if (!answered) dialog->reject();
    });
    action->trigger();
    EXPECT_TRUE(answered) << name.toStdString();
    window->activateWindow();  // a window manager would
    EXPECT_TRUE(QTest::qWaitForWindowActive(window.get()));
  }

  // Of the map's own menu of placing tools.
  void takeTool(const char* code) {
    for (QAction* action : window->map()->view()->findChildren<QAction*>()) {
      if (action->property("code").toString() == code) return action->trigger();
    }
    FAIL() << code;
  }
};

}  // namespace cordreach::app
