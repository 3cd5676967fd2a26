// SPDX-License-Identifier: GPL-3.0-or-later
// A strip over the plan that belongs to one of its overlays: what the overlay asks, and what it found in a sentence.
#pragma once

#include <QWidget>
#include <functional>
#include <vector>

#include "document/session.h"
#include "panels/field.h"

class QBoxLayout;
class QLabel;

namespace cordreach::app {

class ChoiceBox;
class MapCanvas;

class OverlayBar : public QWidget {
  Q_OBJECT

 public:
  // Hidden until its overlay is in front.
  OverlayBar(MapCanvas& canvas, QWidget* parent);

  void setInFront(bool inFront);
  // The site, the verdict, the floor or what is chosen is another. Not called while it is behind.
  virtual void refresh() = 0;
  [[nodiscard]] QString said() const;
  void reword();

 protected:
  // With the code of the word before it.
  ChoiceBox* addChoice(const char* code);
  void addLink(const char* code, const std::function<void()>& act);
  void tell(const QString& sentence);
  // Keeps what was chosen; else the first.
  static void fill(ChoiceBox* box, const std::vector<FieldChoice>& choices);
  [[nodiscard]] MapCanvas& canvas() const { return m_canvas; }
  [[nodiscard]] Session& session() const;
  [[nodiscard]] const text::Phrasebook& book() const;
  // Behind again: what it had put on the plan goes.
  virtual void withdraw() {}
  // Other words or units: what was asked is asked again.
  virtual void forget() {}
  void changeEvent(QEvent* event) override;

 private:
  struct Worded {
    QWidget* widget;
    const char* code;
  };

  MapCanvas& m_canvas;
  QBoxLayout* m_row;
  QLabel* m_said;
  std::vector<Worded> m_worded;
  bool m_isInFront = false;
};

// Machines in service, by name: the key is the id.
[[nodiscard]] std::vector<FieldChoice> machinesInService(const site::Site& site);

}  // namespace cordreach::app
