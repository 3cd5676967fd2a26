// SPDX-License-Identifier: GPL-3.0-or-later
// Plans for tests: sound ones, and those that somebody made badly or with bad intent.
#pragma once

#include <QBuffer>
#include <QImage>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>

namespace cordreach::testing {

[[nodiscard]] inline QByteArray encoded(const QImage& image, const char* format = "PNG") {
  QByteArray content;
  QBuffer buffer(&content);
  buffer.open(QIODevice::WriteOnly);
  image.save(&buffer, format);
  return content;
}

// A floor of six rooms along a corridor.
[[nodiscard]] inline QImage planImage(const QSize& size = {1200, 600}) {
  QImage image(size, QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.scale(size.width() / 1200.0, size.height() / 600.0);
  painter.setPen(QPen(Qt::black, 6));
  painter.drawRect(40, 40, 1120, 520);
  painter.drawLine(40, 250, 1160, 250);
  painter.drawLine(40, 350, 1160, 350);
  for (const int x : {413, 786}) {
    painter.drawLine(x, 40, x, 250);
    painter.drawLine(x, 350, x, 560);
  }
  return image;
}

[[nodiscard]] inline QByteArray pdf(int pages) {
  QByteArray content;
  QBuffer buffer(&content);
  buffer.open(QIODevice::WriteOnly);
  QPdfWriter writer(&buffer);
  writer.setPageSize(QPageSize(QPageSize::A4));
  QPainter painter(&writer);
  for (int page = 1; page <= pages; ++page) {
    if (page > 1) writer.newPage();
    painter.drawLine(0, 0, 1000 + page, 4000);
  }
  painter.end();
  return content;
}

// With a password that is not the empty one: its check value is noise.
[[nodiscard]] inline QByteArray lockedPdf() {
  const QByteArray noise = QByteArray(32, 'k').toHex();
  const QByteArray id = QByteArray(16, 'i').toHex();
  const QList<QByteArray> objects{"<</Type/Catalog/Pages 2 0 R>>", "<</Type/Pages/Kids[3 0 R]/Count 1>>",
                                  "<</Type/Page/Parent 2 0 R/MediaBox[0 0 200 200]>>",
                                  "<</Filter/Standard/V 1/R 2/Length 40/P -4/O<" + noise + ">/U<" + noise + ">>>"};
  QByteArray content = "%PDF-1.4\n";
  QByteArray table = "xref\n0 5\n0000000000 65535 f \n";
  for (qsizetype i = 0; i < objects.size(); ++i) {
    table += QByteArray::number(content.size()).rightJustified(10, '0') + " 00000 n \n";
    content += QByteArray::number(i + 1) + " 0 obj\n" + objects[i] + "\nendobj\n";
  }
  const QByteArray start = QByteArray::number(content.size());
  return content + table + "trailer\n<</Size 5/Root 1 0 R/Encrypt 4 0 R/ID[<" + id + "><" + id + ">]>>\nstartxref\n" +
         start + "\n%%EOF\n";
}

// A PNG's own check sum, ISO/IEC 15948 annex D.
[[nodiscard]] inline quint32 pngSum(const QByteArray& data) {
  quint32 sum = 0xffffffffU;
  for (const char byte : data) {
    sum ^= static_cast<unsigned char>(byte);
    for (int bit = 0; bit < 8; ++bit) sum = (sum & 1U) != 0 ? 0xedb88320U ^ (sum >> 1U) : sum >> 1U;
  }
  return ~sum;
}

[[nodiscard]] inline QByteArray bigEndian(quint32 value) {
  QByteArray bytes;
  for (const int shift : {24, 16, 8, 0}) bytes += static_cast<char>((value >> static_cast<unsigned>(shift)) & 0xffU);
  return bytes;
}

// A few bytes that say they are so many pixels.
[[nodiscard]] inline QByteArray bomb(quint32 width, quint32 height) {
  const auto chunk = [](const QByteArray& kind, const QByteArray& data) {
    return bigEndian(static_cast<quint32>(data.size())) + kind + data + bigEndian(pngSum(kind + data));
  };
  const QByteArray header = bigEndian(width) + bigEndian(height) + QByteArray("\x08\x02\x00\x00\x00", 5);
  return QByteArray("\x89PNG\r\n\x1a\n", 8) + chunk("IHDR", header) +
         chunk("IDAT", qCompress(QByteArray(4096, '\0'), 9).mid(4)) + chunk("IEND", {});
}

}  // namespace cordreach::testing
