// SPDX-License-Identifier: GPL-3.0-or-later
// A document whose pages may be plans. Pages are drawn one at a time, when they are asked for.
#pragma once

#include <QBuffer>
#include <QImage>
#include <memory>

#include "base/result.h"

class QPdfDocument;

namespace cordreach::app {

class PdfPages {
 public:
  ~PdfPages();
  PdfPages(const PdfPages&) = delete;
  PdfPages& operator=(const PdfPages&) = delete;

  [[nodiscard]] static bool isPdf(const QByteArray& content);
  // Errors: picture.pdf_locked, picture.pdf_broken, picture.pdf_empty.
  [[nodiscard]] static base::Result<std::unique_ptr<PdfPages>> open(const QByteArray& content);

  [[nodiscard]] int count() const;
  // With so many pixels along its longer edge; null when the page can't be drawn.
  [[nodiscard]] QImage draw(int page, int longestPx) const;
  // As a plan is kept: 200 dots an inch, within kMostKeptPixels.
  [[nodiscard]] QImage drawPlan(int page) const;

 private:
  PdfPages();

  QBuffer m_content;
  std::unique_ptr<QPdfDocument> m_document;
};

}  // namespace cordreach::app
