// SPDX-License-Identifier: GPL-3.0-or-later
// A list of places beside the window: Return or a click goes to one. It stays open, and follows the site and its
// verdict.
#pragma once

#include <QDialog>
#include <functional>

#include "document/session.h"
#include "panels/place_list.h"

class QLabel;
class QListWidget;

namespace cordreach::app {

class PlacesDialog : public QDialog {
  Q_OBJECT

 public:
  using Make = std::function<PlaceList()>;
  PlacesDialog(Session& session, Make make, QWidget* parent = nullptr);

  [[nodiscard]] QListWidget* list() const { return m_list; }
  [[nodiscard]] QString head() const;
  [[nodiscard]] QString note() const;

 signals:
  void wanted(const cordreach::rules::Subject& subject);

 private:
  void fill();
  void go(int row);

  Make m_make;
  PlaceList m_shown;
  QLabel* m_head;
  QLabel* m_note;
  QLabel* m_always;
  QListWidget* m_list;
  const text::Phrasebook& m_book;
};

}  // namespace cordreach::app
