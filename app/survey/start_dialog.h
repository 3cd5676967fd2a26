// SPDX-License-Identifier: GPL-3.0-or-later
// A new building in a few questions, each of which may stay open; or an empty sheet.
#pragma once

#include <optional>

#include "site/site.h"
#include "survey/plan_dialog.h"

namespace cordreach::app {

struct StartAnswers {
  std::string name{};
  std::optional<site::SupplyKindOfSource> source{};  // none: nobody knows
  std::optional<site::WiringSystem> system{};
  std::vector<std::string> panels{};  // by name; empty: nobody knows
  std::optional<int> floors{};
};

inline constexpr int kMostFloors = 60;
inline constexpr std::size_t kMostPanels = 200;

// What is known of it and no more: a supply whose kind nobody knows says so in its name and stands as 120/240 V until
// somebody does, as a floor stands that can be drawn on. Panels hang nowhere yet.
[[nodiscard]] site::Site startedSite(const text::Phrasebook& book, const StartAnswers& answers);

class StartDialog : public PlanDialog {
  Q_OBJECT

 public:
  explicit StartDialog(const text::Phrasebook& book, QWidget* parent = nullptr);

  // Once it was accepted.
  [[nodiscard]] const site::Site& site() const { return *m_site; }

 private:
  [[nodiscard]] base::Result<StartAnswers> answers() const;

  std::optional<site::Site> m_site;
};

}  // namespace cordreach::app
