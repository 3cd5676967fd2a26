// SPDX-License-Identifier: GPL-3.0-or-later
#include "shell/about_dialog.h"

#include <QDialogButtonBox>
#include <QPushButton>
#include <QTextBrowser>
#include <QVBoxLayout>
#include <array>

#include "look/look.h"
#include "shell/say.h"

namespace cordreach::app {

namespace {

// Cautions and licences, each a paragraph of the words; headings are bold.
constexpr std::array kParagraphs = {
    "head:window.about.cautions",     "always",
    "window.about.caution.reset",     "window.about.caution.panels",
    "window.about.caution.labels",    "window.about.caution.out_of_service",
    "window.about.caution.unchecked", "head:window.about.sources",
    "window.about.sources.text",      "head:window.about.licences",
    "window.about.licence.own",       "window.about.licence.others",
};

QString html(const text::Phrasebook& book) {
  QString page =
      "<h3>Cordreach " CORDREACH_VERSION "</h3><p>" + say(book, "window.about.what").toHtmlEscaped() + "</p>";
  for (const std::string_view paragraph : kParagraphs) {
    const bool head = paragraph.starts_with("head:");
    const QString words = say(book, head ? paragraph.substr(5) : paragraph).toHtmlEscaped();
    page += head ? "<p><b>" + words + "</b></p>" : "<p>" + words + "</p>";
  }
  return page;
}

}  // namespace

AboutDialog::AboutDialog(const text::Phrasebook& book, QWidget* parent) : QDialog(parent) {
  setWindowTitle(say(book, "window.about.title"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(24, 24, 24, 24);
  column->setSpacing(12);
  auto* text = new QTextBrowser(this);
  text->setAccessibleName(windowTitle());
  text->setHtml(html(book));
  column->addWidget(text);
  auto* buttons = new QDialogButtonBox(this);
  buttons->addButton(say(book, "window.answer.close"), QDialogButtonBox::AcceptRole);
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  column->addWidget(buttons);
  resize(look::scaled(560), look::scaled(520));
}

}  // namespace cordreach::app
