// SPDX-License-Identifier: GPL-3.0-or-later
// What is shown at A or at B: one of the lesson's sides, or its machine on another cord (of common stock, or of the
// open building); and how that cord lies.
#pragma once

#include <QWidget>
#include <vector>

#include "heat/heat_model.h"
#include "text/phrasebook.h"

class QGridLayout;
class QLabel;

namespace cordreach::app {

class ChoiceBox;
class Document;

class SideChooser : public QWidget {
  Q_OBJECT

 public:
  struct Tools {
    HeatModel& model;
    Document& document;
    const text::Phrasebook& book;
  };
  SideChooser(const Tools& tools, std::size_t side, QWidget* parent = nullptr);
  [[nodiscard]] ChoiceBox* cord() const { return m_cord; }
  [[nodiscard]] ChoiceBox* laying() const { return m_laying; }

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  void fill();  // the lists
  void showChosen();
  void share();
  void fillCords();
  void addLaying(const site::LayingOfCord& laying);
  [[nodiscard]] std::size_t rowOf(const planning::LessonCase& setup) const;  // however it lies
  void chooseCord(int index);
  void chooseLaying(int index);

  Tools m_tools;
  std::size_t m_side;
  QGridLayout* m_grid;
  QLabel* m_letter;
  ChoiceBox* m_cord;
  ChoiceBox* m_laying;
  std::vector<planning::LessonCase> m_cases;  // of the list, row by row; a separator's row is empty
  std::vector<site::LayingOfCord> m_layings;
};

}  // namespace cordreach::app
