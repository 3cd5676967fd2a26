// SPDX-License-Identifier: GPL-3.0-or-later
// The place Map: the floor sketch and, at its right, what was found and what is chosen.
#pragma once

#include <QWidget>
#include <optional>

#include "document/session.h"

namespace cordreach::app {

class AddMenu;
class FindingsPanel;
class MapView;
class SelectionPanel;

class MapPlace : public QWidget {
  Q_OBJECT

 public:
  explicit MapPlace(Session& session, QWidget* parent = nullptr);

  void setColumn(int width, bool visible);
  [[nodiscard]] MapView* view() const { return m_view; }
  // Where the focus goes for work.
  [[nodiscard]] QWidget* work() const;
  [[nodiscard]] QWidget* column() const { return m_column; }
  [[nodiscard]] SelectionPanel* selection() const { return m_selection; }
  [[nodiscard]] AddMenu* addMenu() const { return m_add; }

 signals:
  void refused(const QString& sentence);

 private:
  [[nodiscard]] std::optional<site::Place> middle() const;

  MapView* m_view;
  QWidget* m_column;
  FindingsPanel* m_findings;
  SelectionPanel* m_selection;
  AddMenu* m_add;
};

}  // namespace cordreach::app
