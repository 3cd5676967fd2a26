// SPDX-License-Identifier: GPL-3.0-or-later
// What opens under an input of the question: everything in it takes effect at once, there is no OK. It lies over the
// place, closes on Escape, on Return and when the focus goes elsewhere, and hands the focus back to its input.
#pragma once

#include <QFrame>

#include "desk/cord_model.h"

class QGridLayout;
class QLabel;
class QLineEdit;

namespace cordreach::app {

class ChoiceBox;
class TickBox;

class InputEditor : public QFrame {
  Q_OBJECT

 public:
  explicit InputEditor(CordModel& model, QWidget* parent = nullptr);

  // What is typed at the input before the editor is open goes on in it.
  virtual void begin(const QString& typed) = 0;
  // Shows the model's inputs; what is being typed is left alone.
  virtual void refresh() = 0;

 signals:
  void done();

 protected:
  [[nodiscard]] CordModel& model() const { return m_model; }
  [[nodiscard]] const text::Phrasebook& book() const { return m_model.book(); }
  [[nodiscard]] bool isRefreshing() const { return m_refreshing; }

  // Pieces, each with its label as its name.
  QLabel* addHeading(QGridLayout* grid, const char* code);
  void addRow(QGridLayout* grid, const char* code, QWidget* control);
  QLineEdit* addLine(QGridLayout* grid, const char* code);
  ChoiceBox* addChoice(QGridLayout* grid, const char* code);
  TickBox* addTick(QGridLayout* grid, const char* code);
  QLabel* addNote(QGridLayout* grid);
  // Sentence under what can't be read; empty: none.
  void showFault(QLabel* note, const QString& sentence);
  // Sets a line that is not being typed in.
  void put(QLineEdit* line, const QString& text);
  // Runs `show` without the controls' signals being heard as changes.
  template <class Show>
  void quietly(Show show) {
    m_refreshing = true;
    show();
    m_refreshing = false;
  }

  void paintEvent(QPaintEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void changeEvent(QEvent* event) override;
  // In the present words.
  virtual void rename();

 private:
  CordModel& m_model;
  std::vector<std::pair<QLabel*, std::string>> m_labels;
  std::vector<std::pair<QWidget*, std::string>> m_named;
  bool m_refreshing = false;
};

}  // namespace cordreach::app
