// SPDX-License-Identifier: GPL-3.0-or-later
// What the dialogs about a plan picture share: a sentence, what is in the middle, fields, a fault, two buttons.
#pragma once

#include <QDialog>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "base/result.h"
#include "panels/field.h"
#include "text/phrasebook.h"

class QLabel;
class QVBoxLayout;

namespace cordreach::app {

class FieldRow;

enum class DeedEnd { Done, GivenUp };

class PlanDialog : public QDialog {
  Q_OBJECT

 public:
  // Answers with what is wrong, that it is done and the dialog may close, or that nobody waited for it to be done.
  using Deed = std::function<base::Result<DeedEnd>()>;

  // Words under `code`: .title, .explanation, .deed.
  PlanDialog(const text::Phrasebook& book, const std::string& code, QWidget* parent);

  void setDeed(Deed deed) { m_deed = std::move(deed); }
  // In the order they are read in.
  void add(QWidget* widget, int stretch = 0);
  FieldRow* add(Field field);
  [[nodiscard]] FieldRow* row(const std::string& key) const;
  void accept() override;

 protected:
  void showEvent(QShowEvent* event) override;
  [[nodiscard]] const text::Phrasebook& book() const { return m_book; }

 private:
  const text::Phrasebook& m_book;
  QVBoxLayout* m_middle;
  QLabel* m_fault;
  std::vector<FieldRow*> m_rows;
  Deed m_deed;
};

}  // namespace cordreach::app
