// SPDX-License-Identifier: GPL-3.0-or-later
// One finding in the list: mark, signal word, what happens, and links to it, to its numbers and to what mends it.
#pragma once

#include <QWidget>
#include <optional>

#include "compute/verdict.h"
#include "text/phrasebook.h"

class QLabel;

namespace cordreach::app {

class LinkButton;

struct FindingOnScreen {
  const Verdict& verdict;
  std::size_t index;
};

class FindingRow : public QWidget {
  Q_OBJECT

 public:
  FindingRow(const FindingOnScreen& shown, const text::Phrasebook& book, QWidget* parent = nullptr);

  // An older answer, while a newer one is being worked out: dimmed, and nothing can be changed by it.
  void setStale(bool stale);
  [[nodiscard]] static int indent();                       // of its words
  [[nodiscard]] LinkButton* link(const char* name) const;  // "show", "numbers", "do", "accept", "take_back"

 signals:
  void showAsked();
  void numbersAsked();
  void doAsked();
  void acceptAsked();
  void takeBackAsked();

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  void addWords(const FindingOnScreen& shown, const text::Phrasebook& book);
  void addLinks(const FindingOnScreen& shown, const text::Phrasebook& book);

  rules::Severity m_severity;
  QLabel* m_words;
};

}  // namespace cordreach::app
