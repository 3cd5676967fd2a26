// SPDX-License-Identifier: GPL-3.0-or-later
// A window of its own for a test: fresh settings, a recovery folder of its own, the demo building in it.
#pragma once

#include <gtest/gtest.h>

#include <QApplication>
#include <QFile>
#include <QMessageBox>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>

#include "shell/main_window.h"
#include "shell/say.h"
#include "shell/verdict_band.h"

namespace cordreach::app {

class WindowTest : public ::testing::Test {
 protected:
  WindowTest() {
    // Whatever an earlier run left chosen.
    const look::Choices plain{text::UnitSystem::Us, 1, look::Ground::Light, false, false};
    settings.setChoices(plain);
    settings.setWindowGeometry({});
    settings.setPlace("map");
    settings.setSurveyor({});
    look::setPresent(*static_cast<QApplication*>(QApplication::instance()), look::lookOf(plain, false));
    window = std::make_unique<MainWindow>(settings, folder.path() + "/recovery");
    window->files().showDemo();
    window->resize(1280, 800);
    window->show();
  }

  // The verdict is of what is on screen, and its remedies are tried.
  [[nodiscard]] bool settles() {
    return QTest::qWaitFor([this] { return window->band()->isFresh() && !window->session().judge.isBusy(); }, 60000);
  }
  [[nodiscard]] Document& document() { return window->session().document; }
  [[nodiscard]] const VerdictWords& words() const { return window->band()->words(); }

  // Presses the answer of that code at the question that comes up next; what it asked stands in `asked`.
  void answerNext(const char* code) {
    QTimer::singleShot(0, window.get(), [this, code] {
      auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
      ASSERT_NE(box, nullptr);
      asked = box->text();
      told = box->informativeText();
      const QString words = say(window->session().book, code);
      for (QAbstractButton* button : box->buttons()) {
        if (button->text() == words) return button->click();
      }
      ADD_FAILURE() << code << " is no answer to " << asked.toStdString();
      box->reject();
    });
  }

  QTemporaryDir folder;
  look::Settings settings;
  std::unique_ptr<MainWindow> window;
  QString asked;
  QString told;
};

}  // namespace cordreach::app
