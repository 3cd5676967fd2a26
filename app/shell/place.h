// SPDX-License-Identifier: GPL-3.0-or-later
// One of the places of the window: a page below the verdict band, with its own tab and its own verdict. A new place
// derives from this, has its words under `window.place.<code>` (the tab) and `window.action.<code>` (the menu View),
// and is made in MainWindow::buildPlaces(), which is all that the window needs to know of it.
//
// As any widget it hears of other words, type and colours by LanguageChange, FontChange and PaletteChange. Tab goes
// through it in the order in which its widgets were made, unless it says otherwise.
#pragma once

#include <QWidget>
#include <string>

namespace cordreach::app {

class VerdictSource;

class Place : public QWidget {
  Q_OBJECT

 public:
  using QWidget::QWidget;

  // "map": stable, also what the settings keep.
  [[nodiscard]] virtual std::string code() const = 0;
  // What the band says while this place is in front.
  [[nodiscard]] virtual VerdictSource* verdict() const = 0;
  // Where the focus goes for work: when the place is called by its keys, and on the way of F6.
  [[nodiscard]] virtual QWidget* work() const = 0;
  // What stands at the right, as wide as the verdict's button; a narrow window shows it only when asked (F9).
  [[nodiscard]] virtual QWidget* column() const = 0;
  virtual void setColumn(int width, bool visible) = 0;

 signals:
  // One sentence about what could not be done, for the line below the verdict.
  void refused(const QString& sentence);
};

}  // namespace cordreach::app
