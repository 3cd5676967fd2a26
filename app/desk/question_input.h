// SPDX-License-Identifier: GPL-3.0-or-later
// An input in the middle of a sentence: its value in bold over a line, with a mark that it opens. Space, Return or Down
// opens its editor; typing goes straight into it.
#pragma once

#include <QAbstractButton>

namespace cordreach::app {

class QuestionInput : public QAbstractButton {
  Q_OBJECT

 public:
  explicit QuestionInput(QWidget* parent = nullptr);
  // `what` is asked for, for the reader: "Machine".
  void setValue(const QString& what, const QString& value);
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

 signals:
  void opened(const QString& typed);  // what was typed at it, if anything

 protected:
  void paintEvent(QPaintEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void changeEvent(QEvent* event) override;
};

}  // namespace cordreach::app
