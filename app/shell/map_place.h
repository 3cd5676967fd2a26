// SPDX-License-Identifier: GPL-3.0-or-later
// The place Map: the floor sketch and, at its right, what was found and what is chosen.
#pragma once

#include <optional>

#include "document/session.h"
#include "shell/place.h"

namespace cordreach::app {

class AddMenu;
class FindingsPanel;
class MapView;
class SelectionPanel;
class SiteVerdict;

class MapPlace : public Place {
  Q_OBJECT

 public:
  explicit MapPlace(Session& session, QWidget* parent = nullptr);

  [[nodiscard]] std::string code() const override { return "map"; }
  [[nodiscard]] VerdictSource* verdict() const override;
  void setColumn(int width, bool visible) override;
  [[nodiscard]] MapView* view() const { return m_view; }
  [[nodiscard]] QWidget* work() const override;
  [[nodiscard]] QWidget* column() const override { return m_column; }
  [[nodiscard]] SelectionPanel* selection() const { return m_selection; }
  [[nodiscard]] AddMenu* addMenu() const { return m_add; }

 protected:
  void changeEvent(QEvent* event) override;

 private:
  [[nodiscard]] std::optional<site::Place> middle() const;

  SiteVerdict* m_verdict;
  MapView* m_view;
  QWidget* m_column;
  FindingsPanel* m_findings;
  SelectionPanel* m_selection;
  AddMenu* m_add;
};

}  // namespace cordreach::app
