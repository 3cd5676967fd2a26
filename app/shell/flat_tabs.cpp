// SPDX-License-Identifier: GPL-3.0-or-later
#include "shell/flat_tabs.h"

#include <QShortcut>
#include <QTabBar>
#include <algorithm>
#include <utility>

#include "look/look.h"

namespace cordreach::app {

QTabBar* flatTabs(QWidget* parent) {
  auto* tabs = new QTabBar(parent);
  tabs->setDrawBase(false);
  tabs->setExpanding(false);
  tabs->setProperty("flat", true);
  tabs->setElideMode(Qt::ElideNone);
  return tabs;
}

void stepByKeys(QTabBar* tabs, QWidget* within, std::function<void()> after) {
  for (const auto& [key, step] : {std::pair(Qt::Key_PageDown, 1), std::pair(Qt::Key_PageUp, -1)}) {
    auto* keys = new QShortcut(QKeySequence(Qt::CTRL | key), within);
    keys->setContext(Qt::WidgetWithChildrenShortcut);
    QObject::connect(keys, &QShortcut::activated, tabs, [tabs, step = step, after] {
      tabs->setCurrentIndex(std::clamp(tabs->currentIndex() + step, 0, tabs->count() - 1));
      after();
    });
  }
}

QString flatTabStyle(const char* edge) {
  const look::Tokens& tokens = look::tokens();
  const bool across = QLatin1String(edge) == QLatin1String("bottom");
  const QString room = across ? QStringLiteral("padding:5px 2px 4px 2px;margin-right:16px")
                              : QStringLiteral("padding:6px 3px 6px 1px;margin-bottom:10px");
  return QStringLiteral(
             "QTabBar{background:transparent}"
             "QTabBar::tab{background:transparent;border:none;border-%4:2.5px solid transparent;color:%1;%5}"
             "QTabBar::tab:selected{color:%2;border-%4-color:%2}"
             "QTabBar::tab:hover{color:%2}"
             "QTabBar::tab:focus{border-%4-color:%3}")
      .arg(tokens.ink2.name(), tokens.ink.name(), tokens.select.name(), QString::fromLatin1(edge), room);
}

}  // namespace cordreach::app
