// SPDX-License-Identifier: GPL-3.0-or-later
// The question of the place Cord while it is being put, and the latest answer to it. Every change asks again at once;
// while the new answer is on its way the old one stands, and is known to be old.
#pragma once

#include <QObject>

#include "compute/cord_service.h"
#include "desk/cord_inputs.h"
#include "document/session.h"

namespace cordreach::app {

// A cell of the field: row by gauge, column by length.
struct CordCell {
  std::size_t row = 0;
  std::size_t column = 0;

  friend bool operator==(const CordCell&, const CordCell&) = default;
};

class CordModel : public QObject {
  Q_OBJECT

 public:
  explicit CordModel(Session& session, QObject* parent = nullptr);

  [[nodiscard]] Session& session() const { return m_session; }
  [[nodiscard]] const text::Phrasebook& book() const { return m_session.book; }
  [[nodiscard]] const site::Site& site() const { return *m_site; }
  [[nodiscard]] const CordInputs& inputs() const { return m_inputs; }
  void setInputs(const CordInputs& inputs);
  // How the distance was followed along the plan; none: it was said, or the plan does not say where the two ends are.
  [[nodiscard]] const std::optional<site::Walk>& walk() const { return m_walk; }
  // Changes the inputs by `change(CordInputs&)`.
  template <class Change>
  void change(Change change) {
    CordInputs inputs = m_inputs;
    change(inputs);
    setInputs(inputs);
  }

  // Null: none yet.
  [[nodiscard]] const CordAnswer* answer() const { return m_answer.get(); }
  // The field as it was worked out last; that of the present question when gridIsFresh().
  [[nodiscard]] const CordGrid& grid() const { return m_grid; }
  [[nodiscard]] bool isFresh() const;      // of advice
  [[nodiscard]] bool gridIsFresh() const;  // of advice and field
  // Nothing is asked while the place is out of sight.
  void setAwake(bool awake);

  [[nodiscard]] bool isTooShort(std::size_t column) const;
  // The cell that the chosen cord has; none: no cord is chosen, or it is of no size or length of the field.
  [[nodiscard]] std::optional<CordCell> chosenCell() const;
  // Labels of the cart's cords of that size and length.
  [[nodiscard]] std::vector<std::string> cartIn(const CordCell& cell) const;

 signals:
  void inputsChanged();
  void answerChanged();  // the answer, its field, or whether they are fresh

 private:
  void take(const std::shared_ptr<const CordAnswer>& answer);
  void follow();
  void walkAlongPlan();
  void ask();

  Session& m_session;
  CordService m_service;
  std::shared_ptr<const site::Site> m_site;
  CordInputs m_inputs;
  std::optional<PlanEnds> m_ends;      // that m_walk leads between
  std::optional<site::Floor> m_floor;  // as it was drawn then
  std::optional<site::Walk> m_walk;
  std::shared_ptr<const CordAnswer> m_answer;
  CordGrid m_grid;
  std::uint64_t m_gridNumber = 0;
  bool m_awake = false;
  bool m_asked = false;
};

}  // namespace cordreach::app
