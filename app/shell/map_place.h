// SPDX-License-Identifier: GPL-3.0-or-later
// The place Map: the floor sketch, the lists and the panels' schedules, one of them in front, and at their right what
// was found and what is chosen. All three show one selection.
#pragma once

#include <optional>

#include "document/session.h"
#include "shell/place.h"

class QStackedWidget;
class QTabBar;

namespace cordreach::app {

class AddMenu;
class FindingsPanel;
class ListingsView;
class MapLists;
class MapView;
class ScheduleView;
class SelectionPanel;
class SiteVerdict;

enum class MapSide { Plan, Lists, Panels };

class MapPlace : public Place {
  Q_OBJECT

 public:
  explicit MapPlace(Session& session, QWidget* parent = nullptr);

  [[nodiscard]] std::string code() const override { return "map"; }
  [[nodiscard]] VerdictSource* verdict() const override;
  void setColumn(int width, bool visible) override;
  [[nodiscard]] MapView* view() const { return m_view; }
  [[nodiscard]] ListingsView* lists() const { return m_lists; }
  [[nodiscard]] ScheduleView* schedules() const { return m_schedules; }
  [[nodiscard]] MapSide side() const;
  void showSide(MapSide side);
  [[nodiscard]] QWidget* work() const override;
  [[nodiscard]] QWidget* column() const override { return m_column; }
  [[nodiscard]] SelectionPanel* selection() const { return m_selection; }
  [[nodiscard]] AddMenu* addMenu() const { return m_add; }
  [[nodiscard]] MapLists* placeLists() const { return m_placeLists; }

 protected:
  void changeEvent(QEvent* event) override;

 private:
  [[nodiscard]] std::optional<site::Place> middle() const;
  void nameSides();

  Session& m_session;
  SiteVerdict* m_verdict;
  QTabBar* m_sides;
  QStackedWidget* m_stack;
  MapView* m_view;
  ListingsView* m_lists;
  ScheduleView* m_schedules;
  QWidget* m_column;
  FindingsPanel* m_findings;
  SelectionPanel* m_selection;
  AddMenu* m_add;
  MapLists* m_placeLists;
};

}  // namespace cordreach::app
