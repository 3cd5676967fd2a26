// SPDX-License-Identifier: GPL-3.0-or-later
#include "shell/focus_ring.h"

#include <QApplication>
#include <QWidget>

namespace cordreach::app {

namespace {

bool takesFocus(const QWidget* widget) {
  return widget->isVisible() && widget->isEnabled() && (widget->focusPolicy() & Qt::TabFocus) != 0;
}

QWidget* firstIn(QWidget* region) {
  if (takesFocus(region)) return region;
  // The focus chain is the order in which Tab goes, so that F6 lands where Tab would.
  for (QWidget* at = region->nextInFocusChain(); at != region; at = at->nextInFocusChain()) {
    if (region->isAncestorOf(at) && takesFocus(at)) return at;
  }
  return nullptr;
}

}  // namespace

void FocusRing::step(bool forward) const {
  const QWidget* focused = QApplication::focusWidget();
  const auto count = regions.size();
  qsizetype at = forward ? -1 : 0;
  for (qsizetype i = 0; focused != nullptr && i < count; ++i) {
    if (regions[i] == focused || regions[i]->isAncestorOf(focused)) at = i;
  }
  for (qsizetype step = 1; step <= count; ++step) {
    const qsizetype next = (at + (forward ? step : count - step) + count) % count;
    if (QWidget* target = firstIn(regions[next])) {
      target->setFocus(Qt::ShortcutFocusReason);
      return;
    }
  }
}

}  // namespace cordreach::app
