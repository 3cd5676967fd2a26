// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/finding_row.h"

#include <QLabel>
#include <QPainter>
#include <QVBoxLayout>

#include "look/look.h"
#include "look/severity_mark.h"
#include "panels/finding_edits.h"
#include "panels/flow_row.h"
#include "panels/link_button.h"
#include "shell/say.h"
#include "text/finding_text.h"

namespace cordreach::app {

namespace {

constexpr double kMarkPx = 20;
constexpr double kIndentPx = 30;

QString escaped(const std::string& text) { return QString::fromStdString(text).toHtmlEscaped(); }

QString acceptedBy(const site::Site& site, const rules::Finding& finding, const text::Phrasebook& book) {
  const site::Acceptance* accepted = acceptanceOf(site, finding);
  if (accepted == nullptr) return {};
  base::Arguments arguments{{"who", accepted->who}, {"reason", accepted->reason}};
  if (!accepted->when.empty()) arguments.push_back({"when", accepted->when});
  return say(book, "panel.accepted_by", arguments);
}

}  // namespace

FindingRow::FindingRow(const FindingOnScreen& shown, const text::Phrasebook& book, QWidget* parent)
    : QWidget(parent), m_severity(shown.verdict.findings[shown.index].severity) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(indent(), 0, 0, 0);
  layout->setSpacing(1);
  addWords(shown, book);
  addLinks(shown, book);
}

void FindingRow::addWords(const FindingOnScreen& shown, const text::Phrasebook& book) {
  const rules::Finding& finding = shown.verdict.findings[shown.index];
  const text::FindingWords words = text::wordsOf(book, finding);
  QString said = QStringLiteral("<b>") + escaped(words.signal) + QStringLiteral("</b>&nbsp; ");
  const QString sentences = escaped(words.text());
  said += finding.accepted ? QStringLiteral("<s>") + sentences + QStringLiteral("</s>") : sentences;
  if (finding.accepted) {
    said += QStringLiteral("<br>") + acceptedBy(*shown.verdict.site, finding, book).toHtmlEscaped();
  }
  m_words = new QLabel(said, this);
  m_words->setTextFormat(Qt::RichText);
  m_words->setWordWrap(true);
  QPalette palette = m_words->palette();
  palette.setColor(QPalette::WindowText, finding.accepted ? look::tokens().ink3 : look::tokens().ink);
  palette.setColor(QPalette::Disabled, QPalette::WindowText, look::tokens().ink3);
  m_words->setPalette(palette);
  layout()->addWidget(m_words);
  setAccessibleName(QString::fromStdString(words.signal + ". " + words.text()));
}

void FindingRow::addLinks(const FindingOnScreen& shown, const text::Phrasebook& book) {
  const rules::Finding& finding = shown.verdict.findings[shown.index];
  auto* links = new FlowRow(look::scaled(8));
  const QString about = accessibleName();
  const auto make = [&](const char* name, const QString& text, void (FindingRow::*signal)()) {
    auto* link = new LinkButton(text, this);
    link->setObjectName(QLatin1String(name));
    link->setAccessibleDescription(about);
    connect(link, &LinkButton::clicked, this, signal);
    return link;
  };
  if (!finding.subjects.empty()) {
    links->addWidget(make("show", say(book, "panel.show"), &FindingRow::showAsked));
  }
  links->addWidget(make("numbers", say(book, "panel.numbers"), &FindingRow::numbersAsked));
  if (mayBeAccepted(finding)) {
    links->addWidget(make("accept", say(book, "panel.accept"), &FindingRow::acceptAsked));
  }
  if (finding.accepted) {
    links->addWidget(make("take_back", say(book, "panel.take_back"), &FindingRow::takeBackAsked));
  }
  auto* vertical = static_cast<QVBoxLayout*>(layout());
  const auto& remedies = shown.verdict.remedies;
  const bool isMendable = shown.index < remedies.size() && !remedies[shown.index].empty() && !finding.accepted;
  if (isMendable) {
    const text::RemedyWords words = text::wordsOf(book, remedies[shown.index].front());
    LinkButton* mend = make("do", QString::fromStdString(words.order), &FindingRow::doAsked);
    mend->setToolTip(QString::fromStdString(words.after));
    vertical->addWidget(mend);
  }
  vertical->addLayout(links);
}

void FindingRow::setStale(bool stale) {
  m_words->setEnabled(!stale);
  for (const char* name : {"do", "accept", "take_back"}) {
    if (LinkButton* one = link(name)) one->setEnabled(!stale);
  }
}

int FindingRow::indent() { return look::scaled(kIndentPx); }

LinkButton* FindingRow::link(const char* name) const { return findChild<LinkButton*>(QLatin1String(name)); }

void FindingRow::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const int side = look::scaled(kMarkPx);
  look::paintSeverityMark(painter, QRectF(0, 0, side, side), m_severity, look::tokens().dark);
}

}  // namespace cordreach::app
