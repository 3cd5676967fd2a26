// SPDX-License-Identifier: GPL-3.0-or-later
// The window whose steps are drawn one after the other, plain, at 1280 by 800, in a place of its choice.
#pragma once

#include <QApplication>
#include <QTemporaryDir>
#include <QTest>
#include <memory>
#include <utility>

#include "shell/main_window.h"

namespace cordreach::guide {

class StepWindow {
 public:
  StepWindow(QString folder, look::Ground ground, const char* place) : m_folder(std::move(folder)) {
    const look::Choices plain{text::UnitSystem::Us, 1, ground, false, true};
    m_settings.setChoices(plain);
    look::setPresent(*static_cast<QApplication*>(QApplication::instance()), look::lookOf(plain, false));
    m_settings.setWindowGeometry({});
    m_settings.setPlace(place);
    m_window = std::make_unique<app::MainWindow>(m_settings, m_recovery.path());
    m_window->resize(1280, 800);
    m_window->show();
  }

  [[nodiscard]] app::MainWindow& window() { return *m_window; }

  // Once nothing is at work any more.
  template <class Settled>
  [[nodiscard]] bool save(const char* name, Settled settled) {
    const auto all = [&] { return settled() && !m_window->session().judge.isBusy(); };
    return QTest::qWaitFor(all, 120000) && save(*m_window, name);
  }
  [[nodiscard]] bool save(QWidget& widget, const char* name) const {
    QTest::qWait(50);
    return widget.grab().save(m_folder + "/" + name + ".png");
  }

 private:
  QString m_folder;
  QTemporaryDir m_recovery;
  look::Settings m_settings;
  std::unique_ptr<app::MainWindow> m_window;
};

}  // namespace cordreach::guide
