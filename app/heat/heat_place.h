// SPDX-License-Identifier: GPL-3.0-or-later
// The place Heat: two sides of a lesson cut through, their curves with the clock, and at the right the breaker warming
// beside them and the lesson in words.
#pragma once

#include "document/session.h"
#include "heat/heat_chart.h"
#include "heat/heat_model.h"
#include "shell/place.h"

class QComboBox;
class QPainter;
class QPushButton;
class QToolButton;

namespace cordreach::app {

class ChoiceBox;
class HeatColumn;
class HeatSheet;
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
  [[nodiscard]] QWidget* work() const override;
  [[nodiscard]] QWidget* column() const override;
  void setColumn(int width, bool visible) override;

  [[nodiscard]] HeatModel& model() { return m_model; }
  [[nodiscard]] HeatChart* chart() const;
  [[nodiscard]] LessonPanel* lesson() const;
  [[nodiscard]] SideChooser* chooser(std::size_t side) const;
  [[nodiscard]] SideView* view(std::size_t side) const;
  [[nodiscard]] QPushButton* play() const { return m_play; }
  [[nodiscard]] ChoiceBox* speed() const { return m_speed; }

  // All that is seen of the two sides, as a picture of twice its size, as a drawing, as a table. Errors: those of
  // io::replaceFile.
  [[nodiscard]] base::Result<base::Done> savePicture(const QString& path);
  [[nodiscard]] base::Result<base::Done> saveDrawing(const QString& path);
  [[nodiscard]] base::Result<base::Done> saveTable(const QString& path);

 protected:
  void showEvent(QShowEvent* event) override;
  void changeEvent(QEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;  // of the sheet

 private:
  QWidget* makeClockRow();
  void makeMenus();
  void reword();
  void showPlaying(bool on);
  void showPlugsOfLesson();
  void showAnswer();
  void saveAs(const char* titleCode, const char* kindCode, const char* ending,
              base::Result<base::Done> (HeatPlace::*save)(const QString&));
  void showSources();
  [[nodiscard]] QSize pageSize() const;  // of a saved picture
  void paintPage(QPainter& painter);

  Session& m_session;
  HeatModel m_model;
  HeatVerdict* m_verdict;
  HeatSheet* m_sheet = nullptr;  // what a picture shows
  QPushButton* m_play = nullptr;
  ChoiceBox* m_speed = nullptr;
  QToolButton* m_more = nullptr;
  QToolButton* m_save = nullptr;
  HeatColumn* m_column = nullptr;
  bool m_isNew = true;  // the open lesson, of which nothing was shown yet
};

}  // namespace cordreach::app
