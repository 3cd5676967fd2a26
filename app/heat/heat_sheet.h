// SPDX-License-Identifier: GPL-3.0-or-later
// What a class sees of the two sides: their choosers, the cords cut through, the curves. Where the window is low, as
// with large text on a projector, the cords stand beside the curves and not above them; what finds no room is given to
// the column. A saved picture shows this sheet.
#pragma once

#include <QWidget>
#include <array>

#include "document/session.h"
#include "heat/heat_model.h"

class QGridLayout;
class QLabel;

namespace cordreach::app {

class FaultView;
class FigureTable;
class HeatChart;
class HeatColumn;
class SideChooser;
class SideView;

class HeatSheet : public QWidget {
  Q_OBJECT

 public:
  HeatSheet(HeatModel& model, Session& session, HeatColumn& column, QWidget* parent = nullptr);

  [[nodiscard]] HeatChart* chart() const { return m_chart; }
  [[nodiscard]] SideChooser* chooser(std::size_t side) const { return m_choosers.at(side); }
  [[nodiscard]] SideView* view(std::size_t side) const { return m_views.at(side); }
  void reword();
  // The height that the caution needs below a picture of the sheet; 0: it is in it.
  [[nodiscard]] int cautionBelow() const;

 protected:
  void resizeEvent(QResizeEvent* event) override;
  bool event(QEvent* event) override;

 private:
  enum class Form { Rows, Beside };

  void fill(HeatModel& model, Session& session);
  void showFaults();
  void arrange();
  bool placeFigures(Form form);
  // What the choosers, the caution and the gaps leave, in the present form.
  [[nodiscard]] int roomOfRows(bool withCaution) const;
  [[nodiscard]] bool fitsBeside() const;
  int placeFaults(int room);
  void stand(Form form);

  HeatModel& m_model;
  const text::Phrasebook& m_book;
  HeatColumn& m_column;
  QGridLayout* m_grid;
  std::array<SideChooser*, kSides> m_choosers{};
  std::array<SideView*, kSides> m_views{};
  std::array<FaultView*, kSides> m_faults{};
  FigureTable* m_figures = nullptr;
  HeatChart* m_chart = nullptr;
  QLabel* m_caution = nullptr;
  Form m_form = Form::Rows;
};

}  // namespace cordreach::app
