// SPDX-License-Identifier: GPL-3.0-or-later
// A small dialog of a few fields and one deed. The deed's error stands in it as one sentence, with nothing lost.
#pragma once

#include <QDialog>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "panels/field.h"
#include "text/phrasebook.h"

class QLabel;

namespace cordreach::app {

class FieldRow;

using Answers = std::map<std::string, std::string>;  // by the key of the field

class AskDialog : public QDialog {
  Q_OBJECT

 public:
  // Answers with what is wrong, or nothing when it is done and the dialog may close.
  using Deed = std::function<std::optional<base::Error>(const Answers&)>;

  struct Words {
    std::string title;
    std::string explanation{};  // may be empty
    std::string deed;           // on the button
  };

  AskDialog(const text::Phrasebook& book, const Words& words, const std::vector<Field>& fields, Deed deed,
            QWidget* parent = nullptr);

  [[nodiscard]] FieldRow* row(const std::string& key) const;
  void accept() override;

 private:
  const text::Phrasebook& m_book;
  std::vector<FieldRow*> m_rows;
  QLabel* m_fault;
  Deed m_deed;
};

}  // namespace cordreach::app
