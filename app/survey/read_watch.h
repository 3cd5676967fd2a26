// SPDX-License-Identifier: GPL-3.0-or-later
// Bytes that are read off the window's thread, whose reader can be asked how far it is and told to stop.
#pragma once

#include <QByteArray>
#include <QIODevice>
#include <atomic>

namespace cordreach::app {

// Of whoever waits; null where nobody asks.
struct ReadWatch {
  const std::atomic<bool>* stop = nullptr;
  std::atomic<int>* percent = nullptr;

  [[nodiscard]] bool isStopped() const { return stop != nullptr && *stop; }
};

// Once stopped it gives no more bytes, and what unpacks them gives up.
class WatchedBytes : public QIODevice {
 public:
  WatchedBytes(QByteArray content, const ReadWatch& watch) : m_content(std::move(content)), m_watch(watch) {
    open(ReadOnly | Unbuffered);
  }
  [[nodiscard]] bool isSequential() const override { return false; }
  [[nodiscard]] qint64 size() const override { return m_content.size(); }

 protected:
  qint64 readData(char* data, qint64 most) override {
    if (m_watch.isStopped()) return -1;
    const qint64 count = std::min(most, m_content.size() - pos());
    std::copy_n(m_content.constData() + pos(), count, data);
    if (m_watch.percent != nullptr)
      *m_watch.percent = static_cast<int>(100 * (pos() + count) / std::max<qint64>(size(), 1));
    return count;
  }
  qint64 writeData(const char*, qint64) override { return -1; }

 private:
  QByteArray m_content;
  ReadWatch m_watch;
};

}  // namespace cordreach::app
