// SPDX-License-Identifier: GPL-3.0-or-later
// The verdict, always in the same place and under the same name: shape, signal word, what it concerns, the sentence,
// the reason, and the one change that mends it, with a button that makes it. While a newer answer is being worked out
// the old one is dimmed and its button is off.
#pragma once

#include <QTimer>
#include <QWidget>

#include "shell/verdict_source.h"
#include "text/phrasebook.h"

class QLabel;

namespace cordreach::app {

class LinkButton;
class RemedyButton;

class VerdictBand : public QWidget {
  Q_OBJECT

 public:
  explicit VerdictBand(const text::Phrasebook& book, QWidget* parent = nullptr);

  // Whose words it shows from now on; the source must outlive the band or be replaced first.
  void setSource(VerdictSource* source);

  // The right-hand column's width.
  void setColumn(int width, bool narrow);
  // In a low window the sentence is set smaller and the reason keeps to one line, with a link to the rest of it.
  void setLow(bool low);
  [[nodiscard]] const VerdictWords& words() const { return m_words; }
  // What is shown was judged of what is on screen now.
  [[nodiscard]] bool isFresh() const { return m_source != nullptr && m_source->isFresh(); }
  [[nodiscard]] RemedyButton* button() const { return m_button; }
  [[nodiscard]] LinkButton* more() const { return m_more; }
  [[nodiscard]] QSize sizeHint() const override;

 public slots:
  // Makes the change of the button, as one step that can be undone.
  void pressRemedy();

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  struct Places {
    QRect plate;
    QRect concerns;
    QRect sentence;
    QRect reason;
  };

  void take();
  void freshen();
  void layOut();
  void announce();
  [[nodiscard]] Places places() const;
  [[nodiscard]] QString concernsLine(const QRect& place) const;
  [[nodiscard]] QFont sentenceFont() const;
  [[nodiscard]] bool isFolded() const { return m_low && !m_unfolded; }
  void placeMore();
  void paintConcerns(QPainter& painter, const QRect& place) const;

  const text::Phrasebook& m_book;
  VerdictSource* m_source = nullptr;
  VerdictWords m_words;
  RemedyButton* m_button;
  QLabel* m_after;
  LinkButton* m_more;
  QTimer m_announceSoon;
  int m_columnWidth = 300;
  bool m_narrow = false;
  bool m_low = false;
  bool m_unfolded = false;  // the whole reason, though the window is low
};

}  // namespace cordreach::app
