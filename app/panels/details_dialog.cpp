// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/details_dialog.h"

#include <QDialogButtonBox>
#include <QPushButton>
#include <QTextBrowser>
#include <QVBoxLayout>

#include "look/look.h"
#include "panels/details_text.h"
#include "shell/say.h"
#include "text/finding_text.h"

namespace cordreach::app {

namespace {

constexpr double kWidthPx = 620;
constexpr double kHeightPx = 560;

QString escaped(const std::string& text) { return QString::fromStdString(text).toHtmlEscaped(); }

QString tableOf(const DetailGroup& group) {
  const QString dim = look::tokens().ink2.name();
  QString html = QStringLiteral("<h4>") + escaped(group.title) +
                 QStringLiteral("</h4><table width=\"100%\" cellspacing=\"0\" cellpadding=\"3\">");
  for (const DetailLine& line : group.lines) {
    html += QStringLiteral("<tr><td width=\"50%\">%1</td><td><b>%2</b></td><td style=\"color:%4\">%3</td></tr>")
                .arg(escaped(line.label), escaped(line.value), escaped(line.band), dim);
  }
  return html + QStringLiteral("</table>");
}

}  // namespace

DetailsDialog::DetailsDialog(const std::shared_ptr<const Verdict>& verdict, std::size_t finding,
                             const text::Phrasebook& book, QWidget* parent)
    : QDialog(parent) {
  setWindowTitle(say(book, "panel.numbers"));
  resize(look::scaled(kWidthPx), look::scaled(kHeightPx));
  const text::FindingWords words = text::wordsOf(book, verdict->findings.at(finding));
  QString html = QStringLiteral("<p><b>") + escaped(words.signal) + QStringLiteral("</b>&nbsp; ") +
                 escaped(words.text()) + QStringLiteral("</p>");
  for (const DetailGroup& group : detailsOf(*verdict, finding, book)) html += tableOf(group);
  html += QStringLiteral("<p>") + escaped(book.say("panel.details.bands")) + QStringLiteral("</p><p>") +
          escaped(book.say("always")) + QStringLiteral("</p>");
  auto* text = new QTextBrowser(this);
  text->setHtml(html);
  text->setAccessibleName(windowTitle());
  text->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  auto* buttons = new QDialogButtonBox(this);
  QPushButton* close = buttons->addButton(say(book, "panel.close"), QDialogButtonBox::RejectRole);
  close->setDefault(true);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  auto* layout = new QVBoxLayout(this);
  layout->addWidget(text, 1);
  layout->addWidget(buttons);
}

QString DetailsDialog::plainText() const { return findChild<QTextBrowser*>()->toPlainText(); }

}  // namespace cordreach::app
