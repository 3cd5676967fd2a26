// SPDX-License-Identifier: GPL-3.0-or-later
// "Numbers and sources" of one finding.
#pragma once

#include <QDialog>
#include <memory>

#include "compute/verdict.h"
#include "text/phrasebook.h"

namespace cordreach::app {

class DetailsDialog : public QDialog {
  Q_OBJECT

 public:
  DetailsDialog(const std::shared_ptr<const Verdict>& verdict, std::size_t finding, const text::Phrasebook& book,
                QWidget* parent = nullptr);

  [[nodiscard]] QString plainText() const;
};

}  // namespace cordreach::app
