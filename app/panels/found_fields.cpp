// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/found_fields.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QSignalBlocker>

#include "look/look.h"
#include "panels/plain_controls.h"
#include "shell/say.h"
#include "site/file_words.h"

namespace cordreach::app {

namespace {
constexpr double kWhoWidthPx = 130;
}

FoundFields::FoundFields(Surveyor& surveyor, const text::Phrasebook& book, QWidget* parent)
    : QWidget(parent),
      m_surveyor(surveyor),
      m_book(book),
      m_howWord(new QLabel(this)),
      m_how(new ChoiceBox(this)),
      m_whoWord(new QLabel(this)),
      m_who(new QLineEdit(this)) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(6);
  for (QWidget* part : std::initializer_list<QWidget*>{m_howWord, m_how, m_whoWord, m_who}) row->addWidget(part);
  m_howWord->setBuddy(m_how);
  m_whoWord->setBuddy(m_who);
  connect(m_how, &QComboBox::activated, this, &FoundFields::take);
  connect(m_who, &QLineEdit::textEdited, this, &FoundFields::take);
  connect(&surveyor, &Surveyor::changed, this, &FoundFields::follow);
  reword();
}

void FoundFields::reword() {
  m_howWord->setText(say(m_book, "field.how"));
  m_whoWord->setText(say(m_book, "field.found_by"));
  m_how->setAccessibleName(m_howWord->text());
  m_who->setAccessibleName(m_whoWord->text());
  m_who->setFixedWidth(look::scaled(kWhoWidthPx));
  {
    const QSignalBlocker quiet(m_how);
    m_how->clear();
    for (const auto& entry : site::kFileWords<site::HowKnown>) {
      m_how->addItem(say(m_book, "field.how." + std::string(entry.word)));
    }
  }
  follow();
}

void FoundFields::follow() {
  const site::HowFound found = m_surveyor.found();
  const auto& words = site::kFileWords<site::HowKnown>;
  for (std::size_t i = 0; i < words.size(); ++i) {
    if (words[i].value == found.how) m_how->setCurrentIndex(static_cast<int>(i));
  }
  const QString who = QString::fromStdString(found.who);
  if (m_who->text() != who) m_who->setText(who);
}

void FoundFields::take() {
  const auto index = static_cast<std::size_t>(std::max(m_how->currentIndex(), 0));
  m_surveyor.set(site::kFileWords<site::HowKnown>.at(index).value, m_who->text().toStdString());
}

}  // namespace cordreach::app
