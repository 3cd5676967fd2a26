// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/text_encoding.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <optional>

#include "site/utf8.h"

namespace cordreach::io {
namespace {

using namespace std::string_view_literals;

enum class Order { Little, Big };

// 0x80 to 0x9F of Windows-1252 (Unicode Consortium, CP1252.TXT; from memory); 0: no letter.
constexpr std::array<char16_t, 32> kWindowsLetters{0x20AC, 0,      0x201A, 0x0192, 0x201E, 0x2026, 0x2020, 0x2021,
                                                   0x02C6, 0x2030, 0x0160, 0x2039, 0x0152, 0,      0x017D, 0,
                                                   0,      0x2018, 0x2019, 0x201C, 0x201D, 0x2022, 0x2013, 0x2014,
                                                   0x02DC, 0x2122, 0x0161, 0x203A, 0x0153, 0,      0x017E, 0x0178};

void append(std::string& text, char32_t letter) {
  const auto tail = [&](int shift) { text += static_cast<char>(0x80 | ((letter >> shift) & 0x3F)); };
  if (letter < 0x80) {
    text += static_cast<char>(letter);
  } else if (letter < 0x800) {
    text += static_cast<char>(0xC0 | (letter >> 6));
    tail(0);
  } else if (letter < 0x10000) {
    text += static_cast<char>(0xE0 | (letter >> 12));
    tail(6);
    tail(0);
  } else {
    text += static_cast<char>(0xF0 | (letter >> 18));
    tail(12);
    tail(6);
    tail(0);
  }
}

std::optional<std::string> fromUtf16(std::string_view bytes, Order order) {
  if (bytes.size() % 2 != 0) return std::nullopt;
  const auto unit = [&](std::size_t at) {
    const auto first = static_cast<unsigned char>(bytes[at]);
    const auto second = static_cast<unsigned char>(bytes[at + 1]);
    return static_cast<char32_t>(order == Order::Little ? first | (second << 8) : (first << 8) | second);
  };
  const auto isHigh = [](char32_t u) { return u >= 0xD800 && u < 0xDC00; };
  const auto isLow = [](char32_t u) { return u >= 0xDC00 && u < 0xE000; };
  std::string text;
  for (std::size_t at = 0; at < bytes.size(); at += 2) {
    const char32_t one = unit(at);
    if (isHigh(one) && at + 2 < bytes.size() && isLow(unit(at + 2))) {
      append(text, 0x10000 + ((one - 0xD800) << 10) + (unit(at + 2) - 0xDC00));
      at += 2;
    } else if (isHigh(one) || isLow(one) || one == 0) {
      return std::nullopt;
    } else {
      append(text, one);
    }
  }
  return text;
}

// Which half of the pairs is nought in most letters; of text in UTF-16 without a mark.
std::optional<Order> likelyOrder(std::string_view bytes) {
  if (bytes.size() < 2 || bytes.size() % 2 != 0) return std::nullopt;
  std::size_t first = 0;
  std::size_t second = 0;
  for (std::size_t at = 0; at < bytes.size(); at += 2) {
    first += bytes[at] == '\0' ? 1U : 0U;
    second += bytes[at + 1] == '\0' ? 1U : 0U;
  }
  const std::size_t most = bytes.size() / 4;  // half of the pairs
  if (second > most && first == 0) return Order::Little;
  if (first > most && second == 0) return Order::Big;
  return std::nullopt;
}

std::optional<std::string> fromWindows1252(std::string_view bytes) {
  std::string text;
  for (const char c : bytes) {
    const auto byte = static_cast<unsigned char>(c);
    const bool isControl = (byte < 0x20 && byte != '\t' && byte != '\n' && byte != '\r') || byte == 0x7F;
    const char32_t letter = byte >= 0x80 && byte < 0xA0 ? kWindowsLetters[byte - 0x80U] : byte;
    if (isControl || letter == 0) return std::nullopt;
    append(text, letter);
  }
  return text;
}

std::optional<std::string> decoded(std::string_view bytes) {
  if (bytes.substr(0, 3) == "\xEF\xBB\xBF"sv) bytes.remove_prefix(3);
  if (bytes.substr(0, 2) == "\xFF\xFE"sv) return fromUtf16(bytes.substr(2), Order::Little);
  if (bytes.substr(0, 2) == "\xFE\xFF"sv) return fromUtf16(bytes.substr(2), Order::Big);
  if (const auto order = likelyOrder(bytes)) return fromUtf16(bytes, *order);
  const bool holdsNought = bytes.find('\0') != std::string_view::npos;
  if (!holdsNought && site::validUtf8Length(bytes) == bytes.size()) return std::string(bytes);
  return fromWindows1252(bytes);
}

}  // namespace

base::Result<std::string> toUtf8(std::string_view bytes) {
  if (auto text = decoded(bytes)) return std::move(*text);
  return base::Error{"csv.unknown_encoding", "", {}};
}

}  // namespace cordreach::io
