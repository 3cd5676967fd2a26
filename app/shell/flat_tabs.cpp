// SPDX-License-Identifier: GPL-3.0-or-later
#include "shell/flat_tabs.h"

#include <QTabBar>

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
