// SPDX-License-Identifier: GPL-3.0-or-later
// The dialogs about a plan picture that show it: its corners, its scale, what replaces it, which page of a document.
#pragma once

#include <memory>
#include <optional>

#include "survey/handle_view.h"
#include "survey/pdf_pages.h"
#include "survey/picture_edits.h"
#include "survey/picture_read.h"
#include "survey/plan_dialog.h"
#include "units/quantity.h"

class QLabel;
class QSpinBox;

namespace cordreach::app {

// The four corners of a plan in a photo, clockwise from the upper left.
class CornersDialog : public PlanDialog {
  Q_OBJECT

 public:
  CornersDialog(const text::Phrasebook& book, const ReadPicture& picture, QWidget* parent);
  [[nodiscard]] HandleView* view() const { return m_view; }

 private:
  HandleView* m_view;
};

// What lies within the corners, squared; nothing where they make no outline. Its size is that of the mean of opposite
// edges.
[[nodiscard]] std::optional<QImage> squared(const QImage& image, const std::vector<QPointF>& corners);

// Two points of the plan and how far they are apart, typed or paced.
class ScaleDialog : public PlanDialog {
  Q_OBJECT

 public:
  ScaleDialog(const text::Phrasebook& book, const ReadPicture& picture, QWidget* parent);
  [[nodiscard]] HandleView* view() const { return m_view; }
  // Errors: of what was typed, picture.bad_distance.
  [[nodiscard]] base::Result<units::Length> distance() const;

 private:
  HandleView* m_view;
};

// The old plan and the new one, with the same two points on both; or the same sheet drawn anew.
class ReplaceDialog : public PlanDialog {
  Q_OBJECT

 public:
  ReplaceDialog(const text::Phrasebook& book, const ReadPicture& older, const ReadPicture& newer, QWidget* parent);
  [[nodiscard]] bool isSameSheet() const;
  [[nodiscard]] std::string issue() const;
  [[nodiscard]] PointPair oldPoints() const;
  [[nodiscard]] PointPair newPoints() const;
  [[nodiscard]] HandleView* oldView() const { return m_old; }
  [[nodiscard]] HandleView* newView() const { return m_new; }

 private:
  HandleView* m_old;
  HandleView* m_new;
};

// Which page; only the one that is looked at is drawn, on a thread of its own.
class PageDialog : public PlanDialog {
  Q_OBJECT

 public:
  PageDialog(const text::Phrasebook& book, PdfPages& pages, QWidget* parent);
  ~PageDialog() override;
  [[nodiscard]] int page() const;  // from 0

 private:
  struct Preview;
  void showPage(int page, const QImage& drawn);

  QSpinBox* m_page;
  QLabel* m_shown;
  std::unique_ptr<Preview> m_preview;
};

}  // namespace cordreach::app
