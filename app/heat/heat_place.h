// SPDX-License-Identifier: GPL-3.0-or-later
// The place Heat: two sides of a lesson cut through, their curves with the clock, and at the right the breaker warming
// beside them and the lesson in words.
#pragma once

#include "document/session.h"
#include "heat/heat_chart.h"
#include "heat/heat_model.h"
#include "shell/place.h"

class QComboBox;
class QLabel;
class QPushButton;
class QToolButton;

namespace cordreach::app {

class BreakerBars;
class ChoiceBox;
class FigureTable;
class HeatVerdict;
class LessonPanel;
class SideChooser;
class SideView;

class HeatPlace : public Place {
  Q_OBJECT

 public:
  explicit HeatPlace(Session& session, QWidget* parent = nullptr);

  [[nodiscard]] std::string code() const override { return "heat"; }
  [[nodiscard]] VerdictSource* verdict() const override;
  [[nodiscard]] QWidget* work() const override { return m_chart; }
  [[nodiscard]] QWidget* column() const override { return m_column; }
  void setColumn(int width, bool visible) override;

  [[nodiscard]] HeatModel& model() { return m_model; }
  [[nodiscard]] HeatChart* chart() const { return m_chart; }
  [[nodiscard]] LessonPanel* lesson() const { return m_lesson; }
  [[nodiscard]] SideChooser* chooser(std::size_t side) const { return m_choosers.at(side); }
  [[nodiscard]] QPushButton* play() const { return m_play; }
  [[nodiscard]] ChoiceBox* speed() const { return m_speed; }

  // All that is seen of the two sides, as a picture of twice its size, as a drawing, as a table. Errors: those of
  // io::replaceFile.
  [[nodiscard]] base::Result<base::Done> savePicture(const QString& path);
  [[nodiscard]] base::Result<base::Done> saveDrawing(const QString& path);
  [[nodiscard]] base::Result<base::Done> saveTable(const QString& path);

 protected:
  void changeEvent(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  QWidget* makeSheet();
  QWidget* makeClockRow();
  void makeColumn();
  void makeMenus();
  void reword();
  void arrange();
  void showPlaying(bool on);
  void showPlugsOfLesson();
  void saveAs(const char* titleCode, const char* kindCode, const char* ending,
              base::Result<base::Done> (HeatPlace::*save)(const QString&));
  void showSources();

  Session& m_session;
  HeatModel m_model;
  HeatVerdict* m_verdict;
  QWidget* m_sheet = nullptr;  // what a picture shows
  std::array<SideChooser*, kSides> m_choosers{};
  std::array<SideView*, kSides> m_views{};
  FigureTable* m_figures = nullptr;
  HeatChart* m_chart = nullptr;
  QLabel* m_caution = nullptr;
  QPushButton* m_play = nullptr;
  ChoiceBox* m_speed = nullptr;
  QToolButton* m_more = nullptr;
  QToolButton* m_save = nullptr;
  QWidget* m_column = nullptr;
  QLabel* m_breakerHead = nullptr;
  QLabel* m_breakerSays = nullptr;
  BreakerBars* m_bars = nullptr;
  LessonPanel* m_lesson = nullptr;
};

}  // namespace cordreach::app
