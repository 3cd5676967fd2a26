// SPDX-License-Identifier: GPL-3.0-or-later
#include "shell/question.h"

#include <QMessageBox>
#include <QPushButton>
#include <QVector>

namespace cordreach::app {

int ask(QWidget* parent, const Question& question) {
  QMessageBox box(parent);
  box.setTextFormat(Qt::PlainText);
  box.setText(question.sentence);
  box.setInformativeText(question.detail);
  QVector<QPushButton*> buttons;
  for (qsizetype i = 0; i < question.answers.size(); ++i) {
    const auto role = i == 0                             ? QMessageBox::AcceptRole
                      : i + 1 == question.answers.size() ? QMessageBox::RejectRole
                                                         : QMessageBox::ActionRole;
    buttons << box.addButton(question.answers[i], role);
  }
  box.setDefaultButton(buttons.first());
  box.setEscapeButton(buttons.last());
  box.exec();
  const auto at = buttons.indexOf(qobject_cast<QPushButton*>(box.clickedButton()));
  return static_cast<int>(at < 0 ? question.answers.size() - 1 : at);
}

}  // namespace cordreach::app
