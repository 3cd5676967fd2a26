// SPDX-License-Identifier: GPL-3.0-or-later
// Where a verb writes: a stream of the process, or a string in tests.
#pragma once

#include <cstdio>
#include <string>
#include <string_view>

namespace cordreach::console {

class Output {
 public:
  virtual ~Output() = default;
  // Writes and flushes. False: nobody takes it any more (closed pipe, full disk); `fault` then says why.
  virtual bool write(std::string_view text) = 0;
  [[nodiscard]] virtual std::string fault() const { return {}; }
};

class StreamOutput : public Output {
 public:
  explicit StreamOutput(std::FILE* stream) : m_stream(stream) {}
  bool write(std::string_view text) override;
  [[nodiscard]] std::string fault() const override { return m_fault; }

 private:
  std::FILE* m_stream;
  std::string m_fault;
};

class StringOutput : public Output {
 public:
  bool write(std::string_view text) override {
    m_text += text;
    return true;
  }
  [[nodiscard]] const std::string& text() const { return m_text; }

 private:
  std::string m_text;
};

}  // namespace cordreach::console
