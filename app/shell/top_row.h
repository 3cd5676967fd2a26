// SPDX-License-Identifier: GPL-3.0-or-later
// The row above the sheet: menus, the places, undo and redo, the site's name and whether it is saved.
#pragma once

#include <QWidget>

#include "document/document.h"
#include "text/phrasebook.h"

class QLabel;
class QMenuBar;
class QAction;

namespace cordreach::app {

class PlaceTabs;

class TopRow : public QWidget {
  Q_OBJECT

 public:
  TopRow(const Document& document, const text::Phrasebook& book, QWidget* parent = nullptr);

  [[nodiscard]] QMenuBar* menus() const { return m_menus; }
  [[nodiscard]] PlaceTabs* places() const { return m_places; }
  void setUndoRedo(QAction* undo, QAction* redo);
  // Name and saved state, also as the window's title.
  void refresh();
  [[nodiscard]] QString title() const;

 protected:
  void paintEvent(QPaintEvent* event) override;
  void changeEvent(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  void fitName();
  void dress();
  void addArrow(QAction* action);

  const Document& m_document;
  const text::Phrasebook& m_book;
  QMenuBar* m_menus;
  PlaceTabs* m_places;
  QLabel* m_name;
  QLabel* m_saved;
  QAction* m_undo = nullptr;
  QAction* m_redo = nullptr;
};

}  // namespace cordreach::app
