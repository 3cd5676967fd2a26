// SPDX-License-Identifier: GPL-3.0-or-later
#include "survey/pdf_pages.h"

#include <QPainter>
#include <QPdfDocument>
#include <algorithm>
#include <cmath>
#include <utility>

#include "survey/picture_read.h"

namespace cordreach::app {
namespace {

constexpr qsizetype kHeadBytes = 1024;  // the mark may stand that far in
constexpr double kDotsAPoint = 200.0 / 72.0;

// On white: a page has no ground of its own.
QImage onWhite(const QImage& page) {
  if (page.isNull()) return {};
  QImage sheet(page.size(), QImage::Format_RGB32);
  sheet.fill(Qt::white);
  QPainter painter(&sheet);
  painter.drawImage(0, 0, page);
  return sheet;
}

}  // namespace

PdfPages::PdfPages() : m_document(std::make_unique<QPdfDocument>()) {}

PdfPages::~PdfPages() = default;

bool PdfPages::isPdf(const QByteArray& content) { return content.left(kHeadBytes).contains("%PDF-"); }

base::Result<std::unique_ptr<PdfPages>> PdfPages::open(const QByteArray& content) {
  std::unique_ptr<PdfPages> pages(new PdfPages);
  pages->m_content.setData(content);
  pages->m_content.open(QIODevice::ReadOnly);
  pages->m_document->load(&pages->m_content);
  const auto error = pages->m_document->error();
  const bool isLocked =
      error == QPdfDocument::Error::IncorrectPassword || error == QPdfDocument::Error::UnsupportedSecurityScheme;
  if (isLocked) return base::Error{"picture.pdf_locked", {}, {}};
  if (pages->m_document->status() != QPdfDocument::Status::Ready) return base::Error{"picture.pdf_broken", {}, {}};
  if (pages->count() < 1) return base::Error{"picture.pdf_empty", {}, {}};
  return base::Result<std::unique_ptr<PdfPages>>(std::move(pages));
}

int PdfPages::count() const { return m_document->pageCount(); }

QImage PdfPages::draw(int page, int longestPx) const {
  const QSizeF points = m_document->pagePointSize(page);
  if (points.isEmpty()) return {};
  const QSize size = points.scaled(longestPx, longestPx, Qt::KeepAspectRatio).toSize().expandedTo({1, 1});
  return onWhite(m_document->render(page, size));
}

QImage PdfPages::drawPlan(int page) const {
  const QSizeF points = m_document->pagePointSize(page);
  if (points.isEmpty()) return {};
  const QSizeF wanted = points * kDotsAPoint;
  const double pixels = wanted.width() * wanted.height();
  const double part = std::min(1.0, std::sqrt(static_cast<double>(kMostKeptPixels) / pixels));
  const QSize size = (wanted * part).toSize().expandedTo({1, 1});
  return onWhite(m_document->render(page, size));
}

}  // namespace cordreach::app
