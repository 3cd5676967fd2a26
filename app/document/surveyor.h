// SPDX-License-Identifier: GPL-3.0-or-later
// Who goes round with the sheet at present, and how what is written down next is known: shared by the plan and the
// listings of one window, so that it is said once.
#pragma once

#include <QDate>
#include <QObject>

#include "site/assigning.h"

namespace cordreach::app {

class Surveyor : public QObject {
  Q_OBJECT

 public:
  using QObject::QObject;

  // With today's date.
  [[nodiscard]] site::HowFound found() const {
    return {m_how, m_who, QDate::currentDate().toString(Qt::ISODate).toStdString()};
  }
  void set(site::HowKnown how, const std::string& who) {
    if (how == m_how && who == m_who) return;
    m_how = how;
    m_who = who;
    emit changed();
  }

 signals:
  void changed();

 private:
  site::HowKnown m_how = site::HowKnown::Assumed;
  std::string m_who;
};

}  // namespace cordreach::app
