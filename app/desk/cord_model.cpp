// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/cord_model.h"

#include <algorithm>
#include <cmath>

#include "study/assumptions.h"

namespace cordreach::app {

namespace {

// Printed lengths are round in one system of units only: 7.5 m is sold as 25 ft.
constexpr double kSameLength = 0.02;

bool isSame(units::Length a, units::Length b) { return std::abs(a.si() - b.si()) <= kSameLength * b.si(); }

}  // namespace

CordModel::CordModel(Session& session, QObject* parent)
    : QObject(parent),
      m_session(session),
      m_site(session.document.snapshot()),
      m_inputs(startInputs(*m_site)),
      m_grid(emptyGrid()) {
  walkAlongPlan();
  connect(&m_service, &CordService::answered, this, &CordModel::take);
  connect(&session.document, &Document::changed, this, [this](const DocumentChange& change) {
    m_site = m_session.document.snapshot();
    m_inputs = change.reset ? startInputs(*m_site) : stillThere(m_inputs, *m_site);
    follow();
  });
}

void CordModel::setInputs(const CordInputs& inputs) {
  m_inputs = inputs;
  follow();
}

// Looked for again only when its ends or what is drawn between them have changed.
void CordModel::walkAlongPlan() {
  const auto ends = m_inputs.measure == Measure::Plan ? planEnds(m_inputs, *m_site) : std::nullopt;
  if (!ends) {
    m_ends.reset();
    m_walk.reset();
    return;
  }
  const site::Floor& floor = m_site->at<site::Floor>(ends->work.floor);
  if (m_ends != ends || m_floor != floor) {
    m_ends = ends;
    m_floor = floor;
    m_walk = site::walkBetween(*m_site, ends->outlet, ends->work);
  }
  if (m_walk) m_inputs.distance = m_walk->length;
}

void CordModel::follow() {
  walkAlongPlan();
  emit inputsChanged();
  m_asked = false;
  if (m_awake) ask();
  emit answerChanged();
}

void CordModel::ask() {
  if (m_asked) return;
  m_asked = true;
  m_service.request(askedOf(m_inputs, m_site, m_session.book));
}

void CordModel::setAwake(bool awake) {
  m_awake = awake;
  if (awake) ask();
}

bool CordModel::isFresh() const { return m_asked && m_answer && m_answer->number == m_service.latest(); }

bool CordModel::gridIsFresh() const { return isFresh() && m_gridNumber == m_answer->number; }

void CordModel::take(const std::shared_ptr<const CordAnswer>& answer) {
  m_answer = answer;
  if (answer->whole) {
    m_grid = answer->grid;
    m_gridNumber = answer->number;
  }
  emit answerChanged();
}

bool CordModel::isTooShort(std::size_t column) const {
  if (m_answer == nullptr) return false;
  // Of what is said now, not of the answer that is still shown: the edge follows the hand.
  planning::CordQuestion question = m_answer->asked.question;
  question.distance = m_inputs.distance;
  return !planning::reaches(question, m_grid.lengths.at(column));
}

std::optional<CordCell> CordModel::chosenCell() const {
  if (m_answer == nullptr || !m_answer->advice.choice) return std::nullopt;
  const planning::CordCandidate& chosen = m_answer->advice.candidates[*m_answer->advice.choice];
  for (std::size_t row = 0; row < m_grid.sizes.size(); ++row) {
    for (std::size_t column = 0; column < m_grid.lengths.size(); ++column) {
      const bool is = m_grid.sizes[row] == chosen.size && isSame(chosen.length, m_grid.lengths[column]);
      if (is) return CordCell{row, column};
    }
  }
  return std::nullopt;
}

std::vector<std::string> CordModel::cartIn(const CordCell& cell) const {
  std::vector<std::string> labels;
  if (m_inputs.cordsBy != CordsBy::Cart) return labels;
  for (const site::Cord& cord : m_site->all<site::Cord>()) {
    if (cord.outOfService || !cord.make.size || !cord.make.length) continue;
    if (cord.make.size->value != m_grid.sizes.at(cell.row)) continue;
    if (!isSame(cord.make.length->value, m_grid.lengths.at(cell.column))) continue;
    labels.push_back(cord.label.empty() ? cord.id.text() : cord.label);
  }
  return labels;
}

}  // namespace cordreach::app
